import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

/**
 * A date that stands a wait after the last frost; setting out and first sowing differ in the customary wait.
 *
 * date = last frost + days after, a fraction of a day rounded up
 *
 * @param step key of the step in the working
 * @param customaryDays the wait when none is given [days]
 * @param lastFrost mean (50 %) date of the last spring frost [whole day number]
 * @param daysAfter wait after it [days], -60 to 120; below 0 only under covers
 * @returns the date [whole day number]
 * @throws notADate, outOfRange
 * Source: common practice, no source, for cucurbits at large; Cornell Home Gardening for watermelon.
 */
export function waitAfterLastFrost(
  step: string,
  customaryDays: number,
  lastFrost: number,
  daysAfter: number | undefined,
  record?: Recorder,
): number {
  checkDay('last_frost', lastFrost);
  const wait = orAssume(daysAfter, customaryDays, 'days_after', 'days', 'common practice, no source', record);
  checkDays('days_after', wait);
  const exact = lastFrost + wait;
  const date = ceilWhole(exact);
  record?.({
    step,
    inputs: { last_frost: lastFrost, days_after: wait },
    result: date,
    unit: 'date',
    ...roundingOf(exact, date),
  });
  if (daysAfter === undefined) {
    record?.({ source: 'cornell-watermelon' });
    record?.({ remark: 'waitBelongsToMean' });
  }
  if (wait < 0) record?.({ remark: 'beforeLastFrost' });
  record?.({ remark: 'soilDecides' });
  return date;
}
