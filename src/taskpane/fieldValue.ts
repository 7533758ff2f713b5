/** Between what stands in a cell of the form and what a person types into a field of the pane. */
import { isCellError, type CellValue, type ReadValue } from '../workbook/port';
import { checkLimits, type Limits } from '../workbook/limits';
import { parseNumber } from '../workbook/parseNumber';
import { choiceLike } from '../workbook/readInputs';
import { dayOfIso, dayOfSerial, isoOfDay, serialOfDay } from '../workbook/serialDate';
import type { FormLine, Format } from '../workbook/template';
import type { NearestNames } from '../templates/sayListProblem';
import { sayChoice } from '../templates/sayChoice';
import { sayLimits } from '../templates/sayLimits';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { sayDay } from './sayDay';

const { pane } = catalogue;

export type FieldKind = 'date' | 'percent' | 'number' | 'choice' | 'offer' | 'text';

export type Checked = { readonly value: CellValue } | { readonly wrong: string };

export function fieldKind(line: FormLine): FieldKind {
  if (line.takenAs !== undefined) return 'offer';
  if (line.choices.length > 0) return 'choice';
  if (line.format === 'date' || line.format === 'percent' || line.format === 'text') return line.format;
  return 'number';
}

/** What the field shows for a cell's value; null where the field has no way to show it. */
export function fieldText(line: FormLine, value: ReadValue): string | null {
  if (value === null) return '';
  if (isCellError(value)) return null;
  const kind = fieldKind(line);
  if (kind === 'date') {
    const day = typeof value === 'number' ? dayOfSerial(value) : null;
    if (day !== null) return isoOfDay(Math.floor(day));
    return value === '' ? '' : null;
  }
  if (kind === 'choice') return value === '' ? '' : (choiceLike(line.choices, String(value)) ?? null);
  if (kind === 'percent' && typeof value === 'number') return plainNumber(value * 100);
  return typeof value === 'number' ? plainNumber(value) : String(value);
}

/** The cell's value in words, as a note says it. */
export function sayValue(line: FormLine, value: ReadValue): string {
  if (isCellError(value)) return value.message ?? value.error;
  if (fieldKind(line) === 'date' && typeof value === 'number') return sayDay(value);
  const text = fieldText(line, value) ?? String(value);
  if (fieldKind(line) === 'choice') return sayChoice(line, text);
  return fieldKind(line) === 'percent' && typeof value === 'number' ? `${text} ${pane.season.percent}` : text;
}

/** What is wrong with a cell whose value the field cannot show. */
export function sayUnshowable(line: FormLine, value: ReadValue): string {
  const given = sayValue(line, value);
  if (isCellError(value)) return fill(pane.wrong.sheetError, { given });
  if (fieldKind(line) === 'date') return fill(pane.wrong.sheetDate, { given });
  const choices = line.choices.map((choice) => sayChoice(line, choice)).join(', ');
  return fill(pane.wrong.notAChoice, { given, choices });
}

/** The cell's value that a field's text stands for, or what to do about it. Nothing typed is an empty cell. */
export function checkText(line: FormLine, typed: string, nearestNames: NearestNames = () => []): Checked {
  const text = typed.trim();
  if (text === '') return { value: null };
  switch (fieldKind(line)) {
    case 'text':
    case 'choice':
      return { value: text };
    case 'offer':
      return choiceLike(line.choices, text) === undefined
        ? { wrong: sayUnknown(line, text, nearestNames) }
        : { value: text };
    case 'date':
      return checkDate(text);
    case 'percent':
      return checkPercent(text.replace(/\s*%$/, ''), line.limits ?? anyShare);
    case 'number':
      return checkNumber(text, line.limits ?? {});
  }
}

function sayUnknown(line: FormLine, given: string, nearestNames: NearestNames): string {
  const near = nearestNames(given, line.choices).map((choice) => sayChoice(line, choice));
  return near.length === 0
    ? fill(pane.wrong.notKnown, { given })
    : fill(pane.wrong.notKnownNear, { given, names: near.join(', ') });
}

export function wrongDate(): Checked {
  return { wrong: pane.wrong.notADate };
}

function checkDate(text: string): Checked {
  const day = dayOfIso(text);
  const serial = day === null ? null : serialOfDay(day);
  return serial === null || dayOfSerial(serial) === null ? wrongDate() : { value: serial };
}

const anyShare: Limits = { atLeast: 0, atMost: 1 };

function checkPercent(text: string, limits: Limits): Checked {
  const percent = text.endsWith('%') ? null : readNumber(text);
  const share = readNumber(`${text}%`);
  if (percent === null || share === null) return notANumber(text);
  const isTiny = limits.mayBeTiny !== true && percent > 0 && percent < 1;
  if (isTiny || (percent === 1 && limits.isNeverOnePercent === true)) {
    const values = { given: text, percent: plainNumber(percent * 100) };
    return { wrong: fill(pane.wrong.shareForPercent, values) };
  }
  return within(share, `${text} ${pane.season.percent}`, limits, 'percent');
}

function checkNumber(text: string, limits: Limits): Checked {
  const number = text.endsWith('%') ? null : readNumber(text);
  return number === null ? notANumber(text) : within(number, text, limits, 'general');
}

function within(value: number, given: string, limits: Limits, format: Format): Checked {
  const problem = checkLimits(value, limits);
  if (problem === null) return { value };
  return { wrong: fill(pane.wrong[problem], { given, limits: sayLimits(limits, format) }) };
}

function notANumber(given: string): Checked {
  return { wrong: fill(pane.wrong.notANumber, { given }) };
}

/** A decimal comma is understood; "1,234" may be a thousand and is refused. */
function readNumber(text: string): number | null {
  return parseNumber(text, text.includes(','));
}

/** Without the dust of binary fractions. */
function plainNumber(value: number): string {
  return String(Number(value.toPrecision(12)));
}
