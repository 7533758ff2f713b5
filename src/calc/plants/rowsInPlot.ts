import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import type { Evenly } from './evenly';

export type RowEdge = 'inset' | 'onedge';

export interface RowsInPlot {
  /** Across the plot. */
  readonly rows: Evenly;
  /** In each row, along the plot. */
  readonly plants: Evenly;
}

/**
 * The rows of a rectangular plot and the plants in each: what plantsInRows counts and placeInRows places.
 *
 * inset:  rows = floor(width / row spacing), plants = floor(length / plant spacing), from half a spacing on
 * onedge: one more of each, from the edge on
 *
 * @param length of the plot, along the rows [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the rows [ft or m], above 0 to 1,000,000
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @param edge 'inset' when left out (judgement)
 * @returns at least one row of one plant; what is left over lies behind the last of them
 * @throws outOfRange, noRowFits, noPlantFits
 * Source: plane geometry.
 * @example rowsInPlot(30, 10, 5, 12, unitSystems.us).rows // { first: 2.5, apart: 5, count: 2 }
 */
export function rowsInPlot(
  length: number,
  width: number,
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  edge?: RowEdge,
  record?: Recorder,
): RowsInPlot {
  checkSide('length', length, units.length);
  checkSide('width', width, units.length);
  checkPositive('row_spacing', rowSpacing, units.length);
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const onEdge = orAssume(edge, 'inset', 'edge', 'none', 'judgement', record) === 'onedge';
  const extra = onEdge ? 1 : 0;
  /** Of the spacing. */
  const inside = onEdge ? 0 : 0.5;

  const rowsExact = width / rowSpacing + extra;
  const rows = floorWhole(rowsExact);
  if (rows < 1) refuse({ code: 'noRowFits', width, rowSpacing, unit: units.length });
  record?.({
    step: onEdge ? 'rowsOnEdge' : 'rowsInset',
    inputs: { width, row_spacing: rowSpacing },
    result: rows,
    unit: 'rows',
    ...roundingOf(rowsExact, rows),
  });

  const inRowExact = (length * units.spacingPerLength) / plantSpacing + extra;
  const plantsInRow = floorWhole(inRowExact);
  if (plantsInRow < 1) {
    refuse({ code: 'noPlantFits', length, plantSpacing, unit: units.length, spacingUnit: units.spacing });
  }
  record?.({
    step: onEdge ? 'plantsInRowOnEdge' : 'plantsInRowInset',
    inputs: { length, spacingPerLength: units.spacingPerLength, plant_spacing: plantSpacing },
    result: plantsInRow,
    unit: 'plants',
    ...roundingOf(inRowExact, plantsInRow),
  });
  const apart = plantSpacing / units.spacingPerLength;
  return {
    rows: { first: inside * rowSpacing, apart: rowSpacing, count: rows },
    plants: { first: inside * apart, apart, count: plantsInRow },
  };
}
