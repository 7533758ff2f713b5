import type { Block, CellContent, NewSheet, Span } from '../../workbook/port';
import type { FilledChange } from './carryCells';
import { checkBlock, demandSheet } from './checkChange';
import {
  findTableState,
  holdsCell,
  isSameName,
  tableAround,
  type BookState,
  type SheetState,
  type TableState,
} from './bookState';

type Cells = (readonly (CellContent | undefined)[] | undefined)[];

/** Called before each part of a change is built; a test makes it throw. */
export type BeforeStep = (step: string) => void;

/** The state after the change. The state before stays as it was, also when a step throws. */
export function buildNextBook(book: BookState, change: FilledChange, beforeStep: BeforeStep): BookState {
  let next = book;
  for (const block of change.cells) {
    beforeStep('cells');
    const sheet = demandSheet(next, block.sheet);
    next = replaceSheet(next, { ...sheet, cells: putBlocks(sheet.cells, [block]) });
  }
  for (const { table, rows } of change.tableRows) {
    beforeStep('tableRows');
    next = addRows(next, table, rows);
  }
  for (const { sheet: name, ...rule } of change.rules ?? []) {
    beforeStep('rules');
    const sheet = demandSheet(next, name);
    const isThere = sheet.rules.some(
      (other) => other.equals === rule.equals && holdsCell(other, rule.row, rule.column),
    );
    if (!isThere) next = replaceSheet(next, { ...sheet, rules: [...sheet.rules, rule] });
  }
  for (const { sheet, mark } of change.marks) {
    beforeStep('marks');
    next = replaceSheet(next, { ...demandSheet(next, sheet), mark });
  }
  for (const sheet of change.newSheets) {
    beforeStep('newSheets');
    next = { ...next, sheets: [...next.sheets, buildSheet(sheet, change.title)] };
  }
  for (const picture of change.pictures) {
    beforeStep('pictures');
    const others = next.pictures.filter(
      ({ name, sheet }) => name !== picture.name || !isSameName(sheet, picture.sheet),
    );
    next = { ...next, pictures: [...others, picture] };
  }
  return next;
}

function replaceSheet(book: BookState, sheet: SheetState): BookState {
  const sheets = book.sheets.map((other) => (isSameName(other.name, sheet.name) ? sheet : other));
  return { ...book, sheets };
}

function putBlocks(cells: Cells | SheetState['cells'], blocks: readonly Block[]): Cells {
  const next = [...cells];
  const own = new Map<number, (CellContent | undefined)[]>();
  for (const block of blocks) {
    block.contents.forEach((contents, offset) => {
      const number = block.row + offset;
      const row = own.get(number) ?? [...(next[number] ?? [])];
      own.set(number, row);
      next[number] = row;
      contents.forEach((content, column) => (row[block.column + column] = content === '' ? null : content));
    });
  }
  return next;
}

function buildSheet(from: NewSheet, title: string): SheetState {
  const sheet: SheetState = {
    name: from.name,
    mark: from.mark,
    cells: putBlocks([], from.blocks),
    tables: from.tables.map((table) => ({ ...table, sheet: from.name })),
    dressings: from.dressings,
    lists: from.lists,
    rules: from.rules,
    notes: from.notes,
    names: Object.entries(from.names).map(([name, [row, column, rows = 1]]) => ({
      name,
      sheet: from.name,
      row,
      column,
      rows,
    })),
    widths: from.widths,
    frozenRows: from.frozenRows,
    frozenColumns: from.frozenColumns,
    page: from.page,
  };
  for (const block of from.blocks) checkBlock(block, title, (row, column) => tableAround(sheet, row, column));
  return sheet;
}

function addRows(book: BookState, name: string, rows: readonly (readonly CellContent[])[]): BookState {
  const table = findTableState(book, name);
  if (table === undefined) return book;
  const sheet = demandSheet(book, table.sheet);
  const block = { row: table.row + table.rows, column: table.column, contents: rows };
  const grown: TableState = { ...table, rows: table.rows + rows.length };
  const grow = <S extends Span>(span: S): S => growSpan(span, table, rows.length);
  return replaceSheet(book, {
    ...sheet,
    cells: putBlocks(sheet.cells, [block]),
    tables: sheet.tables.map((other) => (other === table ? grown : other)),
    dressings: sheet.dressings.map(grow),
    lists: sheet.lists.map(grow),
  });
}

/** New rows look like the last one: what dresses the table down to its last row goes on. */
function growSpan<S extends Span>(span: S, table: TableState, count: number): S {
  const endsWithTable = span.row > table.row && span.row + span.rows === table.row + table.rows;
  const isInTable = span.column >= table.column && span.column + span.columns <= table.column + table.columns;
  return endsWithTable && isInTable ? { ...span, rows: span.rows + count } : span;
}
