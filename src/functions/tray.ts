import { cellsNeeded } from '../calc/tray/cellsNeeded';
import { mixForCells } from '../calc/tray/mixForCells';
import { traysNeeded } from '../calc/tray/traysNeeded';
import { define } from './define';
import { number, optionalNumber, units } from './parameters';
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
  grounds: ['independent seeds'],
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

export const count = define({
  id: 'TRAY.COUNT',
  parameters: [number('cells'), number('cells_per_tray')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([wanted, cellsPerTray], record) => traysNeeded(wanted, cellsPerTray, record),
});

/**
 * Trays that hold a number of cells.
 * @customfunction TRAY.COUNT
 * @param cells Cells to sow, whole, 1 or more, as TRAY.CELLS gives them
 * @param cells_per_tray Cells in a tray, whole, such as 72
 * @returns Whole trays
 */
export function trayCount(cells: any, cells_per_tray: any): any {
  return toCell(count, [cells, cells_per_tray]);
}

export const mix = define({
  id: 'TRAY.MIX',
  parameters: [number('cells'), number('cell_volume'), units],
  result: 'plain',
  grounds: ['units'],
  calculate: ([wanted, cellVolume, system], record) => mixForCells(wanted, cellVolume, system, record),
});

/**
 * Potting mix that fills a number of cells, as it lies in them.
 * @customfunction TRAY.MIX
 * @param cells Cells to fill, whole, 1 or more
 * @param cell_volume Volume of a cell, cu in (ml), from the tray's maker
 * @param [units] "us" (default) or "metric"
 * @returns Mix, cu ft (litres)
 */
export function trayMix(cells: any, cell_volume: any, units?: any): any {
  return toCell(mix, [cells, cell_volume, units]);
}
