import { checkNumber } from '../limits/limits';
import { daysPerWeek } from '../units/units';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { checkDay } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

const customaryWeeks = 3;
const mostWeeks = 26;

/**
 * The day on which seed for transplants is sown.
 *
 * start = set out - 7 x weeks, a fraction of a day rounded up (younger plants rather than overgrown ones)
 *
 * @param setOut day of setting out [whole day number]
 * @param weeks time to grow the transplants [weeks], 0 to 26, fractions allowed, 3 when undefined
 * @returns the day of sowing for transplants [whole day number]
 * @throws notADate, outOfRange
 * Source: Virginia Cooperative Extension, Starting Vegetable Transplants: 3 weeks for cucurbits (secondary copy);
 * common practice is 3 to 4. Limits: judgement.
 * @example transplantStartDate(20589, undefined) // 20568: 2026-05-16 gives 2026-04-25
 */
export function transplantStartDate(setOut: number, weeks: number | undefined, record?: Recorder): number {
  checkDay('set_out', setOut);
  const growing = orAssume(weeks, customaryWeeks, 'weeks', 'weeks', 'vce-transplants', record);
  checkNumber('weeks', growing, 'weeks', { atLeast: 0, atMost: mostWeeks });
  const exact = setOut - growing * daysPerWeek;
  const start = ceilWhole(exact);
  record?.({
    step: 'transplantStart',
    inputs: { set_out: setOut, weeks: growing, daysPerWeek },
    result: start,
    unit: 'date',
    ...roundingOf(exact, start),
  });
  if (weeks === undefined) record?.({ remark: 'transplantWeeksDiffer' });
  return start;
}
