/**
 * How the cells of each kind of parameter are read. Hosts differ on what an empty cell is, so null, undefined
 * and "" all mean "not given", and so does 0 where no number can be meant; a rich value is its basic value; a
 * range of one cell is that cell. Longer than most files: every kind is read here and nowhere else.
 */
import { refuse } from '../calc/errors';
import { asWhole } from '../calc/whole/wholeNumbers';
import { unitSystems, type UnitSystem } from '../calc/units/units';
import { datesInWords } from '../texts/datesInWords';
import { parseNumber, whyNotNumber, withoutDoubt } from '../workbook/parseNumber';
import { dayOfIso, dayOfSerial, dayOfText, serialOfDay } from '../workbook/serialDate';
import type { Parameter } from './define';

type Read<T> = (value: Exclude<Bare, null>, name: string) => T;
type Bare = number | string | boolean | null;

/** The bare value of one cell, null when nothing was given. */
function bare(raw: unknown, name: string): Bare {
  if (raw === null || raw === undefined || raw === '') return null;
  if (typeof raw === 'number' || typeof raw === 'boolean') return raw;
  if (typeof raw === 'string') return raw.trim() === '' ? null : raw;
  if (Array.isArray(raw)) {
    const cells = raw.flat() as unknown[];
    return cells.length === 1 ? bare(cells[0], name) : refuse({ code: 'oneCellWanted', name });
  }
  const error = errorIn(raw);
  if (error !== null) return refuse({ code: 'errorInside', name, error });
  // A linked record shows an icon and a name; what would count as its value is "#VALUE!".
  if (typeof raw === 'object' && 'basicValue' in raw && !('basicType' in raw && raw.basicType === 'Error')) {
    return bare(raw.basicValue, name);
  }
  return refuse({ code: 'notText', name });
}

/** The error that a cell holds, in each shape in which hosts hand it over; null for anything else. */
function errorIn(raw: unknown): string | null {
  if (typeof raw !== 'object' || raw === null) return null;
  if ('error' in raw) return String(raw.error);
  if ('code' in raw) return String(raw.code);
  return 'type' in raw && raw.type === 'Error' && 'basicValue' in raw ? String(raw.basicValue) : null;
}

/** An empty cell reaches a function as 0 in some versions of the program; a word or a date is never 0. */
function neverZero(raw: unknown, name: string): Bare {
  const value = bare(raw, name);
  return value === 0 ? null : value;
}

function required<T>(name: string, read: Read<T>, given = neverZero): Parameter<T> {
  return {
    name,
    optional: false,
    read(raw) {
      const value = given(raw, name);
      return value === null ? refuse({ code: 'missing', name }) : read(value, name);
    },
  };
}

function optional<T>(name: string, read: Read<T>, given = neverZero): Parameter<T | undefined> {
  return {
    name,
    optional: true,
    read(raw) {
      const value = given(raw, name);
      return value === null ? undefined : read(value, name);
    },
  };
}

/** A cell set as text that holds a plain number counts as that number, as in the spreadsheet's own functions. */
const numberIn = (text: string): number | null => parseNumber(text, false);

function readNumber(value: number | string | boolean, name: string, row?: number): number {
  if (typeof value === 'number') return value;
  const given = String(value).trim();
  const read = typeof value === 'string' ? numberIn(given) : null;
  return (
    read ??
    refuse({ code: whyNotNumber(given, false), name, given: withoutDoubt(given), ...(row && { row }) })
  );
}

/** A number, a date written out in any of the ways of the language as its serial, or a word. */
function readAnswer(value: number | string | boolean): number | string | boolean {
  if (typeof value !== 'string') return value;
  const day = dayOfText(value, datesInWords);
  if (day !== null) return serialOfDay(day);
  const number = numberIn(value);
  // 1e400 is beyond all numbers: no answer, and no distance from one.
  return number !== null && Number.isFinite(number) ? number : value.trim();
}

function readText(value: number | string | boolean): string {
  return String(value).trim();
}

