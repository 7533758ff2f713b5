import { checkDays } from '../dates/dayLimits';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { seasonDays } from './seasonDays';

/**
 * Days to spare between the frosts, negative when the season is too short.
 *
 * days to spare = first frost - last frost - days needed, a fraction of a day rounded down
 *
 * @param lastFrost date of the last spring frost [whole day number]
 * @param firstFrost date of the first fall frost after it [whole day number]
 * @param daysNeeded from the last frost to the last pick [days], 0 to 730
 * @returns days to spare [days], negative when short
 * @throws notADate, outOfRange, frostDatesReversed, frostYearsApart
 * Source: project convention.
 * @example seasonSpare(20575, 20736, 95) // 66
 */
export function seasonSpare(
  lastFrost: number,
  firstFrost: number,
  daysNeeded: number,
  record?: Recorder,
): number {
  const season = seasonDays(lastFrost, firstFrost, record);
  checkDays('days_needed', daysNeeded);
  const exact = season - daysNeeded;
  const spare = floorWhole(exact);
  record?.({
    step: 'seasonSpare',
    inputs: { seasonDays: season, days_needed: daysNeeded },
    result: spare,
    unit: 'days',
    ...roundingOf(exact, spare),
  });
  if (spare < 0) record?.({ remark: 'seasonTooShort' });
  return spare;
}
