/** Places a template on rows and columns: the new sheet that a host can write. */
import { widthOf } from './appearance';
import {
  dressLine,
  dressList,
  dressTable,
  framing,
  namingColumn,
  rowsAbove,
  type Dress,
} from './dressTemplate';
import type {
  Block,
  CellContent,
  Computation,
  Dressing,
  Mark,
  NamedPlace,
  NewSheet,
  Note,
  PickList,
  ShadeRule,
  TableShape,
} from './port';
import type { InputRow, SheetTemplate, SpillingList, TableTemplate } from './template';

const formValueColumn = 1;
const formWidths = [34, 16, 70];
const widestFormValue = 40;
const firstLineRow = 1;
/** A free column between two lists. */
const gapWidth = 3;

/** The contents of a table's row: given inputs, computed cells. */
export function tableRow(table: TableTemplate, input: InputRow): CellContent[] {
  return table.columns.map((column) =>
    column.compute === null ? (input[column.header] ?? null) : { compute: column.compute },
  );
}

/** A table whose rows come at filling needs at least one: a spreadsheet table cannot be empty. */
function rowsOf(table: TableTemplate, inputs: readonly InputRow[]): readonly (readonly CellContent[])[] {
  if (table.rows !== null) return table.rows;
  return (inputs.length === 0 ? [{}] : inputs).map((input) => tableRow(table, input));
}

export function layOut(template: SheetTemplate, sheetName: string, inputs: readonly InputRow[]): NewSheet {
  const blocks: Block[] = [];
  const dressings: Dressing[] = [];
  const lists: PickList[] = [];
  const rules: ShadeRule[] = [];
  const notes: Note[] = [];
  const tables: TableShape[] = [];
  const names: Record<string, NamedPlace> = {};

  const line = (row: number, column: number, text: CellContent, role: Dressing['role']): void => {
    blocks.push({ row, column, contents: [[text]] });
    dressings.push({ row, column, rows: 1, columns: 1, role, format: 'general' });
  };
  const put = (dress: Dress): void => {
    dressings.push(...dress.dressings);
    lists.push(...dress.lists);
    rules.push(...dress.rules);
    notes.push(...dress.notes);
  };
  line(0, 0, template.title, 'title');
  let next = firstLineRow;
  const textColumn = textColumnOf(template);
  for (const text of template.lead) line(next++, textColumn, text, 'lead');
  if (template.report !== undefined) {
    const { name, content } = template.report;
    names[name] = [next, textColumn];
    line(next++, textColumn, content, 'lead');
  }
  for (const text of template.cautions) line(next++, textColumn, text, 'caution');

  if (template.form.length > 0) {
    next += 1;
    for (const entry of template.form) {
      const row = next++;
      blocks.push({ row, column: 0, contents: [[entry.label, entry.content, entry.remark]] });
      put(dressLine(entry, row, formValueColumn));
      names[entry.name] = [row, formValueColumn];
    }
  }

  const headerRows: number[] = [];
  for (const table of template.tables) {
    next += 1;
    if (table.heading !== '') line(next++, textColumn, table.heading, 'label');
    const headerRow = next + rowsAbove(table);
    headerRows.push(headerRow);
    const rows = rowsOf(table, inputs);
    const count = table.columns.length;
    const headers = table.columns.map((column) => column.header);
    blocks.push({ row: next, column: 0, contents: cellsAbove(table) });
    blocks.push({ row: headerRow, column: 0, contents: [headers, ...rows] });
    put(
      dressTable(table, {
        headerRow,
        names: rows.map((cells) => cells[namingColumn(table)]),
        column: 0,
        columns: count,
        columnsAt: table.columns.map((_, index) => index),
      }),
    );
    table.columns.forEach(({ dated }, index) => {
      if (dated !== undefined && dated.name !== '') names[dated.name] = [headerRow - 1, index];
    });
    tables.push({
      name: table.name,
      headers,
      row: headerRow,
      column: 0,
      rows: rows.length + 1,
      columns: count,
      grows: table.grows ? table.columns.map((column) => column.compute) : null,
    });
    next = headerRow + 1 + rows.length;
  }

  for (const [list, column] of listsOf(template)) {
    const headerRow = next + 3;
    const firstRow = headerRow + 1;
    line(next + 1, column, list.heading, 'label');
    const units = list.columns.map(({ unit }) => unit);
    const headers = list.columns.map(({ header }) => header);
    blocks.push({ row: headerRow - 1, column, contents: [units, headers] });
    blocks.push({ row: firstRow, column, contents: [[listContent(list)]] });
    put(dressList(list, headerRow, column));
    list.columns.forEach(({ name }, index) => {
      if (name !== '') names[name] = [firstRow, column + index, list.rows];
    });
  }

  return {
    name: sheetName,
    mark: markOf(template),
    blocks,
    tables,
    dressings,
    lists,
    rules,
    notes,
    names,
    widths: columnWidths(template),
    ...framing(template, headerRows),
  };
}

/** The units, and in a row above them the months of dated columns. */
function cellsAbove(table: TableTemplate): CellContent[][] {
  const months = table.columns.map(({ dated }) => dated?.month ?? null);
  const units = table.columns.map(({ unit, dated }) => dated?.day ?? unit);
  return rowsAbove(table) === 2 ? [months, units] : [units];
}

/** The formula of the list. */
export function listContent({ compute, rows, columns }: SpillingList): Computation {
  return { compute, spillsOver: { rows, columns: columns.length } };
}

/** Each list and its first column. */
function listsOf(template: SheetTemplate): readonly (readonly [SpillingList, number])[] {
  let next = 0;
  return (template.lists ?? []).map((list) => {
    const column = next;
    next += list.columns.length + 1;
    return [list, column];
  });
}

export function markOf({ id, version }: SheetTemplate): Mark {
  return { template: id, version };
}

/** Where texts stand: not in a column that every page repeats, for there they would be cut off. */
export function textColumnOf({ page }: SheetTemplate): number {
  return page.repeatFirstColumn ? 1 : 0;
}

export function columnWidths(template: SheetTemplate): number[] {
  const lists = listsOf(template);
  const isFormAlone = template.tables.length === 0 && lists.length === 0;
  // Under a remark stand columns of their own width: it runs on over the empty cells to its right.
  const widths =
    template.form.length === 0 ? [] : formWidths.slice(0, isFormAlone ? undefined : formValueColumn + 1);
  const demand = (index: number, width: number): void => {
    widths[index] = Math.max(widths[index] ?? 0, width);
  };
  // The remark beside a text would cut it off.
  if (isFormAlone) {
    for (const { content } of template.form) {
      if (typeof content === 'string') demand(formValueColumn, Math.min(content.length + 2, widestFormValue));
    }
  }
  for (const table of template.tables) table.columns.forEach((of, index) => demand(index, widthOf(of)));
  for (const [list, first] of lists) {
    if (first > 0) demand(first - 1, gapWidth);
    list.columns.forEach((of, index) => demand(first + index, widthOf(of)));
  }
  return widths;
}
