/** Rows and columns of A1 addresses, counted from 0. */
import type { Span } from '../../workbook/port';

export const mostRows = 1_048_576;
export const mostColumns = 16_384;

/** null where no sheet has such a cell. */
export function placeOf(address: string): { readonly row: number; readonly column: number } | null {
  const [, letters, digits] = /^([A-Z]{1,3})([1-9]\d{0,6})$/.exec(address) ?? [];
  if (letters === undefined) return null;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const row = Number(digits) - 1;
  return row < mostRows && column < mostColumns ? { row, column } : null;
}

/** Of a range such as A7:AN10; null where it is none. */
export function spanOf(range: string): Span | null {
  const [first = '', last = first] = range.split(':');
  const from = placeOf(first);
  const to = placeOf(last);
  if (from === null || to === null || to.row < from.row || to.column < from.column) return null;
  return { ...from, rows: to.row - from.row + 1, columns: to.column - from.column + 1 };
}
