import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkSameLength } from '../limits/checkSameLength';
import type { HeatFormula } from './heatFormula';
import { heatOfRow } from './heatOfRow';

export interface KnownHeat {
  readonly firstDay: number;
  readonly lastDay: number;
  /** null of a day that has no row or no temperatures. */
  heatOn(day: number): number | null;
}

/**
 * The heat of the days of a record, by day number.
 *
 * @param dates of the rows [whole day numbers], in any order; null in rows that are empty
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @throws unequalLists, noDays, sameDayTwice, dateMissing, lowAboveHighInRow: of any row, for a slip of the hand in a
 *   day that is not asked for can be a frost; heatOn what heatOfRow throws of a row that has temperatures
 */
export function heatWhereKnown(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  formula: HeatFormula,
): KnownHeat {
  checkSameLength('dates', dates, 'highs', highs);
  checkSameLength('dates', dates, 'lows', lows);
  const rows = new Map<number, number>();
  let firstDay = Infinity;
  let lastDay = -Infinity;
  dates.forEach((day, row) => {
    if (day === null) {
      if (highs[row] !== null || lows[row] !== null) refuse({ code: 'dateMissing', row: row + 1 });
      return;
    }
    checkDay('dates', day);
    if (rows.has(day)) refuse({ code: 'sameDayTwice', day, row: row + 1 });
    rows.set(day, row);
    const [high, low] = [highs[row] ?? null, lows[row] ?? null];
    if (high !== null && low !== null && low > high) {
      refuse({ code: 'lowAboveHighInRow', row: row + 1, high, low });
    }
    firstDay = Math.min(firstDay, day);
    lastDay = Math.max(lastDay, day);
  });
  if (rows.size === 0) refuse({ code: 'noDays' });
  return {
    firstDay,
    lastDay,
    heatOn(day) {
      const row = rows.get(day);
      if (row === undefined || highs[row] == null || lows[row] == null) return null;
      return heatOfRow(formula, highs[row], lows[row], row);
    },
  };
}
