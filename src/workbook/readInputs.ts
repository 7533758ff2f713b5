/** Rows of a file, texts or values of cells, as input rows of a table template. */
import { checkLimits, type Limits } from './limits';
import { isCellError, type CellValue, type ReadValue } from './port';
import { plainWord } from './plainWord';
import { dayOfIso, dayOfText, serialOfDay } from './serialDate';
import {
  doubtMark,
  isLikeThousands,
  parseNumber,
  whyNotNumber,
  withoutDoubt,
  type NotNumber,
} from './parseNumber';
import type { Format, InputRow, TableColumn, TableTemplate } from './template';

interface At {
  readonly line: number;
  readonly header: string;
}

export type InputProblem =
  | ({ readonly code: 'unknownHeader' | 'missingHeader' | 'noName' } & At)
  /** A column without a header in which something stands; `column` counts from 1. */
  | { readonly code: 'unnamedColumn'; readonly line: number; readonly column: number }
  | ({ readonly code: NotNumber | 'notADate' | 'notWhole'; readonly given: string } & At)
  /** `format` says how the limits are shown. */
  | ({
      readonly code: 'outOfRange';
      readonly given: string;
      readonly limits: Limits;
      readonly format: Format;
    } & At)
  /** 85 where 85% or 0.85 was meant. */
  | ({ readonly code: 'percentForShare'; readonly given: string; readonly value: number } & At)
  | ({ readonly code: 'notAChoice'; readonly given: string; readonly choices: readonly string[] } & At)
  | ({ readonly code: 'sameName'; readonly given: string; readonly firstLine: number } & At);

/** A list with headers. Lines count from 1. */
export interface InputLines {
  readonly headers: readonly string[];
  readonly headerLine: number;
  readonly rows: readonly { readonly line: number; readonly cells: readonly ReadValue[] }[];
  /** Whether a number in a text may be written with a comma. */
  readonly decimalComma: boolean;
  /** Whether a point may stand between thousands, whatever a comma does. */
  readonly pointOfThousands?: boolean;
}

export interface InputsRead {
  readonly inputs: readonly InputRow[];
  readonly problems: readonly InputProblem[];
  /** Headers of columns that the table computes itself. */
  readonly leftOut: readonly string[];
}

/**
 * A cell that cannot be read as its column's kind stays as a text, and a number that does not fit as it is: the row's
 * functions say what is wrong with it, and nothing typed is lost.
 */
export function readInputs(table: TableTemplate, lines: InputLines): InputsRead {
  const columns = lines.headers.map((header) => matchColumn(table, header, 'input'));
  const leftOut = lines.headers.filter((header) => matchColumn(table, header, 'computed') !== undefined);
  const problems = problemsOfHeaders(table, lines, columns);
  const nameHeader = nameColumn(table);
  const hasNames = columns.some((column) => column?.header === nameHeader);
  const lineOfName = new Map<string, number>();
  const inputs = lines.rows.map(({ line, cells: found }) => {
    const cells = lines.decimalComma ? found : joinSplit(columns, found);
    const row: Record<string, CellValue> = {};
    columns.forEach((column, index) => {
      const given = cells[index] ?? null;
      if (column === undefined || isBlank(given)) return;
      const read = readCell(column, given, lines.decimalComma, lines.pointOfThousands);
      const text = textOf(given);
      const problem = typeof read === 'object' ? read : whyUnfit(column, read, text);
      if (problem !== null)
        problems.push({ ...problem, line, header: column.header, given: withoutDoubt(text) });
      row[column.header] = typeof read === 'object' ? standIn(text, read) : read;
    });
    const name = String(row[nameHeader] ?? '');
    const firstLine = lineOfName.get(name.toLowerCase());
    if (name === '') {
      if (hasNames) problems.push({ code: 'noName', line, header: nameHeader });
    } else if (firstLine === undefined) {
      lineOfName.set(name.toLowerCase(), line);
    } else {
      problems.push({ code: 'sameName', line, header: nameHeader, given: name, firstLine });
    }
    return row;
  });
  return { inputs, problems, leftOut };
}

/**
 * A number with a decimal comma, as two cells where a comma also stands between cells: "0,04", but not "0,4", which may be
 * two numbers. Before free text only what looks like cents, or comes after a 0 that cannot be.
 */
function joinSplit(
  columns: readonly (TableColumn | undefined)[],
  cells: readonly ReadValue[],
): readonly ReadValue[] {
  const isText = (index: number, pattern: RegExp): boolean => {
    const cell = cells[index];
    return typeof cell === 'string' && pattern.test(cell.trim());
  };
  const isNumber = (index: number): boolean => {
    const format = columns[index]?.format ?? 'text';
    return format !== 'text' && format !== 'date';
  };
  const isSplit = (index: number): boolean => {
    if (!isNumber(index) || !isText(index, /^[+-]?\d+$/)) return false;
    const [column, next] = [columns[index], columns[index + 1]];
    if (isNumber(index + 1)) return isText(index + 1, /^0\d+\s*%?$/);
    if (column?.format === 'whole' || next?.format !== 'text' || next.choices.length > 0) return false;
    const isNone = isText(index, /^0+$/) && checkLimits(0, column?.limits ?? {}) !== null;
    return isText(index + 1, isNone ? /^\d+\s*%?$/ : /^\d\d\s*%?$/);
  };
  return cells.map((cell, index) => {
    if (index > 0 && isSplit(index - 1)) return null;
    return isSplit(index) ? `${textOf(cell)},${textOf(cells[index + 1] ?? null)}` : cell;
  });
}

