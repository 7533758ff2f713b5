/** Everything the port reads. Values are read raw, past the display text that number formats put in their place. */
import { IPermissionService, type ICellData, type Nullable, type Worksheet } from '@univerjs/core';
import { deserializeRangeWithSheet, isReferenceStrings } from '@univerjs/engine-formula';
import { WorksheetEditPermission } from '@univerjs/sheets';
import {
  HostError,
  type Area,
  type CellsRead,
  type ReadValue,
  type SheetInfo,
  type TableRead,
} from '../../workbook/port';
import { hasContent, isComputedCell, toReadValue } from './cellData';
import { findName } from './definedNames';
import type { Engine } from './engine';
import { customOf } from './sheetCustom';
import { findTable, isSameName, spanOf } from './tables';

/** Sheet names are one whatever their case. */
export function findSheet(engine: Engine, name: string): Worksheet | null {
  return engine.workbook.getSheets().find((sheet) => isSameName(sheet.getName(), name)) ?? null;
}

/** @throws HostError */
export function demandSheet(engine: Engine, name: string): Worksheet {
  const sheet = findSheet(engine, name);
  if (sheet === null) throw new HostError({ code: 'noSuchSheet', sheet: name });
  return sheet;
}

export function isLocked(engine: Engine, worksheet: Worksheet): boolean {
  const { id } = new WorksheetEditPermission(engine.unitId, worksheet.getSheetId());
  return engine.accessor.get(IPermissionService).getPermissionPoint(id)?.value === false;
}

export function listSheets(engine: Engine): SheetInfo[] {
  return engine.workbook.getSheets().map((worksheet) => ({
    name: worksheet.getName(),
    mark: customOf(worksheet).mark,
    locked: isLocked(engine, worksheet),
    used: usedArea(engine, worksheet),
  }));
}

/** The cell as stored; a cell that an array spills into holds nothing itself. */
export function storedCell(
  engine: Engine,
  worksheet: Worksheet,
  row: number,
  column: number,
): Nullable<ICellData> {
  const cell = worksheet.getCellMatrix().getValue(row, column);
  if (cell?.v != null || cell?.p != null) return cell;
  const spilled = spilledCells(engine, worksheet)?.[row]?.[column];
  // The formula marks its error as a computed one; a spilled cell is computed as well.
  return spilled == null ? cell : { ...spilled, f: cell?.f ?? '=' };
}

function spilledCells(
  engine: Engine,
  worksheet: Worksheet,
): Nullable<Record<number, Record<number, Nullable<ICellData>>>> {
  return engine.formulas.getArrayFormulaCellData()[engine.unitId]?.[worksheet.getSheetId()];
}

export function readValue(engine: Engine, worksheet: Worksheet, row: number, column: number): ReadValue {
  return toReadValue(storedCell(engine, worksheet, row, column));
}

export function readFormula(
  engine: Engine,
  worksheet: Worksheet,
  row: number,
  column: number,
): string | null {
  const cell = worksheet.getCellMatrix().getValue(row, column);
  if (cell == null || !isComputedCell(cell)) return null;
  // A filled-down formula is stored once; the model writes it out for this cell.
  if (cell.f != null && !cell.si) return cell.f;
  return (
    engine.formulas.getFormulaStringByCell(row, column, worksheet.getSheetId(), engine.unitId) ??
    cell.f ??
    null
  );
}

/** @throws HostError */
export function readArea(engine: Engine, area: Area): CellsRead {
  const worksheet = demandSheet(engine, area.sheet);
  const cells = <T>(read: (row: number, column: number) => T): T[][] =>
    Array.from({ length: area.rows }, (_, i) =>
      Array.from({ length: area.columns }, (__, j) => read(area.row + i, area.column + j)),
    );
  return {
    values: cells((row, column) => readValue(engine, worksheet, row, column)),
    formulas: cells((row, column) => readFormula(engine, worksheet, row, column)),
  };
}

export function readTable(engine: Engine, name: string): TableRead | null {
  const table = findTable(engine, name);
  const worksheet = table && engine.workbook.getSheetBySheetId(table.sheetId);
  if (table === null || worksheet == null) return null;
  const area = { sheet: worksheet.getName(), ...spanOf(table.range) };
  const rows = Array.from({ length: area.rows - 1 }, (_, i) =>
    table.headers.map((__, j) => readValue(engine, worksheet, area.row + 1 + i, area.column + j)),
  );
  return { name: table.name, area, headers: table.headers, rows };
}

export function locateName(engine: Engine, name: string): Area | null {
  const reference = findName(engine, name)?.formulaOrRefString;
  if (reference === undefined || !isReferenceStrings(reference)) return null;
  const { sheetName, range } = deserializeRangeWithSheet(reference);
  const worksheet = findSheet(engine, sheetName);
  return worksheet === null ? null : { sheet: worksheet.getName(), ...spanOf(range) };
}

function usedArea(engine: Engine, worksheet: Worksheet): Area | null {
  let rows = 0;
  let columns = 0;
  const extend = (row: number, column: number): void => {
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  };
  forEachContent(worksheet, extend);
  for (const [row, cells] of Object.entries(spilledCells(engine, worksheet) ?? {})) {
    for (const column of Object.keys(cells)) extend(Number(row), Number(column));
  }
  return rows === 0 ? null : { sheet: worksheet.getName(), row: 0, column: 0, rows, columns };
}

export function forEachContent(worksheet: Worksheet, visit: (row: number, column: number) => void): void {
  worksheet.getCellMatrix().forValue((row, column, cell) => {
    if (hasContent(cell)) visit(row, column);
  });
}
