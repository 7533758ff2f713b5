import { refuse } from '../errors';
import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

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
 * @param length of the plot, along the rows [ft or m], above 0
 * @param width of the plot, across the rows [ft or m], above 0
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
  checkPositive('length', length, unit);
  checkPositive('width', width, unit);
  checkPositive('hill_spacing', hillSpacing, unit);
  if (rowSpacing !== undefined) checkPositive('row_spacing', rowSpacing, unit);
  const chosen = orAssume(pattern, 'square', 'pattern', 'none', 'judgement', record);
  const side = Math.min(length, width);
  const hillNeedsWidth = chosen === 'staggered' || rowSpacing === undefined;
  if (floorWhole((hillNeedsWidth ? side : length) / hillSpacing) < 1) {
    refuse({ code: 'noHillFits', side: hillNeedsWidth ? side : length, hillSpacing, unit });
  }

  const inOddRow = floorWhole(length / hillSpacing);
  if (chosen === 'square') {
    const between = orAssume(rowSpacing, hillSpacing, 'row_spacing', unit, 'judgement', record);
    const rows = floorWhole(width / between);
    if (rows < 1) refuse({ code: 'noHillRowFits', width, rowSpacing: between, unit });
    record?.({
      step: 'rowsOfHills',
      inputs: { width, row_spacing: between },
      result: rows,
      unit: 'rows',
      rounded: 'down',
    });
    record?.({
      step: 'hillsInRow',
      inputs: { length, hill_spacing: hillSpacing },
      result: inOddRow,
      unit: 'hills',
      rounded: 'down',
    });
    const hills = rows * inOddRow;
    record?.({ step: 'hillsSquare', inputs: { rows, hillsInRow: inOddRow }, result: hills, unit: 'hills' });
    return hills;
  }

  const pitch = rowSpacing ?? hillSpacing * triangleHeight;
  if (rowSpacing === undefined) {
    record?.({ step: 'staggeredPitch', inputs: { hill_spacing: hillSpacing }, result: pitch, unit });
  }
  const rows = 1 + floorWhole(Math.max(0, width - hillSpacing) / pitch);
  record?.({
    step: 'rowsStaggered',
    inputs: { width, hill_spacing: hillSpacing, pitch },
    result: rows,
    unit: 'rows',
    rounded: 'down',
  });
  record?.({
    step: 'hillsInRow',
    inputs: { length, hill_spacing: hillSpacing },
    result: inOddRow,
    unit: 'hills',
    rounded: 'down',
  });
  const inEvenRow = floorWhole(length / hillSpacing - 0.5);
  record?.({
    step: 'hillsInEvenRow',
    inputs: { length, hill_spacing: hillSpacing },
    result: inEvenRow,
    unit: 'hills',
    rounded: 'down',
  });
  const oddRows = Math.ceil(rows / 2);
  const evenRows = rows - oddRows;
  const hills = oddRows * inOddRow + evenRows * inEvenRow;
  record?.({
    step: 'hillsStaggered',
    inputs: { oddRows, hillsInRow: inOddRow, evenRows, inEvenRow },
    result: hills,
    unit: 'hills',
  });
  return hills;
}
