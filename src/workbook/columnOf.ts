import type { TableColumn } from './template';

/** A column of a table: of results that come with the rows, unless more is said. No word of its header is broken. */
export function columnOf(header: string, width: number, more: Partial<TableColumn> = {}): TableColumn {
  return {
    header,
    kind: 'computed',
    compute: null,
    format: 'general',
    width: Math.max(width, ...header.split(/[ -]/).map((word) => word.length + 1)),
    choices: [],
    note: '',
    unit: null,
    ...more,
  };
}
