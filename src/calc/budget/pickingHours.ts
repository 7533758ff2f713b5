import { checkCount, checkPositive } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * Hours of one person for picking rows again and again.
 *
 * hours = row length x picks / rate
 *
 * @param rowLength all rows together [ft or m], above 0
 * @param picks whole, 1 or more
 * @param rate row that one person picks in an hour [ft or m], above 0
 * @returns hours
 * @throws outOfRange, notWhole
 * Source: proportion. No published rate was found for hand-picked cucurbits: it is asked for.
 * @example pickingHours(400, 11, 200) // 22
 */
export function pickingHours(rowLength: number, picks: number, rate: number, record?: Recorder): number {
  checkPositive('row_length', rowLength, 'none');
  const count = checkCount('picks', picks, 'picks', { atLeast: 1 });
  checkPositive('rate', rate, 'none');
  const hours = (rowLength * count) / rate;
  record?.({
    step: 'pickingHours',
    inputs: { row_length: rowLength, picks: count, rate },
    result: hours,
    unit: 'hours',
  });
  record?.({ remark: 'timeYourOwnPicking' });
  return hours;
}
