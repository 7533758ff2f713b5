import { cellsNeeded } from '../calc/tray/cellsNeeded';
import { define } from './define';
import { number, optionalNumber } from './parameters';
import { toCell } from './toCell';

export const cells = define({
  id: 'TRAY.CELLS',
  parameters: [
    number('plants'),
    number('germination'),
    optionalNumber('seeds_per_cell'),
    optionalNumber('culls'),
    optionalNumber('assurance'),
  ],
  result: 'plain',
  calculate: ([plants, germination, seedsPerCell, culls, assurance], record) =>
    cellsNeeded(plants, germination, seedsPerCell, culls, assurance, record),
});

/**
 * Tray cells to sow for a number of transplants, one plant kept in a cell.
 * @customfunction TRAY.CELLS
 * @param plants Transplants wanted, whole, 1 or more
 * @param germination Share of seeds that germinate, above 0 to 1, such as 85%
 * @param [seeds_per_cell] Seeds sown in each cell, whole, default 1
 * @param [culls] Share of the cells with a plant that are thrown out, 0 to below 1, default 0
 * @param [assurance] Chance that there are enough, above 0, below 1; left out: an average
 * @returns Whole cells
 */
export function trayCells(
  plants: any,
  germination: any,
  seeds_per_cell?: any,
  culls?: any,
  assurance?: any,
): any {
  return toCell(cells, [plants, germination, seeds_per_cell, culls, assurance]);
}
