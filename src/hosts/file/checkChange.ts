import type { Block, Expression } from '../../workbook/port';
import { HostError } from '../../workbook/port';
import {
  columnPlace,
  contentAt,
  findNamedCell,
  findSheetState,
  findTableState,
  holdsCell,
  isComputed,
  tableAround,
  type BookState,
  type SheetState,
  type TableState,
} from './bookState';
import type { FilledChange } from './carryCells';

/** Refuses a change before anything is built from it. @throws HostError */
export function checkChange(
  book: BookState,
  change: FilledChange,
  stampOf: (sheet: SheetState) => string,
): void {
  for (const { sheet, stamp } of change.expect) {
    if (stampOf(demandSheet(book, sheet)) !== stamp) throw new HostError({ code: 'changedMeanwhile', sheet });
  }
  checkNewNames(book, change);
  for (const block of change.cells) {
    const sheet = demandSheet(book, block.sheet);
    checkBlock(block, change.title, (row, column) => tableAround(sheet, row, column));
  }
  for (const { sheet } of [...change.marks, ...(change.rules ?? [])]) demandSheet(book, sheet);
  const added = new Map<TableState, number>();
  for (const { table: name, rows } of change.tableRows) {
    const table = findTableState(book, name);
    if (table === undefined) throw new HostError({ code: 'noSuchTable', table: name });
    const before = added.get(table) ?? 0;
    checkTableRows(book, { ...table, rows: table.rows + before }, rows, change.title);
    added.set(table, before + rows.length);
  }
  const newSheets = new Set(change.newSheets.map((sheet) => sheet.name.toLowerCase()));
  for (const picture of change.pictures) {
    if (!newSheets.has(picture.sheet.toLowerCase())) demandSheet(book, picture.sheet);
  }
}

export function demandSheet(book: BookState, name: string): SheetState {
  const sheet = findSheetState(book, name);
  if (sheet === undefined) throw new HostError({ code: 'noSuchSheet', sheet: name });
  return sheet;
}

/** Tables and named cells share one space of names. */
function checkNewNames(book: BookState, change: FilledChange): void {
  const sheets = new Set(book.sheets.map((sheet) => sheet.name.toLowerCase()));
  const taken = new Set<string>();
  const isTaken = (name: string): boolean =>
    taken.has(name.toLowerCase()) ||
    findTableState(book, name) !== undefined ||
    findNamedCell(book, name) !== undefined;
  for (const sheet of change.newSheets) {
    if (sheets.has(sheet.name.toLowerCase())) {
      throw new HostError({ code: 'sheetNameTaken', sheet: sheet.name });
    }
    if (!/^(?!')[^\\/?*[\]:]{1,31}(?<!')$/.test(sheet.name)) failed(change.title, `sheet name ${sheet.name}`);
    sheets.add(sheet.name.toLowerCase());
    for (const table of sheet.tables) {
      if (isTaken(table.name)) throw new HostError({ code: 'tableNameTaken', table: table.name });
      taken.add(table.name.toLowerCase());
      if (table.headers.length !== table.columns) failed(change.title, `headers of ${table.name}`);
    }
    for (const name of Object.keys(sheet.names)) {
      if (isTaken(name)) throw new HostError({ code: 'nameTaken', name });
      taken.add(name.toLowerCase());
    }
  }
}

/** A block is rectangular, and what it computes from its own row stands in a table that has those columns. */
export function checkBlock(
  block: Block,
  title: string,
  tableAt: (row: number, column: number) => TableState | undefined,
): void {
  const width = block.contents[0]?.length ?? 0;
  block.contents.forEach((cells, rowOffset) => {
    if (cells.length !== width) failed(title, 'a block that is not rectangular');
    cells.forEach((content, columnOffset) => {
      if (typeof content === 'number' && !Number.isFinite(content)) failed(title, 'a number that is none');
      if (!isComputed(content)) return;
      const table = tableAt(block.row + rowOffset, block.column + columnOffset);
      for (const header of ownColumns(content.compute)) {
        if (!table || columnPlace(table, header) === undefined)
          failed(title, `column ${header} outside its table`);
      }
    });
  });
}

function ownColumns(expression: Expression | null): string[] {
  if (expression === null) return [];
  if ('column' in expression) return [expression.column];
  if ('args' in expression) return expression.args.flatMap(ownColumns);
  return 'operator' in expression ? [...ownColumns(expression.left), ...ownColumns(expression.right)] : [];
}

function checkTableRows(
  book: BookState,
  table: TableState,
  rows: FilledChange['tableRows'][number]['rows'],
  title: string,
): void {
  const sheet = demandSheet(book, table.sheet);
  const first = table.row + table.rows;
  if (rows.some((cells) => cells.length !== table.columns))
    failed(title, `a row of another width than ${table.name}`);
  checkBlock({ row: first, column: table.column, contents: rows }, title, () => table);
  for (let row = first; row < first + rows.length; row++) {
    for (let column = table.column; column < table.column + table.columns; column++) {
      const isOfOther = sheet.tables.some((other) => holdsCell(other, row, column));
      if (contentAt(sheet, row, column) !== null || isOfOther) {
        throw new HostError({ code: 'cellsInTheWay', sheet: sheet.name, row, column });
      }
    }
  }
}

function failed(action: string, reason: string): never {
  throw new HostError({ code: 'failed', action }, { cause: new Error(reason) });
}
