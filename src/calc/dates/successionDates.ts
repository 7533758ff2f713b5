import { refuse } from '../errors';
import { checkCount } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { checkDay } from './dayLimits';

/** A year of days: more is a slip in a year or in the gap. Source: judgement. */
const mostDates = 366;

/**
 * Days for sowing again and again.
 *
 * first, first + every days, and so on, none after last
 *
 * @param first day of the first sowing, included [whole day number]
 * @param last the day that no sowing comes after [whole day number], not before the first
 * @param everyDays from one sowing to the next [days], whole, 1 to 365
 * @returns the days in order [whole day numbers], at most 366
 * @throws notADate, outOfRange, notWhole, lastBeforeFirst, tooManyDates
 * Source: arithmetic.
 * @example successionDates(20582, 20612, 14) // [20582, 20596, 20610]
 */
export function successionDates(first: number, last: number, everyDays: number, record?: Recorder): number[] {
  checkDay('first', first);
  checkDay('last', last);
  const gap = checkCount('every_days', everyDays, 'days', { atLeast: 1, atMost: 365 });
  if (last < first) refuse({ code: 'lastBeforeFirst', firstDay: first, lastDay: last });
  const exact = (last - first) / gap + 1;
  const count = floorWhole(exact);
  if (count > mostDates) refuse({ code: 'tooManyDates', count, most: mostDates });
  record?.({
    step: 'sowings',
    inputs: { first, last, every_days: gap },
    result: count,
    unit: 'none',
    ...roundingOf(exact, count),
  });
  const dates = Array.from({ length: count }, (_, i) => first + i * gap);
  record?.({
    step: 'lastOfSuccession',
    inputs: { first, sowings: count, every_days: gap },
    result: first + (count - 1) * gap,
    unit: 'date',
  });
  record?.({ remark: 'sowingsDrawTogether' });
  record?.({ remark: 'soilDecides' });
  return dates;
}
