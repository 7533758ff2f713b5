/** The stand-in's workbook and the rules that Excel holds it to. */
import { columnLetters } from '../../src/workbook/cellAddress';
import { enterCell, type Cell } from './enterCell';
import { refuse } from './excelError';
import { checkSpan, holds, overlap, rectangleOf, type Span } from './span';

export type Visibility = 'Visible' | 'Hidden' | 'VeryHidden';

export interface Name {
  readonly name: string;
  visible: boolean;
  /** Cells, or a formula with its "=". */
  target: { readonly sheet: Sheet; readonly span: Span } | string;
}

export interface Table {
  readonly id: string;
  name: string;
  readonly sheet: Sheet;
  span: Span;
  showTotals: boolean;
  showFilterButton: boolean;
  style: string;
}

/** What was set on a range, in the order in which it was set. */
export interface Setting {
  readonly span: Span;
  readonly property: string;
  readonly value: unknown;
}

export interface Shape {
  readonly properties: Record<string, unknown>;
  readonly base64: string;
}

/** A conditional format on what a cell holds, with the colors and the rule that it was given. */
export interface ConditionalRule {
  readonly id: string;
  readonly span: Span;
  readonly properties: Record<string, unknown>;
}

export interface Sheet {
  readonly id: string;
  name: string;
  visibility: Visibility;
  isProtected: boolean;
  readonly cells: Map<number, Map<number, Cell>>;
  readonly settings: Setting[];
  readonly names: Name[];
  readonly notes: { readonly span: Span; readonly text: string }[];
  /** The first has the highest priority. */
  readonly rules: ConditionalRule[];
  readonly shapes: Shape[];
  readonly page: Record<string, unknown>;
}

export interface Book {
  readonly sheets: Sheet[];
  readonly names: Name[];
  readonly tables: Table[];
  isProtected: boolean;
  countsFrom1904: boolean;
  isCellBeingEdited: boolean;
  selection: { sheet: Sheet; span: Span } | null;
  active: Sheet;
  /** Cells that say #BUSY!, as "Sheet!row,column". */
  readonly busy: Set<string>;
  /** Formulas that Excel calculated while it did not know the add-in's functions; entered again they are others. */
  readonly forgotten: Set<Cell>;
  /** Grows with every change of a cell, table, name or sheet. */
  version: number;
  nextId: number;
}

export function createBook(firstSheet: string): Book {
  const sheet = emptySheet('{1}', firstSheet);
  return {
    sheets: [sheet],
    names: [],
    tables: [],
    isProtected: false,
    countsFrom1904: false,
    isCellBeingEdited: false,
    selection: null,
    active: sheet,
    busy: new Set(),
    forgotten: new Set(),
    version: 0,
    nextId: 2,
  };
}

function emptySheet(id: string, name: string): Sheet {
  return {
    id,
    name,
    visibility: 'Visible',
    isProtected: false,
    cells: new Map(),
    settings: [],
    names: [],
    notes: [],
    rules: [],
    shapes: [],
    page: {},
  };
}

export const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

export function addSheet(book: Book, name: string): Sheet {
  refuseIfLocked(book);
  checkSheetName(book, name);
  const sheet = emptySheet(`{${book.nextId++}}`, name);
  book.sheets.push(sheet);
  book.version += 1;
  return sheet;
}

export function renameSheet(book: Book, sheet: Sheet, name: string): void {
  refuseIfLocked(book);
  if (!isSame(sheet.name, name)) checkSheetName(book, name);
  sheet.name = name;
  book.version += 1;
}

function checkSheetName(book: Book, name: string): void {
  const isLegal = /^(?!')[^\\/?*[\]:]{1,31}(?<!')$/.test(name) && !isSame(name, 'History');
  if (!isLegal) refuse('InvalidArgument', `sheet name ${name}`);
  if (book.sheets.some((sheet) => isSame(sheet.name, name))) {
    refuse('ItemAlreadyExists', `a sheet named ${name} exists`);
  }
}

export function showSheet(book: Book, sheet: Sheet, visibility: Visibility): void {
  refuseIfLocked(book);
  const others = book.sheets.filter((each) => each !== sheet && each.visibility === 'Visible');
  if (visibility !== 'Visible' && others.length === 0) refuse('InvalidOperation', 'the last visible sheet');
  sheet.visibility = visibility;
  if (visibility !== 'Visible' && book.active === sheet) book.active = others[0] as Sheet;
}