function problemsOfHeaders(
  table: TableTemplate,
  { headers, headerLine: line, rows }: InputLines,
  columns: readonly (TableColumn | undefined)[],
): InputProblem[] {
  const problems = headers.flatMap((header, index): InputProblem[] => {
    if (columns[index] !== undefined || matchColumn(table, header, 'computed') !== undefined) return [];
    if (header !== '') return [{ code: 'unknownHeader', line, header }];
    const isUsed = rows.some(({ cells }) => !isBlank(cells[index] ?? null));
    return isUsed ? [{ code: 'unnamedColumn', line, column: index + 1 }] : [];
  });
  const header = nameColumn(table);
  if (headers.length > 0 && !columns.some((column) => column?.header === header)) {
    problems.push({ code: 'missingHeader', line, header });
  }
  return problems;
}

/** The first column has the rows' names. */
function nameColumn(table: TableTemplate): string {
  return table.columns[0]?.header ?? '';
}

function matchColumn(
  table: TableTemplate,
  header: string,
  kind: TableColumn['kind'],
): TableColumn | undefined {
  const wanted = plainWord(header);
  return table.columns.find((column) => column.kind === kind && plainWord(column.header) === wanted);
}

type Unreadable =
  | { readonly code: NotNumber | 'notADate' }
  | { readonly code: 'notAChoice'; readonly choices: readonly string[] };

function standIn(text: string, { code }: Unreadable): string {
  // Words, and what came back marked already, no program takes for a number.
  const isDoubtful = /\d/.test(text) && !text.endsWith(doubtMark);
  return code === 'notAChoice' || code === 'notADate' || !isDoubtful ? text : text + doubtMark;
}

/** The cell's value, or why it is none of its column's. */
export function readCell(
  { format, choices, words = {}, dates }: Pick<TableColumn, 'format' | 'choices' | 'words' | 'dates'>,
  given: ReadValue,
  decimalComma: boolean,
  pointOfThousands = false,
): string | number | Unreadable {
  const text = textOf(given);
  if (format === 'text') {
    if (choices.length === 0 || choiceLike(choices, text) !== undefined) return text;
    const meant = choices.find((choice) => choiceLike(words[choice] ?? [], text) !== undefined);
    return meant ?? { code: 'notAChoice', choices };
  }
  if (typeof given === 'number') return given;
  if (format === 'date') {
    const day = dates === undefined ? dayOfIso(text) : dayOfText(text, dates);
    return day === null ? { code: 'notADate' } : serialOfDay(day);
  }
  if (pointOfThousands && isLikeThousands(text)) return { code: 'maybeThousands' };
  return parseNumber(text, decimalComma) ?? { code: whyNotNumber(text, decimalComma) };
}

/** The one that a text names. */
export function choiceLike(choices: readonly string[], text: string): string | undefined {
  const plain = plainWord(text);
  return choices.find((choice) => plainWord(choice) === plain);
}

/** Whether something stands in an input that its column does not take. */
export function isUnfit(column: TableColumn, given: ReadValue): boolean {
  if (isBlank(given)) return false;
  const read = readCell(column, given, false);
  return typeof read === 'object' || whyUnfit(column, read, textOf(given)) !== null;
}

/** A share up to twice the whole is hardly a count of per cent. */
const leastPercent = 2;

type Unfit =
  | { readonly code: 'notWhole' }
  | { readonly code: 'outOfRange'; readonly limits: Limits; readonly format: Format }
  | { readonly code: 'percentForShare'; readonly value: number };

/** Why the cell's value does not fit its column; null when it does. */
function whyUnfit({ format, limits = {} }: TableColumn, value: string | number, text: string): Unfit | null {
  const code = typeof value === 'number' ? checkLimits(value, limits) : null;
  if (typeof value !== 'number' || code === null) return null;
  if (code === 'notWhole') return { code };
  const isPercent = format === 'percent' && value > leastPercent && value <= 100 && !text.endsWith('%');
  return isPercent ? { code: 'percentForShare', value } : { code, limits, format };
}

/** What a person sees in the cell, about. */
export function textOf(given: ReadValue): string {
  if (isCellError(given)) return given.error;
  return typeof given === 'boolean' ? String(given).toUpperCase() : String(given ?? '').trim();
}

export function isBlank(given: ReadValue): boolean {
  return textOf(given) === '';
}
