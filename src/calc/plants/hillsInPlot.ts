import type { UnitSystem } from '../units/units';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { hillRowsInPlot, type HillPattern } from './hillRowsInPlot';

/**
 * Hills in a rectangular plot, in straight ranks or with every other row shifted by half a spacing.
 *
 * square:    hills = floor(length / hill) x floor(width / row)
 * staggered: rows = 1 + floor((width - hill) / pitch), pitch = row, or hill x sqrt(3) / 2 when no row is given;
 *            odd rows hold floor(length / hill), even rows floor(length / hill - 1/2)
 *
 * @param length of the plot, along the rows [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the rows [ft or m], above 0 to 1,000,000
 * @param hillSpacing between hills in the row [ft or m], above 0
 * @param pattern 'square' (default) or 'staggered'
 * @param rowSpacing between rows [ft or m], above 0; the hill spacing (or the triangle's pitch) when left out
 * @returns whole hills; the outer ones stand half a hill spacing inside the edge
 * @throws outOfRange, noHillFits, noHillRowFits
 * Source: plane geometry, the densest packing of equal distances in rows.
 * @example hillsInPlot(60, 26, 6, unitSystems.us, 'staggered') // 38
 */
export function hillsInPlot(
  length: number,
  width: number,
  hillSpacing: number,
  units: UnitSystem,
  pattern?: HillPattern,
  rowSpacing?: number,
  record?: Recorder,
): number {
  const found = hillRowsInPlot(length, width, hillSpacing, units, pattern, rowSpacing, record);
  const rows = found.rows.count;
  const hillsInRow = found.inOddRow.count;
  if (found.pattern === 'square') {
    const hills = rows * hillsInRow;
    record?.({ step: 'hillsSquare', inputs: { rows, hillsInRow }, result: hills, unit: 'hills' });
    return hills;
  }
  const inEvenRow = found.inEvenRow.count;
  const oddRows = ceilWhole(rows / 2);
  const evenRows = rows - oddRows;
  const hills = oddRows * hillsInRow + evenRows * inEvenRow;
  const inputs = { oddRows, hillsInRow, evenRows, inEvenRow };
  record?.({ step: 'hillsStaggered', inputs, result: hills, unit: 'hills' });
  return hills;
}
