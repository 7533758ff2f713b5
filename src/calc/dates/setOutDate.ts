import { practice } from '../../reference/practice';
import type { Recorder } from '../working';
import { waitAfterLastFrost } from './waitAfterLastFrost';

/**
 * The day on which transplants are set out.
 *
 * set out = last frost + days after, a fraction of a day rounded up
 *
 * @param lastFrost mean (50 %) date of the last spring frost [whole day number]
 * @param daysAfter wait after it [days], -60 to 120, 14 when undefined; below 0 only under covers
 * @returns the day of setting out [whole day number]
 * @throws notADate, outOfRange
 * Source: common practice, no source, for cucurbits at large; Cornell Home Gardening, watermelon: 2 weeks after
 * the mean last frost.
 * @example setOutDate(20575, undefined) // 20589: 2026-05-02 gives 2026-05-16
 */
export function setOutDate(lastFrost: number, daysAfter: number | undefined, record?: Recorder): number {
  return waitAfterLastFrost('setOut', practice.setOutWait.value, lastFrost, daysAfter, record);
}
