import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { rowsInPlot, type RowEdge } from './rowsInPlot';

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
  const found = rowsInPlot(length, width, rowSpacing, plantSpacing, units, edge, record);
  const rows = found.rows.count;
  const plantsInRow = found.plants.count;
  const plants = rows * plantsInRow;
  record?.({ step: 'plantsInRows', inputs: { rows, plantsInRow }, result: plants, unit: 'plants' });
  return plants;
}
