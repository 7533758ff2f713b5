/** Rectangles of cells and their A1 addresses, rows and columns from 0. */
import { cellAddress, quoteSheet } from '../../src/workbook/cellAddress';
import { refuse } from './excelError';

export interface Span {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

const mostRows = 1048576;
const mostColumns = 16384;

export function checkSpan(span: Span): Span {
  const { row, column, rows, columns } = span;
  const isInSheet =
    [row, column, rows, columns].every(Number.isInteger) &&
    row >= 0 &&
    column >= 0 &&
    rows > 0 &&
    columns > 0 &&
    row + rows <= mostRows &&
    column + columns <= mostColumns;
  return isInSheet ? span : refuse('InvalidArgument', `range ${JSON.stringify(span)}`);
}

export function parseAddress(address: string): Span {
  const local = address.replace(/^.*!/, '').replaceAll('$', '');
  const whole = /^(?:([A-Z]+)(\d+))(?::([A-Z]+)(\d+))?$/i.exec(local);
  if (whole !== null) {
    const [, letters = '', digits = '', endLetters = letters, endDigits = digits] = whole;
    const [row, column] = [Number(digits) - 1, columnOf(letters)];
    const rows = Number(endDigits) - row;
    return checkSpan({ row, column, rows, columns: columnOf(endLetters) - column + 1 });
  }
  const rowsOnly = /^(\d+):(\d+)$/.exec(local);
  if (rowsOnly !== null) {
    const row = Number(rowsOnly[1]) - 1;
    return checkSpan({ row, column: 0, rows: Number(rowsOnly[2]) - row, columns: mostColumns });
  }
  const columnsOnly = /^([A-Z]+):([A-Z]+)$/i.exec(local);
  if (columnsOnly !== null) {
    const column = columnOf(columnsOnly[1] ?? '');
    const columns = columnOf(columnsOnly[2] ?? '') - column + 1;
    return checkSpan({ row: 0, column, rows: mostRows, columns });
  }
  return refuse('InvalidArgument', `address ${address}`);
}

function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

export function printAddress(sheet: string, { row, column, rows, columns }: Span): string {
  const isPlain = /^[A-Za-z_]\w*$/.test(sheet);
  const last = rows * columns === 1 ? '' : `:${cellAddress(row + rows - 1, column + columns - 1)}`;
  return `${isPlain ? sheet : quoteSheet(sheet)}!${cellAddress(row, column)}${last}`;
}

export function holds(span: Span, row: number, column: number): boolean {
  return (
    row >= span.row &&
    row < span.row + span.rows &&
    column >= span.column &&
    column < span.column + span.columns
  );
}

export function overlap(one: Span, other: Span): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}

/** The cells of a range, row by row. */
export function rectangleOf<T>(span: Span, of: (row: number, column: number) => T): T[][] {
  return Array.from({ length: span.rows }, (_, i) =>
    Array.from({ length: span.columns }, (__, j) => of(span.row + i, span.column + j)),
  );
}
