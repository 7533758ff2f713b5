import { checkCount, checkNumber, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * Row cover or mulch for rows, with what is buried at either end.
 *
 * cover = rows x (row length + 2 x end tuck)
 *
 * @param rows whole, 1 or more
 * @param rowLength of one row [ft or m], above 0
 * @param endTuck buried at one end [ft or m], 0 or more
 * @returns length of cover [ft or m]
 * @throws outOfRange, notWhole
 * Source: geometry.
 * @example coverLength(4, 100, 3, unitSystems.us) // 424
 */
export function coverLength(
  rows: number,
  rowLength: number,
  endTuck: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const count = checkCount('rows', rows, 'rows', { atLeast: 1 });
  checkPositive('row_length', rowLength, units.length);
  checkNumber('end_tuck', endTuck, units.length, { atLeast: 0 });
  const cover = count * (rowLength + 2 * endTuck);
  record?.({
    step: 'coverLength',
    inputs: { rows: count, row_length: rowLength, end_tuck: endTuck },
    result: cover,
    unit: units.length,
  });
  record?.({ remark: 'coverWidthApart' });
  return cover;
}
