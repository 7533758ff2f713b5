import { dayInCalendar, dayOfDate } from '../dates/calendar';

/** A date as it is written: which of two numbers is the month can be open. */
export type WrittenDay =
  | { readonly year: number; readonly month: number; readonly date: number }
  | { readonly year: number; readonly dayOfYear: number }
  | { readonly year: number; readonly first: number; readonly second: number };

const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/;
const digitsOnly = /^(\d{4})(\d{2})(\d{2})$/;
const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})(?: .*)?$/;

/** ISO 8601: a day of the year has three digits. */
const ofYear = /^(\d{4})-(\d{3})$/;
const dayThenName = /^(\d{1,2})[-/. ]+([a-z]{3,9})[-/., ]+(\d{4})(?: .*)?$/i;
const nameThenDay = /^([a-z]{3,9})[-/. ]+(\d{1,2})[-/., ]+(\d{4})(?: .*)?$/i;
const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

/** From 1; by the whole name or its beginning, as in Jan or Sept. 0 for none, which no calendar has. */
function monthOfName(name: string): number {
  return monthNames.findIndex((one) => one.startsWith(name.toLowerCase())) + 1;
}

/** What a cell says of a day, or null when it says none. A time of day after it does not matter. */
export function readDay(text: string): WrittenDay | null {
  const trimmed = text.trim();
  const [, year, month, date] = yearFirst.exec(trimmed) ?? digitsOnly.exec(trimmed) ?? [];
  if (year !== undefined) return { year: Number(year), month: Number(month), date: Number(date) };
  const [, ordinalYear, dayOfYear] = ofYear.exec(trimmed) ?? [];
  if (ordinalYear !== undefined) return { year: Number(ordinalYear), dayOfYear: Number(dayOfYear) };
  const named = namedDay(trimmed);
  if (named !== null) return named;
  const [, first, second, last] = yearLast.exec(trimmed) ?? [];
  if (last === undefined) return null;
  return { year: Number(last), first: Number(first), second: Number(second) };
}

/** With the month in words it does not matter which stands first. */
function namedDay(text: string): WrittenDay | null {
  const [, dateFirst, nameAfter, yearAfter] = dayThenName.exec(text) ?? [];
  const [, nameFirst, dateAfter, year] = nameThenDay.exec(text) ?? [];
  const month = monthOfName(nameAfter ?? nameFirst ?? '-');
  if (month === 0) return null;
  return { year: Number(yearAfter ?? year), month, date: Number(dateFirst ?? dateAfter) };
}

/** In which order a date with the year last must be; null when either order gives a day. */
export function orderOf(written: WrittenDay): 'monthFirst' | 'dayFirst' | null {
  if (!('first' in written) || written.first === written.second) return null;
  if (written.first > 12) return 'dayFirst';
  return written.second > 12 ? 'monthFirst' : null;
}

/** The day number, or null where the calendar has no such day. */
export function dayOfWritten(written: WrittenDay, order: 'monthFirst' | 'dayFirst' | null): number | null {
  if ('dayOfYear' in written) {
    const before = dayOfDate(written.year, 1, 1) - 1;
    const day = before + written.dayOfYear;
    return day > before && day < dayOfDate(written.year + 1, 1, 1) ? day : null;
  }
  if (!('first' in written)) return dayInCalendar(written.year, written.month, written.date);
  const { year, first, second } = written;
  return order === 'dayFirst' ? dayInCalendar(year, second, first) : dayInCalendar(year, first, second);
}

/** Where the days of spreadsheets begin; the 29 February 1900 that they have before never was. */
export const firstDayOfSheets = dayOfDate(1900, 3, 1);
