import { successionDates } from '../calc/dates/successionDates';
import { define } from './define';
import { day, number } from './parameters';
import { toCells } from './toCell';

export const succession = define({
  id: 'DATE.SUCCESSION',
  parameters: [day('first', 'spring'), day('last', 'fall'), number('every_days')],
  result: 'day',
  grounds: ['arithmetic'],
  calculate: ([first, last, everyDays], record) =>
    successionDates(first, last, everyDays, record).map((date) => [date]),
});

/**
 * Dates for sowing again and again, one below the other, none after the last.
 * @customfunction DATE.SUCCESSION
 * @param first Date of the first sowing, included
 * @param last Date that no sowing comes after, such as DATE.LASTSOWING gives
 * @param every_days Days from one sowing to the next, whole, 1 to 365
 * @returns A column of dates, at most 366
 */
export function dateSuccession(first: any, last: any, every_days: any): any[][] {
  return toCells(succession, [first, last, every_days]);
}
