import { refuse } from '../errors';
import { checkReading } from '../limits/checkReading';
import type { HeatFormula } from './heatFormula';

/**
 * The heat of one row of a record.
 *
 * @param row from 0; said from 1
 * @throws dayMissingInRow, lowAboveHighInRow, notATemperature
 */
export function heatOfRow(
  formula: HeatFormula,
  high: number | null | undefined,
  low: number | null | undefined,
  row: number,
): number {
  if (high == null || low == null) return refuse({ code: 'dayMissingInRow', row: row + 1 });
  checkReading('highs', high, row + 1);
  checkReading('lows', low, row + 1);
  if (low > high) refuse({ code: 'lowAboveHighInRow', row: row + 1, high, low });
  return formula(high, low);
}
