import { practice } from '../../reference/practice';
import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import type { Recorder } from '../working';

/**
 * Days from the last frost of spring to the first frost of fall.
 *
 * season days = first frost - last frost
 *
 * @param lastFrost date of the last spring frost [whole day number]
 * @param firstFrost date of the first fall frost after it [whole day number]
 * @returns length of the season [days], 1 to 366
 * @throws notADate, frostDatesReversed when equal or reversed, frostYearsApart when more than 366 days apart
 * Source: project convention: both dates carry their years, so that a southern season over New Year is no special
 * case.
 * @example seasonDays(20575, 20736) // 161: 2026-05-02 to 2026-10-10
 */
export function seasonDays(lastFrost: number, firstFrost: number, record?: Recorder): number {
  checkDay('last_frost', lastFrost);
  checkDay('first_frost', firstFrost);
  const days = firstFrost - lastFrost;
  if (days <= 0) refuse({ code: 'frostDatesReversed', lastFrost, firstFrost });
  if (days > practice.mostSeasonDays.value) refuse({ code: 'frostYearsApart', lastFrost, firstFrost, days });
  record?.({
    step: 'seasonDays',
    inputs: { first_frost: firstFrost, last_frost: lastFrost },
    result: days,
    unit: 'days',
  });
  return days;
}
