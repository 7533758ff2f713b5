/** The calendar: the only place where a day number meets a year and a month. UTC, so that no clock change moves it. */
import { UTCDate } from '@date-fns/utc';
import { addDays, differenceInCalendarDays, getDate, getDaysInMonth, getMonth, getYear } from 'date-fns';

const epoch = new UTCDate(1970, 0, 1);

/** The day number of a date; months from 1. */
export function dayOfDate(year: number, month: number, date: number): number {
  return differenceInCalendarDays(new UTCDate(year, month - 1, date), epoch);
}

/** The calendar year of a whole day number. */
export function yearOfDay(day: number): number {
  return getYear(addDays(epoch, day));
}

/** The month of a whole day number, from 1. */
export function monthOfDay(day: number): number {
  return getMonth(addDays(epoch, day)) + 1;
}

/** The day of the same month and date in another year; of 29 February 1 March where there is none. */
export function sameDateIn(year: number, day: number): number {
  const date = addDays(epoch, day);
  return dayOfDate(year, getMonth(date) + 1, getDate(date));
}

/** The day number of a date, or null where the calendar has no such day; years from 1000, months from 1. */
export function dayInCalendar(year: number, month: number, date: number): number | null {
  if (year < 1000 || month < 1 || month > 12 || date < 1) return null;
  return date > getDaysInMonth(new UTCDate(year, month - 1)) ? null : dayOfDate(year, month, date);
}
