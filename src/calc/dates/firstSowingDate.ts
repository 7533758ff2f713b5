import { practice } from '../../reference/practice';
import type { Recorder } from '../working';
import { waitAfterLastFrost } from './waitAfterLastFrost';

/**
 * The first day for sowing in the open ground.
 *
 * first sowing = last frost + days after, a fraction of a day rounded up
 *
 * @param lastFrost mean (50 %) date of the last spring frost [whole day number]
 * @param daysAfter wait after it [days], -60 to 120, 7 when undefined; below 0 only under covers
 * @returns the first day of sowing [whole day number]
 * @throws notADate, outOfRange
 * Source: common practice, no source, for cucurbits at large; Cornell Home Gardening, watermelon: 1 to 2 weeks
 * after the mean last frost.
 * @example firstSowingDate(20575, undefined) // 20582: 2026-05-02 gives 2026-05-09
 */
export function firstSowingDate(lastFrost: number, daysAfter: number | undefined, record?: Recorder): number {
  return waitAfterLastFrost('firstSowing', practice.sowingWait.value, lastFrost, daysAfter, record);
}
