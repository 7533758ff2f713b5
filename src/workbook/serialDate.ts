/**
 * Spreadsheet serial numbers and whole day numbers. A day number counts days since 1970-01-01 (UTC), so no time
 * zone and no clock change can move it. Serial 25569 is 1970-01-01 in the 1900 date system.
 *
 * Serials below 61 are not dates here: the 1900 system has a 29 February 1900 (serial 60) that never was, and a
 * small number in a date cell is nearly always a count of days.
 */
import { plainWord } from './plainWord';

const serialOfEpoch = 25569;
const firstSerial = 61;
const lastSerial = 2958465;

/** The day number of a serial (fractions kept), or null when it is no date from 1900-03-01 to 9999-12-31. */
export function dayOfSerial(serial: number): number | null {
  return serial >= firstSerial && serial < lastSerial + 1 ? serial - serialOfEpoch : null;
}

export function serialOfDay(day: number): number {
  return day + serialOfEpoch;
}

const isoPattern = /^\s*(\d{4})-(\d{2})-(\d{2})\s*$/;

/** The day number of an ISO date (yyyy-mm-dd), or null when the text is none, or none from 1900-03-01 on. */
export function dayOfIso(text: string): number | null {
  const parts = isoPattern.exec(text);
  if (!parts) return null;
  const milliseconds = Date.parse(`${parts[1]}-${parts[2]}-${parts[3]}T00:00:00Z`);
  if (Number.isNaN(milliseconds)) return null;
  const day = milliseconds / 86400000;
  return isoOfDay(day) === text.trim() && dayOfSerial(serialOfDay(day)) !== null ? day : null;
}

/** How people write a date besides yyyy-mm-dd. */
export interface DateWords {
  /** The names of the twelve, each perhaps several; of a name three letters are enough. */
  readonly months: readonly (readonly string[])[];
  /** Whether of 5/6/2026 the day is known to be the 5. Else nobody can tell, and it is no date. */
  readonly isDayFirst: boolean;
}

/** The day number of a date in a list, or null where it is none, or could be two. */
export function dayOfText(text: string, words: DateWords): number | null {
  const day = dayOfIso(text);
  if (day !== null) return day;
  const { year = '', month, date } = partsOfText(text, words) ?? {};
  return month === undefined || date === undefined
    ? null
    : dayOfIso(`${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`);
}

/** Of 31 June, with a year or without one: the month, from 1, and how many days it has; else null. */
export function beyondMonth(text: string, words: DateWords): { month: number; days: number } | null {
  const [, ...iso] = isoPattern.exec(text) ?? [];
  const [year = '', month = 0, date = 0] = iso.length > 0 ? iso.map(Number) : [];
  const parts = iso.length > 0 ? { year: String(year), month, date } : partsOfText(text, words);
  if (parts === null || parts.month > 12) return null;
  // Without a year February has its 29.
  const days = new Date(Date.UTC(Number(parts.year) || 2000, parts.month, 0)).getUTCDate();
  return parts.date > days ? { month: parts.month, days } : null;
}

interface DateParts {
  /** Four digits, or none. */
  readonly year: string;
  readonly month: number;
  readonly date: number;
}

/** What a text in words, or in figures with the day first, says; there may be no such day. */
function partsOfText(text: string, { months, isDayFirst }: DateWords): DateParts | null {
  const [one = '', two = '', year = '', ...more] = plainWord(text)
    .split(/[\s./,-]+/)
    .filter((part) => part !== 'de' && part !== 'del');
  const dated = (month: number, date: string): DateParts | null =>
    month === 0 || !/^\d{1,2}$/.test(date) || !/^(?:\d{4})?$/.test(year) || more.length > 0
      ? null
      : { year, month, date: Number(date) };
  const inFigures = isDayFirst && /^\d{1,2}$/.test(two) ? dated(Number(two), one) : null;
  return dated(monthOf(two, months), one) ?? dated(monthOf(one, months), two) ?? inFigures;
}

const leastLettersOfMonth = 3;

/** From 1; 0 for any other word. */
function monthOf(plain: string, months: DateWords['months']): number {
  if (plain.length < leastLettersOfMonth) return 0;
  return months.findIndex((names) => names.some((name) => plainWord(name).startsWith(plain))) + 1;
}

/** Whether one of the words of a text is the name of a month. */
export function namesMonth(text: string, { months }: DateWords): boolean {
  return plainWord(text)
    .split(/[^\p{L}]+/u)
    .some((word) => monthOf(word, months) > 0);
}

/** yyyy-mm-dd of a whole day number. */
export function isoOfDay(day: number): string {
  return new Date(day * 86400000).toISOString().slice(0, 10);
}
