import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';

const { months, date: words } = catalogue.pictures;

/** Room for a label of an axis of dates. */
const labelPx = 48;

export interface DateAxis {
  readonly min: number;
  readonly max: number;
  /** Serials of firsts of months: where a line stands, and a label. */
  readonly ticks: readonly number[];
  readonly labels: readonly number[];
}

/** Whole months around the serials, labelled as often as there is room. */
export function dateAxis(serials: readonly number[], widthPx: number): DateAxis {
  const min = firstOfMonth(Math.min(...serials), 0);
  const end = Math.max(...serials);
  const ticks = [min];
  for (let next = 1; (ticks[ticks.length - 1] ?? end) < end || next === 1; next++)
    ticks.push(firstOfMonth(min, next));
  const every = Math.ceil(((ticks.length - 1) * labelPx) / widthPx);
  return {
    min,
    max: ticks[ticks.length - 1] ?? end,
    ticks,
    labels: ticks.filter((_, i) => i % every === 0),
  };
}

/** Such as May 2: dates of all years alike. */
export function sayDate(serial: number): string {
  const { month, date } = partsOf(serial);
  return fill(words, { month: months[month - 1] ?? '', date });
}

export function yearOf(serial: number): number {
  return partsOf(serial).year;
}

function partsOf(serial: number): { year: number; month: number; date: number } {
  const [year = 0, month = 0, date = 0] = isoOfDay(dayOfSerial(serial) ?? 0)
    .split('-')
    .map(Number);
  return { year, month, date };
}

function firstOfMonth(serial: number, monthsLater: number): number {
  const { year, month } = partsOf(serial);
  const day = Date.UTC(year, month - 1 + monthsLater, 1) / 86400000;
  return serial + day - (dayOfSerial(serial) ?? 0);
}
