/** The cells that a formula names, found and read all at once. */
import { cellAddress } from './cellAddress';
import type { Formula } from './parseFormula';
import type { Area, ReadValue, SheetInfo, TableRead, WorkbookPort } from './port';

/** Why a part of a formula is not worked out here. */
export type NotFollowed =
  /** A function of the program, or of somebody else. */
  | 'function'
  /** A notation that is not followed: a power, a spilled range, another workbook. */
  | 'notation'
  /** It names no cells of this workbook. */
  | 'name'
  | 'table'
  /** It gives a list where one value is worked with. */
  | 'list'
  | 'tooMany';

export interface NamedCells {
  readonly area: Area;
  readonly values: readonly (readonly ReadValue[])[];
  /** The table's column or the name they go by; "" for an address. */
  readonly label: string;
  /** Cells of a column keep together even when there is only one. */
  readonly isColumn: boolean;
}

export type CellsOf = ReadonlyMap<Formula, NamedCells | { readonly why: NotFollowed }>;

/** More would take long to read, and a pane cannot show what comes of them. */
const mostCells = 120_000;

/** Every part of a formula, parts of parts before what they are in. */
export function everyPart(formula: Formula): Formula[] {
  return [...innerParts(formula).flatMap(everyPart), formula];
}

export function innerParts(formula: Formula): readonly Formula[] {
  if (formula.kind === 'call') return formula.args.filter((arg) => arg !== null);
  if (formula.kind === 'operation') return [formula.left, formula.right];
  return formula.kind === 'other' ? formula.parts : [];
}

/**
 * @param at the formula's own cell
 * @param tables names of tables that it may stand in; it may leave out its own
 * @throws HostError
 */
export async function readCellsOf(
  workbook: WorkbookPort,
  formula: Formula,
  at: Area,
  tables: readonly string[],
): Promise<CellsOf> {
  const known = new Map<string, Promise<TableRead | null>>();
  const readTable = (name: string): Promise<TableRead | null> => {
    const read = known.get(name.toLowerCase()) ?? workbook.readTable(name);
    known.set(name.toLowerCase(), read);
    return read;
  };
  const ownTable = async (): Promise<TableRead | null> => {
    const all = await Promise.all(tables.map(readTable));
    return all.find((table) => table !== null && holds(table.area, at)) ?? null;
  };
  const sheets = await workbook.sheets();

  const readPart = async (part: Formula): Promise<NamedCells | { readonly why: NotFollowed } | null> => {
    if (part.kind === 'cells') {
      const area = areaOf(part.sheet ?? at.sheet, part.span, sheets);
      return area === null ? { why: 'name' } : readArea(workbook, area, '');
    }
    if (part.kind === 'name') {
      const area = await workbook.locate(part.name);
      return area === null ? { why: 'name' } : readArea(workbook, area, part.name);
    }
    if (part.kind !== 'ofRow' && part.kind !== 'allOf') return null;
    const table = await (part.table === null ? ownTable() : readTable(part.table));
    return (table && cellsOfColumn(table, part, at)) ?? { why: 'table' };
  };
  // Asked for in one breath, so that a program that answers slowly is asked once.
  const read = await Promise.all(
    everyPart(formula).map(async (part) => [part, await readPart(part)] as const),
  );
  return new Map(read.flatMap(([part, found]) => (found === null ? [] : [[part, found] as const])));
}

async function readArea(
  workbook: WorkbookPort,
  area: Area,
  label: string,
): Promise<NamedCells | { readonly why: NotFollowed }> {
  if (area.rows * area.columns > mostCells) return { why: 'tooMany' };
  return { area, values: (await workbook.read(area)).values, label, isColumn: false };
}

/** Whole rows and columns end with what is filled in; null when there is no such sheet. */
function areaOf(
  sheet: string,
  span: Extract<Formula, { kind: 'cells' }>['span'],
  sheets: readonly SheetInfo[],
): Area | null {
  const found = sheets.find(({ name }) => name.toLowerCase() === sheet.toLowerCase());
  if (found === undefined) return null;
  const rows = Math.max(1, Math.min(span.rows, (found.used?.rows ?? 0) - span.row));
  const columns = Math.max(1, Math.min(span.columns, (found.used?.columns ?? 0) - span.column));
  const isLong = span.rows * span.columns > mostCells;
  return { sheet: found.name, ...span, ...(isLong && { rows, columns }) };
}

function cellsOfColumn(
  table: TableRead,
  { kind, header }: Extract<Formula, { kind: 'ofRow' | 'allOf' }>,
  at: Area,
): NamedCells | null {
  const place = table.headers.findIndex((one) => one.toLowerCase() === header.toLowerCase());
  if (place < 0) return null;
  const { area, rows } = table;
  const label = table.headers[place] ?? header;
  const column = { sheet: area.sheet, column: area.column + place, columns: 1 };
  if (kind === 'allOf') {
    const values = rows.map((row) => [row[place] ?? null]);
    return { area: { ...column, row: area.row + 1, rows: rows.length }, values, label, isColumn: true };
  }
  const values = rows[at.row - area.row - 1];
  if (values === undefined || at.sheet !== area.sheet) return null;
  return {
    area: { ...column, row: at.row, rows: 1 },
    values: [[values[place] ?? null]],
    label,
    isColumn: false,
  };
}

function holds(area: Area, { sheet, row, column }: Area): boolean {
  const isInside = (from: number, count: number, one: number): boolean => one >= from && one < from + count;
  return (
    sheet === area.sheet && isInside(area.row, area.rows, row) && isInside(area.column, area.columns, column)
  );
}

/** A1, or A1:B9. */
export function addressOf({ row, column, rows, columns }: Area): string {
  const first = cellAddress(row, column);
  return rows * columns === 1 ? first : `${first}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}
