import { printText } from '../workbook/printFormula';
import { dayOfIso } from '../workbook/serialDate';

/** As a formula has it: a date by its parts, and a word of small letters, such as a crop, as a text. */
export function typedArgument(given: string): string {
  const text = given.trim();
  if (dayOfIso(text) !== null) return `DATE(${text.split('-').map(Number).join(',')})`;
  return /^[a-z][a-z -]*$/.test(text) ? printText(text) : text;
}
