import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkPositive } from '../limits/limits';
import type { Unit, UnitSystem } from '../units/units';
import { ceilWhole, floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder, type Step } from '../working';

export type HillPattern = 'square' | 'staggered';

/** Rows of an equilateral triangle lie this many sides apart. */
const triangleHeight = Math.sqrt(3) / 2;

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
  const unit = units.length;
  checkSide('length', length, unit);
  checkSide('width', width, unit);
  checkPositive('hill_spacing', hillSpacing, unit);
  if (rowSpacing !== undefined) checkPositive('row_spacing', rowSpacing, unit);
  const isStaggered = orAssume(pattern, 'square', 'pattern', 'none', 'judgement', record) === 'staggered';
  const side = isStaggered || rowSpacing === undefined ? Math.min(length, width) : length;
  if (floorWhole(side / hillSpacing) < 1) refuse({ code: 'noHillFits', side, hillSpacing, unit });

  /** One counted row of hills, or number of rows, with its step. */
  function counted(step: string, exact: number, inputs: Step['inputs'], of: Unit): number {
    const result = floorWhole(exact);
    record?.({ step, inputs, result, unit: of, ...roundingOf(exact, result) });
    return result;
  }
  const along = { length, hill_spacing: hillSpacing };

  if (!isStaggered) {
    const between = orAssume(rowSpacing, hillSpacing, 'row_spacing', unit, 'judgement', record);
    if (floorWhole(width / between) < 1) refuse({ code: 'noHillRowFits', width, rowSpacing: between, unit });
    const rows = counted('rowsOfHills', width / between, { width, row_spacing: between }, 'rows');
    const hillsInRow = counted('hillsInRow', length / hillSpacing, along, 'hills');
    const hills = rows * hillsInRow;
    record?.({ step: 'hillsSquare', inputs: { rows, hillsInRow }, result: hills, unit: 'hills' });
    return hills;
  }

  const pitch = rowSpacing ?? hillSpacing * triangleHeight;
  if (rowSpacing === undefined) {
    record?.({ step: 'staggeredPitch', inputs: { hill_spacing: hillSpacing }, result: pitch, unit });
  }
  const rowsExact = 1 + (width - hillSpacing) / pitch;
  const rows = counted('rowsStaggered', rowsExact, { width, hill_spacing: hillSpacing, pitch }, 'rows');
  const hillsInRow = counted('hillsInRow', length / hillSpacing, along, 'hills');
  const inEvenRow = counted('hillsInEvenRow', length / hillSpacing - 0.5, along, 'hills');
  const oddRows = ceilWhole(rows / 2);
  const evenRows = rows - oddRows;
  const hills = oddRows * hillsInRow + evenRows * inEvenRow;
  const inputs = { oddRows, hillsInRow, evenRows, inEvenRow };
  record?.({ step: 'hillsStaggered', inputs, result: hills, unit: 'hills' });
  return hills;
}
