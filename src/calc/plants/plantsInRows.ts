import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

export type RowEdge = 'inset' | 'onedge';

/**
 * Plants in rows that run along the length of a rectangular plot.
 *
 * inset:  plants = floor(width / row spacing) x floor(length / plant spacing)
 * onedge: plants = (floor(width / row spacing) + 1) x (floor(length / plant spacing) + 1)
 *
 * @param length of the plot, along the rows [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the rows [ft or m], above 0 to 1,000,000
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @param edge 'inset' (default): every row and plant owns its spacing, so the outer ones stand half a spacing
 * inside; 'onedge': the first row and the first plant stand on the edge
 * @returns whole plants
 * @throws outOfRange, noRowFits, noPlantFits
 * Source: plane geometry. The default is a project convention: a plant on the edge takes its neighbour's ground.
 * @example plantsInRows(30, 4, 5, 12, unitSystems.us, 'onedge') // 31
 */
export function plantsInRows(
  length: number,
  width: number,
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  edge?: RowEdge,
  record?: Recorder,
): number {
  checkSide('length', length, units.length);
  checkSide('width', width, units.length);
  checkPositive('row_spacing', rowSpacing, units.length);
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const onEdge = orAssume(edge, 'inset', 'edge', 'none', 'judgement', record) === 'onedge';
  const extra = onEdge ? 1 : 0;

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

  const plants = rows * plantsInRow;
  record?.({ step: 'plantsInRows', inputs: { rows, plantsInRow }, result: plants, unit: 'plants' });
  return plants;
}
