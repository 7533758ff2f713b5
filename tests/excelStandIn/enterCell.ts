/** What Excel makes of a value that is put into a cell, as if it had been typed there. */
import { refuse } from './excelError';

export type Constant = string | number | boolean;

export type Cell =
  { readonly constant: Constant } | { readonly formula: string } | { readonly error: string };

const longestText = 32767;
const longestFormula = 8192;
const errors = ['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A'];

/** null empties the cell. */
export function enterCell(given: unknown, numberFormat: string): Cell | null {
  if (given === '') return null;
  if (typeof given === 'number') {
    return Number.isFinite(given) ? { constant: given } : refuse('InvalidArgument', `${given} in a cell`);
  }
  if (typeof given === 'boolean') return { constant: given };
  if (typeof given !== 'string') return refuse('InvalidArgument', `${typeof given} in a cell`);
  const isForced = given.startsWith("'");
  const text = isForced ? given.slice(1) : given;
  if (text.length > longestText) return refuse('InvalidArgument', 'a text longer than a cell');
  if (isForced || numberFormat === '@') return text === '' ? null : { constant: text };
  return enterTyped(text);
}

function enterTyped(text: string): Cell {
  if (/^=./s.test(text)) return enterFormula(text);
  const trimmed = text.trim();
  if (/^(true|false)$/i.test(trimmed)) return { constant: trimmed.toLowerCase() === 'true' };
  if (errors.includes(trimmed.toUpperCase())) return { error: trimmed.toUpperCase() };
  const number = numberIn(trimmed);
  if (number !== null) return { constant: number };
  if (/^[+\-@]./s.test(text)) return enterFormula(`=${text}`);
  return { constant: text };
}

function enterFormula(text: string): Cell {
  if (text.length > longestFormula) return refuse('FormulaLengthExceedsLimit', 'the formula is too long');
  const outsideTexts = text.replace(/"(?:[^"]|"")*"/g, '');
  const count = (sign: string): number => outsideTexts.split(sign).length;
  if (count('(') !== count(')') || outsideTexts.includes('"')) refuse('InvalidArgument', `formula ${text}`);
  return { formula: text };
}

/** Numbers, percentages, dates, times and fractions; of a date only that it becomes a number, not which one. */
function numberIn(text: string): number | null {
  if (/^[+-]?[$€£]?[\d,]*\.?\d+(e[+-]?\d+)?$/i.test(text)) return Number(text.replace(/[$€£,]/g, ''));
  if (/^[+-]?[\d.]*\d\s*%$/.test(text)) return Number.parseFloat(text) / 100;
  if (/^\(\d+\)$/.test(text)) return -Number.parseFloat(text.slice(1));
  const isDateOrFraction =
    /^\d{1,4}[-/.]\d{1,2}([-/.]\d{1,4})?$/.test(text) ||
    /^\d{1,2}:\d{2}(:\d{2})?$/.test(text) ||
    /^\d{1,2}[ -]?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i.test(text) ||
    /^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]* \d/i.test(text);
  return isDateOrFraction ? 45000 : null;
}
