import type { TableColumn } from './template';

/** A column of a table: of results that come with the rows, unless more is said. */
export function columnOf(header: string, width: number, more: Partial<TableColumn> = {}): TableColumn {
  return {
    header,
    kind: 'computed',
    compute: null,
    format: 'general',
    width,
    choices: [],
    note: '',
    unit: null,
    ...more,
  };
}
