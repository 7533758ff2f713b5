import { checkCount } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/**
 * Trays that hold a number of cells.
 *
 * trays = cells / cells per tray, rounded up
 *
 * @param cells whole, 1 or more
 * @param cellsPerTray whole, 1 or more
 * @returns whole trays
 * @throws outOfRange, notWhole
 * Source: arithmetic.
 * @example traysNeeded(131, 72) // 2
 */
export function traysNeeded(cells: number, cellsPerTray: number, record?: Recorder): number {
  const wanted = checkCount('cells', cells, 'cells', { atLeast: 1 });
  const inTray = checkCount('cells_per_tray', cellsPerTray, 'cells', { atLeast: 1 });
  const exact = wanted / inTray;
  const trays = ceilWhole(exact);
  record?.({
    step: 'traysNeeded',
    inputs: { cells: wanted, cells_per_tray: inTray },
    result: trays,
    unit: 'trays',
    ...roundingOf(exact, trays),
  });
  return trays;
}
