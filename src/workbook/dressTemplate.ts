/** Looks, lists, notes and print set-up of a template's parts, wherever they stand. */
import type { Dressing, Format, NewSheet, Note, PickList, Shade, ShadeRule } from './port';
import type { FormLine, SheetTemplate, SpillingList, TableColumn, TableTemplate } from './template';

export interface Dress {
  readonly dressings: readonly Dressing[];
  readonly lists: readonly PickList[];
  readonly rules: readonly ShadeRule[];
  readonly notes: readonly Note[];
}

/** The line's label stands to the left of its cell, its remark to the right. */
export function dressLine(line: FormLine, row: number, column: number): Dress {
  const cell = { row, column, rows: 1, columns: 1 };
  return {
    dressings: [
      { ...cell, column: column - 1, role: 'label', format: 'general' },
      { ...cell, role: line.kind, format: line.format },
      { ...cell, column: column + 1, role: 'remark', format: 'general' },
    ],
    lists: line.choices.length > 0 ? [{ ...cell, values: line.choices }] : [],
    rules: [],
    notes: [],
  };
}

export interface TablePlace {
  readonly headerRow: number;
  /** Of the rows under the headers, as they stand. */
  readonly names: readonly unknown[];
  readonly column: number;
  readonly columns: number;
  /** Where each of the template's columns stands. */
  readonly columnsAt: readonly number[];
}

/** The units stand above the headers; where columns are dated, their months above the days. */
export function rowsAbove(table: TableTemplate | undefined): 1 | 2 {
  return table?.columns.some(({ dated }) => dated !== undefined) === true ? 2 : 1;
}

/** Which of the template's columns names the rows that have formats of their own. */
export function namingColumn({ columns, rowsNamedBy }: TableTemplate): number {
  return rowsNamedBy === undefined ? 0 : columns.findIndex(({ header }) => header === rowsNamedBy);
}

/** @param name of the row */
export function formatIn({ format, formats = {} }: TableColumn, name: unknown): Format {
  return formats[String(name)] ?? format;
}

export function dressTable(table: TableTemplate, place: TablePlace): Dress {
  const { headerRow, names, column: first, columns } = place;
  const line = { column: first, rows: 1, columns };
  const dressings: Dressing[] = [
    { ...line, row: headerRow - 1, role: 'unit', format: 'general' },
    { ...line, row: headerRow, role: 'header', format: 'text' },
  ];
  const lists: PickList[] = [];
  const notes: Note[] = [];
  table.columns.forEach((of, index) => {
    const { kind, runsOn, wraps, format, choices, note, dated } = of;
    const column = place.columnsAt[index] ?? index;
    if (dated !== undefined) {
      const above = { column, rows: 1, columns: 1, role: 'unit' } as const;
      dressings.push({ ...above, row: headerRow - 2, format: 'general' });
      dressings.push({ ...above, row: headerRow - 1, format: 'day' });
    }
    const span = { row: headerRow + 1, column, rows: names.length, columns: 1 };
    const computed = wraps === true ? 'prose' : 'computed';
    const role = runsOn === true ? 'lead' : kind === 'input' ? kind : computed;
    dressings.push({ ...span, role, format });
    names.forEach((name, row) => {
      const own = formatIn(of, name);
      if (own !== format) dressings.push({ ...span, row: span.row + row, rows: 1, role, format: own });
    });
    if (choices.length > 0) lists.push({ ...span, values: choices });
    if (note !== '') notes.push({ row: headerRow, column, text: note });
  });
  return { dressings, lists, rules: shadeTable(table, place), notes };
}

/** From the first row on: nothing has to follow when rows are put under the table. */
const shadedRows = 2000;

/** Columns of the same shades beside one another have their rules together. */
export function shadeTable(
  { columns }: TableTemplate,
  { headerRow, columnsAt }: Pick<TablePlace, 'headerRow' | 'columnsAt'>,
): ShadeRule[] {
  const runs: { shades: NonNullable<TableColumn['shades']>; column: number; columns: number }[] = [];
  columns.forEach(({ shades }, index) => {
    if (shades === undefined) return;
    const column = columnsAt[index] ?? index;
    const run = runs.at(-1);
    if (run?.shades === shades && run.column + run.columns === column) run.columns += 1;
    else runs.push({ shades, column, columns: 1 });
  });
  return runs.flatMap(({ shades, ...across }) =>
    Object.entries<Shade>(shades).map(([equals, shade]) => ({
      row: headerRow + 1,
      rows: shadedRows,
      ...across,
      equals,
      shade,
    })),
  );
}

/** Looks of a cell before anybody knows whether the list reaches it: no border, or a page of empty boxes would print. */
export function dressList(list: SpillingList, headerRow: number, first: number): Dress {
  const line = { column: first, rows: 1, columns: list.columns.length };
  return {
    dressings: [
      { ...line, row: headerRow - 1, role: 'unit', format: 'general' },
      { ...line, row: headerRow, role: 'header', format: 'text' },
      ...list.columns.map(({ format }, index): Dressing => {
        return {
          row: headerRow + 1,
          column: first + index,
          rows: list.rows,
          columns: 1,
          role: 'plain',
          format,
        };
      }),
    ],
    lists: [],
    rules: [],
    notes: list.columns.flatMap(({ note }, index) =>
      note === '' ? [] : [{ row: headerRow, column: first + index, text: note }],
    ),
  };
}

/**
 * What goes on over several pages is the last table, or a list below it.
 *
 * @param headerRows of the tables
 */
export function framing(
  template: SheetTemplate,
  headerRows: readonly number[],
): Pick<NewSheet, 'frozenRows' | 'frozenColumns' | 'page'> {
  const { landscape, pagesWide, repeatFirstColumn, repeatHeader = true } = template.page;
  const [first = null] = headerRows;
  const only = template.tables.length === 1 && template.form.length === 0 ? first : null;
  const long = template.lists === undefined ? (headerRows.at(-1) ?? null) : only;
  const repeated = repeatHeader ? long : null;
  return {
    frozenRows: only === null ? 0 : only + 1,
    frozenColumns: repeatFirstColumn ? 1 : 0,
    page: {
      landscape,
      pagesWide,
      repeatRows: repeated === null ? null : [repeated - rowsAbove(template.tables.at(-1)), repeated],
      repeatColumns: repeatFirstColumn ? [0, 0] : null,
    },
  };
}
