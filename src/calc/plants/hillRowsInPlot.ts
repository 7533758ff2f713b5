import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkPositive } from '../limits/limits';
import type { Unit, UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder, type Step } from '../working';
import type { Evenly } from './evenly';

export type HillPattern = 'square' | 'staggered';

export interface HillRows {
  readonly pattern: HillPattern;
  /** Across the plot. */
  readonly rows: Evenly;
  /** Along the plot, in the first row and every other one after it. */
  readonly inOddRow: Evenly;
  readonly inEvenRow: Evenly;
}

/** Rows of an equilateral triangle lie this many sides apart. */
const triangleHeight = Math.sqrt(3) / 2;

/**
 * The rows of hills of a rectangular plot: what hillsInPlot counts and placeInHills places.
 *
 * square:    floor(width / row) rows from half a row spacing on, floor(length / hill) hills in each
 * staggered: 1 + floor((width - hill) / pitch) rows from half a hill spacing on; floor(length / hill) hills in odd
 *            rows, in even ones, shifted by half a spacing, floor(length / hill - 1/2)
 *
 * @param length of the plot, along the rows [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the rows [ft or m], above 0 to 1,000,000
 * @param hillSpacing between hills in the row [ft or m], above 0
 * @param pattern 'square' when left out (judgement)
 * @param rowSpacing between rows [ft or m], above 0; the hill spacing (or the triangle's pitch) when left out
 * @returns at least one row of one hill; what is left over lies behind the last of them
 * @throws outOfRange, noHillFits, noHillRowFits
 * Source: plane geometry, the densest packing of equal distances in rows.
 * @example hillRowsInPlot(60, 26, 6, unitSystems.us, 'staggered').inEvenRow // { first: 6, apart: 6, count: 9 }
 */
export function hillRowsInPlot(
  length: number,
  width: number,
  hillSpacing: number,
  units: UnitSystem,
  pattern?: HillPattern,
  rowSpacing?: number,
  record?: Recorder,
): HillRows {
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
  const inOddRow = (): Evenly => ({
    first: hillSpacing / 2,
    apart: hillSpacing,
    count: counted('hillsInRow', length / hillSpacing, along, 'hills'),
  });

  if (!isStaggered) {
    const between = orAssume(rowSpacing, hillSpacing, 'row_spacing', unit, 'judgement', record);
    if (floorWhole(width / between) < 1) refuse({ code: 'noHillRowFits', width, rowSpacing: between, unit });
    const rows = counted('rowsOfHills', width / between, { width, row_spacing: between }, 'rows');
    const inRow = inOddRow();
    return {
      pattern: 'square',
      rows: { first: between / 2, apart: between, count: rows },
      inOddRow: inRow,
      inEvenRow: inRow,
    };
  }

  const pitch = rowSpacing ?? hillSpacing * triangleHeight;
  if (rowSpacing === undefined) {
    record?.({ step: 'staggeredPitch', inputs: { hill_spacing: hillSpacing }, result: pitch, unit });
  }
  const rowsExact = 1 + (width - hillSpacing) / pitch;
  const rows = counted('rowsStaggered', rowsExact, { width, hill_spacing: hillSpacing, pitch }, 'rows');
  return {
    pattern: 'staggered',
    rows: { first: hillSpacing / 2, apart: pitch, count: rows },
    inOddRow: inOddRow(),
    inEvenRow: {
      first: hillSpacing,
      apart: hillSpacing,
      count: counted('hillsInEvenRow', length / hillSpacing - 0.5, along, 'hills'),
    },
  };
}
