/**
 * The workbook in memory. A state is never changed: a change builds the next one, so that nothing is half done.
 */
import type {
  CellContent,
  Computation,
  Dressing,
  Expression,
  Mark,
  Note,
  PageSetup,
  PickList,
  Picture,
  ShadeRule,
  Span,
} from '../../workbook/port';

export interface TableState {
  readonly name: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** Header row included. */
  readonly rows: number;
  readonly columns: number;
  readonly headers: readonly string[];
  readonly grows: readonly (Expression | null)[] | null;
}

export interface SheetState {
  readonly name: string;
  readonly mark: Mark;
  readonly cells: readonly (readonly (CellContent | undefined)[] | undefined)[];
  readonly tables: readonly TableState[];
  readonly dressings: readonly Dressing[];
  readonly lists: readonly PickList[];
  readonly rules: readonly ShadeRule[];
  readonly notes: readonly Note[];
  readonly names: readonly NamedCell[];
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly page: PageSetup;
}

export interface NamedCell {
  readonly name: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
}

export interface BookState {
  readonly sheets: readonly SheetState[];
  readonly pictures: readonly Picture[];
}

export const emptyBook: BookState = { sheets: [], pictures: [] };

/** Names of sheets, tables, columns and cells are the same in upper and lower case. */
export function isSameName(left: string, right: string): boolean {
  return left.toLowerCase() === right.toLowerCase();
}

export function findSheetState(book: BookState, name: string): SheetState | undefined {
  return book.sheets.find((sheet) => isSameName(sheet.name, name));
}

export function findTableState(book: BookState, name: string): TableState | undefined {
  return book.sheets.flatMap((sheet) => sheet.tables).find((table) => isSameName(table.name, name));
}

export function findNamedCell(book: BookState, name: string): NamedCell | undefined {
  return book.sheets.flatMap((sheet) => sheet.names).find((cell) => isSameName(cell.name, name));
}

export function contentAt(sheet: SheetState, row: number, column: number): CellContent {
  return sheet.cells[row]?.[column] ?? null;
}

export function isComputed(content: CellContent): content is Computation {
  return typeof content === 'object' && content !== null;
}

const spillsBySheet = new WeakMap<SheetState, readonly Span[]>();

/** Where lists may spill: from the cell that computes each. */
export function spillsIn(sheet: SheetState): readonly Span[] {
  const known = spillsBySheet.get(sheet);
  if (known !== undefined) return known;
  const spills: Span[] = [];
  sheet.cells.forEach((cells, row) =>
    cells?.forEach((content, column) => {
      if (content === undefined || !isComputed(content) || content.spillsOver === undefined) return;
      spills.push({ row, column, ...content.spillsOver });
    }),
  );
  spillsBySheet.set(sheet, spills);
  return spills;
}

const placesByTable = new WeakMap<TableState, ReadonlyMap<string, number>>();

/** Where the header stands in the table, from 0; undefined when there is none. */
export function columnPlace(table: TableState, header: string): number | undefined {
  let places = placesByTable.get(table);
  if (places === undefined) {
    places = new Map(table.headers.map((text, index) => [text.toLowerCase(), index]));
    placesByTable.set(table, places);
  }
  return places.get(header.toLowerCase());
}

/** Of a table headers included. */
export function holdsCell(span: Span, row: number, column: number): boolean {
  return (
    row >= span.row &&
    row < span.row + span.rows &&
    column >= span.column &&
    column < span.column + span.columns
  );
}

/** The table in whose data rows the cell stands. */
export function tableAround(sheet: SheetState, row: number, column: number): TableState | undefined {
  return sheet.tables.find((table) => row > table.row && holdsCell(table, row, column));
}
