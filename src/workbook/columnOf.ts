import type { TableColumn } from './template';

/** What a word of a header needs: bold letters are wider than those that a column's width counts. */
const roomOf = (word: string): number => word.length + (word.length < 8 ? 1 : 2);

/** A column of a table: of results that come with the rows, unless more is said. No word of its header is broken. */
export function columnOf(header: string, width: number, more: Partial<TableColumn> = {}): TableColumn {
  return {
    header,
    kind: 'computed',
    compute: null,
    format: 'general',
    width: Math.max(width, ...header.split(/[ -]/).map(roomOf)),
    choices: [],
    note: '',
    unit: null,
    ...more,
  };
}