function readDay(value: number | string | boolean, name: string, row?: number): number {
  const day =
    typeof value === 'number' ? dayOfSerial(value) : typeof value === 'string' ? dayOfIso(value) : null;
  return day ?? refuse({ code: 'notADate', name, given: String(value), ...(row && { row }) });
}

/** The last day of 1900. A smaller number among dates is a temperature, a day of the year or a count of days. */
const leastInList = 366;

/** A date in a list; a fraction of a day, as of a reading at noon, is of its day. */
function readListDay(value: number | string | boolean, name: string, row: number): number {
  if (typeof value === 'number' && value <= leastInList) {
    refuse({ code: 'numberForDate', name, given: String(value), row });
  }
  return Math.floor(readDay(value, name, row));
}

function readYesOrNo(value: number | string | boolean, name: string): boolean {
  if (typeof value === 'boolean') return value;
  if (value === 1 || value === 0) return value === 1;
  const word = String(value).trim().toLowerCase();
  if (word === 'yes' || word === 'true') return true;
  if (word === 'no' || word === 'false') return false;
  return refuse({ code: 'notYesOrNo', name, given: String(value) });
}

function choiceReader<C extends string>(choices: readonly C[]): Read<C> {
  return (value, name) => {
    const word = String(value).trim().toLowerCase();
    return (
      choices.find((choice) => choice.toLowerCase() === word) ??
      refuse({ code: 'notAChoice', name, given: String(value), choices })
    );
  };
}

/** A fraction of a day in a spring date rounds up, in a fall date down: the safe side of frost. */
const roundings = {
  spring: (day: number): number => asWhole(day) ?? Math.ceil(day),
  fall: (day: number): number => asWhole(day) ?? Math.floor(day),
};

export const number = (name: string): Parameter<number> => ({
  ...required(name, readNumber, bare),
  holds: 'number',
});
export const optionalNumber = (name: string): Parameter<number | undefined> => ({
  ...optional(name, readNumber, bare),
  holds: 'number',
});
export const answer = (name: string): Parameter<number | string | boolean> =>
  required(name, readAnswer, bare);
/** The same, but a cell of spaces alone is not taken for an empty one: whoever typed there sees none. */
export const typedAnswer = (name: string): Parameter<number | string | boolean> =>
  required(name, readAnswer, (raw, of) => bare(raw, of) ?? (/^\s+$/.test(String(raw)) ? '' : null));
export const text = (name: string): Parameter<string> => required(name, readText);
export const optionalText = (name: string): Parameter<string | undefined> => optional(name, readText);
/** An empty cell that comes as 0 is not a no. */
export const yesOrNo = (name: string): Parameter<boolean> => required(name, readYesOrNo);
export const optionalYesOrNo = (name: string): Parameter<boolean | undefined> =>
  optional(name, readYesOrNo, bare);

export function choice<C extends string>(name: string, choices: readonly C[]): Parameter<C> {
  return { ...required(name, choiceReader(choices)), choices };
}

export function optionalChoice<C extends string>(
  name: string,
  choices: readonly C[],
): Parameter<C | undefined> {
  return { ...optional(name, choiceReader(choices)), choices };
}

export function day(name: string, rounding: keyof typeof roundings): Parameter<number> {
  return { ...required(name, (value) => roundings[rounding](readDay(value, name))), holds: 'date' };
}

export function optionalDay(name: string, rounding: keyof typeof roundings): Parameter<number | undefined> {
  return { ...optional(name, (value) => roundings[rounding](readDay(value, name))), holds: 'date' };
}

/** The unit system, us when left out. Always the last parameter. */
export const units: Parameter<UnitSystem> = {
  name: 'units',
  optional: true,
  read(raw) {
    const value = neverZero(raw, 'units');
    return unitSystems[value === null ? 'us' : choiceReader(['us', 'metric'] as const)(value, 'units')];
  },
};