export function deleteSheet(book: Book, sheet: Sheet): void {
  refuseIfLocked(book);
  const others = book.sheets.filter((each) => each !== sheet && each.visibility === 'Visible');
  if (others.length === 0) refuse('InvalidOperation', 'the last visible sheet');
  // As the documentation of Worksheet.delete has it.
  if (sheet.visibility === 'VeryHidden') refuse('InvalidOperation', 'a very hidden sheet cannot be deleted');
  book.sheets.splice(book.sheets.indexOf(sheet), 1);
  for (const table of book.tables.filter((each) => each.sheet === sheet)) {
    book.tables.splice(book.tables.indexOf(table), 1);
    forgetTable(book, table.name);
  }
  for (const name of book.names) {
    const { target } = name;
    if (typeof target === 'string' || target.sheet !== sheet) continue;
    name.target = `=#REF!$${columnLetters(target.span.column)}$${target.span.row + 1}`;
  }
  if (book.active === sheet) book.active = others[0] as Sheet;
  book.version += 1;
}

/** Formulas that refer to the table lose it. */
function forgetTable(book: Book, name: string): void {
  const reference = new RegExp(`(?<![\\p{L}\\p{N}_.\\\\])${name}\\[(?:[^\\[\\]]|\\[[^\\]]*\\])*\\]`, 'giu');
  for (const line of book.sheets.flatMap(({ cells }) => [...cells.values()])) {
    for (const [column, cell] of line) {
      if ('formula' in cell) line.set(column, { formula: cell.formula.replace(reference, '#REF!') });
    }
  }
}

export function refuseIfLocked(book: Book): void {
  if (book.isProtected) refuse('AccessDenied', 'the workbook is protected');
}

function refuseIfSheetLocked(sheet: Sheet): void {
  if (sheet.isProtected) refuse('AccessDenied', `the sheet ${sheet.name} is protected`);
}

export function addName(book: Book, scope: Name[], name: string, target: Name['target']): Name {
  const isLegal = /^[\p{L}_\\][\p{L}\p{N}_.\\?]{0,254}$/u.test(name);
  if (!isLegal || /^[a-z]{1,3}\d+$/i.test(name) || /^(r\d*c?\d*|c\d*)$/i.test(name)) {
    refuse('InvalidArgument', `name ${name}`);
  }
  if (typeof target === 'string' && !target.startsWith('=')) refuse('InvalidArgument', `formula ${target}`);
  const isTaken =
    scope.some((each) => isSame(each.name, name)) || book.tables.some((each) => isSame(each.name, name));
  if (isTaken) refuse('ItemAlreadyExists', `the name ${name} exists`);
  const added = { name, visible: true, target };
  scope.push(added);
  book.version += 1;
  return added;
}

export function addTable(book: Book, sheet: Sheet, span: Span): Table {
  refuseIfSheetLocked(sheet);
  if (book.tables.some((each) => each.sheet === sheet && overlap(each.span, span))) {
    refuse('InvalidArgument', 'a table cannot overlap another table');
  }
  if (span.rows < 2) refuse('InvalidArgument', 'a table needs a row under its headers');
  const taken = new Set<string>();
  for (let column = span.column; column < span.column + span.columns; column++) {
    const cell = cellAt(sheet, span.row, column);
    const header = cell !== undefined && 'constant' in cell ? String(cell.constant) : '';
    // Excel would put another header in its place.
    if (header === '' || taken.has(header.toLowerCase())) refuse('InvalidArgument', `header "${header}"`);
    taken.add(header.toLowerCase());
    setCell(sheet, span.row, column, { constant: header });
  }
  const id = `{${book.nextId++}}`;
  const table = {
    id,
    name: `Table${id.slice(1, -1)}`,
    sheet,
    span,
    showTotals: false,
    showFilterButton: true,
    style: '',
  };
  book.tables.push(table);
  book.version += 1;
  return table;
}

export function renameTable(book: Book, table: Table, name: string): void {
  const isTaken =
    book.tables.some((each) => each !== table && isSame(each.name, name)) ||
    book.names.some((each) => isSame(each.name, name));
  if (isTaken) refuse('InvalidArgument', `the name ${name} exists`);
  if (!/^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name)) refuse('InvalidArgument', `table name ${name}`);
  table.name = name;
  book.version += 1;
}

export function resizeTable(book: Book, table: Table, span: Span): void {
  refuseIfSheetLocked(table.sheet);
  const others = book.tables.filter((each) => each !== table && each.sheet === table.sheet);
  const isFit = span.row === table.span.row && span.rows >= 2 && overlap(span, table.span);
  if (!isFit || others.some((each) => overlap(each.span, span))) refuse('InvalidArgument', 'the new range');
  table.span = span;
  book.version += 1;
}

export function cellAt(sheet: Sheet, row: number, column: number): Cell | undefined {
  return sheet.cells.get(row)?.get(column);
}

function setCell(sheet: Sheet, row: number, column: number, cell: Cell | null): void {
  let cells = sheet.cells.get(row);
  if (cells === undefined) sheet.cells.set(row, (cells = new Map()));
  if (cell === null) cells.delete(column);
  else cells.set(column, cell);
}

