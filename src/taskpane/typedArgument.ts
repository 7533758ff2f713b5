import { printText } from '../workbook/printFormula';
import { dayOfText, isoOfDay } from '../workbook/serialDate';
import { datesInWords } from '../templates/inWords';

/** As a formula has it: a date by its parts, and a word of small letters, such as a crop, as a text. */
export function typedArgument(given: string): string {
  const text = given.trim();
  const day = dayOfText(text, datesInWords);
  if (day !== null) return `DATE(${isoOfDay(day).split('-').map(Number).join(',')})`;
  return /^[a-z][a-z -]*$/.test(text) ? printText(text) : text;
}
