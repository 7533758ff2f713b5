import { dayOfSerial } from '../workbook/serialDate';
import { locale } from '../texts/language';

const format = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
const msPerDay = 86_400_000;

/** The day of a cell as it is said in the pane's language; "" for none. Sheets and files have year-month-day. */
export function sayDay(serial: number | null): string {
  const day = serial === null ? null : dayOfSerial(serial);
  return day === null ? '' : format.format(Math.floor(day) * msPerDay);
}
