/** What is typed for an argument of a function: how a formula has it, and the value when it says one. */
import { datesInWords } from '../texts/datesInWords';
import { parseFormula } from '../workbook/parseFormula';
import { parseNumber } from '../workbook/parseNumber';
import { printText } from '../workbook/printFormula';
import { dayOfText, isoOfDay, serialOfDay } from '../workbook/serialDate';

/**
 * A word of small letters, such as a crop; several words; a list with ";"; a date as it is written elsewhere, which would
 * be divided else.
 */
const isText = (typed: string): boolean =>
  /^\p{Ll}[\p{L} '-]*$/u.test(typed) ||
  /^\p{L}[\p{L}'-]*( +[\p{L}'-]+)+$/u.test(typed) ||
  /^[^"(){}]*;[^"(){}]*$/.test(typed) ||
  /^\d+([/-])\d+\1\d+$/.test(typed);

/** "Zucchini" may be a name of cells, or the crop that begins a sentence: the workbook knows. */
export function mayBeName(given: string): boolean {
  return /^\p{Lu}\p{Ll}\p{L}*$/u.test(given.trim()) && !/^\s*(true|false)\s*$/i.test(given);
}

/**
 * As a formula has it: a date by its parts, and words as a text.
 *
 * @param isName whether the workbook has the name that it may be
 */
export function typedArgument(given: string, isName = true): string {
  const typed = given.trim();
  const day = dayOfText(typed, datesInWords);
  if (day !== null) return `DATE(${isoOfDay(day).split('-').map(Number).join(',')})`;
  return isText(typed) || (!isName && mayBeName(typed)) ? printText(typed) : typed;
}

/** undefined for cells, names and formulas, which may hold anything. */
export function typedValue(given: string, isName = true): string | number | boolean | undefined {
  const typed = given.trim();
  const day = dayOfText(typed, datesInWords);
  if (day !== null) return serialOfDay(day);
  const number = parseNumber(typed, false);
  if (number !== null) return number;
  const parsed = parseFormula(`=${typedArgument(typed, isName)}`);
  if (parsed === null) return typed;
  return parsed.kind === 'value' ? parsed.value : undefined;
}