/** As Range.values and Range.formulas take it: an array as large as the range, null for "as it is"; or one value. */
export function writeCells(book: Book, sheet: Sheet, span: Span, given: unknown): void {
  refuseIfSheetLocked(sheet);
  const matrix = shaped(span, given);
  matrix.forEach((line, i) =>
    line.forEach((value, j) => {
      if (value === null) return;
      const [row, column] = [span.row + i, span.column + j];
      const cell = enterCell(value, numberFormatAt(sheet, row, column));
      if (cell !== null && 'formula' in cell) checkReferences(book, cell.formula);
      setCell(sheet, row, column, cell);
    }),
  );
  book.version += 1;
}

export function setOnRange(book: Book, sheet: Sheet, span: Span, property: string, value: unknown): void {
  refuseIfSheetLocked(sheet);
  sheet.settings.push({ span, property, value });
  book.version += 1;
}

export function setNumberFormat(book: Book, sheet: Sheet, span: Span, given: unknown): void {
  const matrix = shaped(span, given);
  if (!Array.isArray(given)) setOnRange(book, sheet, span, 'numberFormat', given);
  else {
    matrix.forEach((line, i) =>
      line.forEach((value, j) => {
        const cell = { row: span.row + i, column: span.column + j, rows: 1, columns: 1 };
        if (value !== null) setOnRange(book, sheet, cell, 'numberFormat', value);
      }),
    );
  }
}

function shaped(span: Span, given: unknown): unknown[][] {
  if (!Array.isArray(given)) return rectangleOf(span, () => given);
  const fits =
    given.length === span.rows && given.every((line) => Array.isArray(line) && line.length === span.columns);
  if (!fits) refuse('InvalidArgument', 'the array is not as large as the range');
  return given as unknown[][];
}

export function settingAt(sheet: Sheet, row: number, column: number, property: string): unknown {
  const isMeant = (each: Setting): boolean => each.property === property && holds(each.span, row, column);
  return sheet.settings.filter(isMeant).at(-1)?.value;
}

export function numberFormatAt(sheet: Sheet, row: number, column: number): string {
  return String(settingAt(sheet, row, column, 'numberFormat') ?? 'General');
}

/** Excel takes a name that it does not know, but no table that it does not know. */
function checkReferences(book: Book, formula: string): void {
  const outsideTexts = formula.replace(/"(?:[^"]|"")*"/g, '""');
  for (const [, name = ''] of outsideTexts.matchAll(/([\p{L}_\\][\p{L}\p{N}_.\\]*)\[/gu)) {
    if (!book.tables.some((table) => isSame(table.name, name)))
      refuse('InvalidArgument', `formula ${formula}`);
  }
}

export function clearRange(book: Book, sheet: Sheet, span: Span, applyTo: string): void {
  refuseIfSheetLocked(sheet);
  if (applyTo !== 'Formats') {
    for (const [row, cells] of sheet.cells) {
      for (const column of cells.keys()) if (holds(span, row, column)) cells.delete(column);
    }
  }
  if (applyTo !== 'Contents') {
    for (const property of new Set(sheet.settings.map((each) => each.property))) {
      sheet.settings.push({ span, property, value: undefined });
    }
  }
  book.version += 1;
}

/** Everything of one row of cells into each row of the range under it. */
export function copyRow(book: Book, sheet: Sheet, span: Span, from: Span): void {
  refuseIfSheetLocked(sheet);
  if (from.rows !== 1 || from.columns !== span.columns) refuse('InvalidArgument', 'ranges that do not match');
  const properties = new Set(sheet.settings.map((each) => each.property));
  for (let j = 0; j < span.columns; j++) {
    const column = from.column + j;
    const cell = cellAt(sheet, from.row, column) ?? null;
    for (let row = span.row; row < span.row + span.rows; row++) setCell(sheet, row, span.column + j, cell);
    const target = checkSpan({ ...span, column: span.column + j, columns: 1 });
    for (const property of properties) {
      const value = settingAt(sheet, from.row, column, property);
      if (value !== undefined) sheet.settings.push({ span: target, property, value });
    }
  }
  book.version += 1;
}

/**
 * The smallest range that holds every cell with content; null for an empty sheet.
 * @param spilled cells without anything of their own, as "row,column"
 */
export function usedSpan(sheet: Sheet, spilled: readonly string[] = []): Span | null {
  const rows = [...sheet.cells].filter(([, cells]) => cells.size > 0);
  if (rows.length === 0) return null;
  const places = spilled.map((place) => place.split(',').map(Number));
  const rowIndexes = [...rows.map(([row]) => row), ...places.map(([row = 0]) => row)];
  const columns = [
    ...rows.flatMap(([, cells]) => [...cells.keys()]),
    ...places.map(([, column = 0]) => column),
  ];
  const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));
  const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b));
  const [row, column] = [least(rowIndexes), least(columns)];
  return { row, column, rows: most(rowIndexes) - row + 1, columns: most(columns) - column + 1 };
}
