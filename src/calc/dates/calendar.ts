/** The calendar: the only place where a day number meets a year and a month. UTC, so that no clock change moves it. */
import { UTCDate } from '@date-fns/utc';
import { addDays, differenceInCalendarDays, getDate, getMonth, getYear } from 'date-fns';

const epoch = new UTCDate(1970, 0, 1);

/** The day number of a date; months from 1. */
export function dayOfDate(year: number, month: number, date: number): number {
  return differenceInCalendarDays(new UTCDate(year, month - 1, date), epoch);
}

/** The calendar year of a whole day number. */
export function yearOfDay(day: number): number {
  return getYear(addDays(epoch, day));
}

/** The day of the same month and date in another year; of 29 February 1 March where there is none. */
export function sameDateIn(year: number, day: number): number {
  const date = addDays(epoch, day);
  return dayOfDate(year, getMonth(date) + 1, getDate(date));
}