/** A list may also be a text in one cell, as a line of a sheet holds it: "82; 79; 85". */
function cellsOfList(cells: readonly unknown[]): readonly unknown[] {
  const [only] = cells;
  return cells.length === 1 && typeof only === 'string' ? only.split(';').map((one) => one.trim()) : cells;
}

/**
 * A range, row by row, from 1. A blank cell is null, so that two ranges side by side stay in step. A host that hands
 * over the same rows in each line of a table has them read once.
 */
function range<T>(
  name: string,
  holdsMany: NonNullable<Parameter<T>['holdsMany']>,
  readCell: (cell: unknown, row: number) => T,
  cellsOf = (raw: readonly unknown[]): readonly unknown[] => raw.flat(),
): Parameter<readonly T[]> {
  const known = new WeakMap<readonly unknown[], readonly T[]>();
  const readAll = (cells: readonly unknown[]): readonly T[] =>
    cellsOfList(cells).map((cell, i) => readCell(cell, i + 1));
  return {
    name,
    optional: false,
    holdsMany,
    read(raw) {
      if (!Array.isArray(raw)) return readAll([raw]);
      const read = known.get(raw) ?? readAll(cellsOf(raw as unknown[]));
      known.set(raw, read);
      return read;
    },
  };
}

/** Texts; a cell with an error is null too: its own function says what is wrong. */
export function texts(name: string): Parameter<readonly (string | null)[]> {
  return range(name, 'word', (cell) => {
    const value = errorIn(cell) === null ? neverZero(cell, name) : null;
    return value === null ? null : readText(value);
  });
}

export function numbers(name: string): Parameter<readonly (number | null)[]> {
  return range(name, 'number', (cell, row) => {
    const value = bare(cell, name);
    return value === null ? null : readNumber(value, name, row);
  });
}

export type WhenAsked = () => number | null;

/**
 * As `numbers`, each read when it is asked for: what is wrong in a line that nobody needs spoils nothing.
 * @param one what a single one of them is called
 */
export function numbersWhenAsked(name: string, one: string): Parameter<readonly WhenAsked[]> {
  return range(name, 'number', (cell) => () => {
    const value = bare(cell, one);
    return value === null ? null : readNumber(value, one);
  });
}

export function days(name: string): Parameter<readonly (number | null)[]> {
  return range(name, 'dayOfRecord', (cell, row) => {
    const value = neverZero(cell, name);
    return value === null ? null : readListDay(value, name, row);
  });
}

const noFrost = ['none', 'void'] as const;

/** One frost date a season, or the word that stands for it, with or without the years before them. */
export function frosts(name: string): Parameter<readonly (number | (typeof noFrost)[number] | null)[]> {
  return range(
    name,
    'date',
    (cell, row) => {
      const value = neverZero(cell, name);
      if (value === null) return null;
      const word = String(value).trim().toLowerCase();
      return noFrost.find((one) => one === word) ?? readListDay(value, name, row);
    },
    withoutYears,
  );
}

/** Of rows of year and date, as FROST.LASTDATES spills them, the dates. As dates all years are of 1905. */
function withoutYears(rows: readonly unknown[]): readonly unknown[] {
  const isYear = (cell: unknown): boolean =>
    Number.isInteger(cell) && Number(cell) > 1900 && Number(cell) < 2200;
  const isBlank = (cell: unknown): boolean => cell === null || cell === '';
  const isYearly = (row: unknown): row is readonly unknown[] =>
    Array.isArray(row) && row.length === 2 && (isYear(row[0]) || row.every(isBlank));
  return rows.every(isYearly) ? rows.map(([, date]) => date) : rows.flat();
}

/** Whatever is given, as it comes, for the function that reads it; undefined when nothing is. */
export function passedOn(name: string): Parameter<unknown> {
  return {
    name,
    optional: true,
    read(raw) {
      const isRange = Array.isArray(raw) && raw.flat().length > 1;
      return isRange ? raw : (bare(raw, name) ?? undefined);
    },
  };
}
