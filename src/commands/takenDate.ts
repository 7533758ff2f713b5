/** Dates that could be read otherwise, and how they were read. */
import { catalogue } from '../texts/catalogue';
import { datesInWords } from '../texts/datesInWords';
import { fill } from '../texts/fill';
import { dayOfText, isoOfDay } from '../workbook/serialDate';

/** 02/05/2026 in words, as it was taken; null for what is told beyond doubt, or is no date. */
export function takenDate(text: string): string | null {
  const day = /^\s*\d{1,2}\D+\d{1,2}\D+\d{4}\s*$/.test(text) ? dayOfText(text, datesInWords) : null;
  if (day === null) return null;
  const [year = '', month = '', date = ''] = isoOfDay(day).split('-');
  const values = { year, month: monthNamed(Number(month)), date: Number(date) };
  return fill(catalogue.commands.plan.dateInWords, values);
}

/** @param month from 1 */
export function monthNamed(month: number): string {
  return datesInWords.months[month - 1]?.[0] ?? '';
}
