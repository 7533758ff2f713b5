/** Refuses a change that cannot be made whole, before anything is written. */
import type { Worksheet } from '@univerjs/core';
import { HostError, type Change } from '../../workbook/port';
import { hasContent } from './cellData';
import { allNames, isDead } from './definedNames';
import type { Engine } from './engine';
import { demandSheet, isLocked, storedCell } from './readWorkbook';
import { stampOf } from './stamps';
import { allTables, findTable, isSameName, type TableState } from './tables';

/** @throws HostError */
export function checkChange(engine: Engine, change: Change): void {
  for (const { sheet, stamp } of change.expect) {
    if (stampOf(engine, demandSheet(engine, sheet)) !== stamp) {
      throw new HostError({ code: 'changedMeanwhile', sheet });
    }
  }
  checkNewSheets(engine, change);
  for (const { sheet } of [...change.cells, ...(change.rules ?? []), ...change.marks])
    demandOpenSheet(engine, sheet);
  for (const [table, rows] of groupRows(change)) checkTableRows(engine, table, rows.length);
  for (const { sheet } of change.pictures) {
    if (!change.newSheets.some((each) => isSameName(each.name, sheet))) demandOpenSheet(engine, sheet);
  }
}

/** A table named twice gets all its rows at once. Keys are the names as first written. */
export function groupRows(change: Change): Map<string, Change['tableRows'][number]['rows']> {
  const grouped = new Map<string, Change['tableRows'][number]['rows']>();
  for (const { table, rows } of change.tableRows) {
    const key = [...grouped.keys()].find((name) => isSameName(name, table)) ?? table;
    grouped.set(key, [...(grouped.get(key) ?? []), ...rows]);
  }
  return grouped;
}

function demandOpenSheet(engine: Engine, name: string): Worksheet {
  const worksheet = demandSheet(engine, name);
  if (isLocked(engine, worksheet)) throw new HostError({ code: 'sheetLocked', sheet: worksheet.getName() });
  return worksheet;
}

function checkNewSheets(engine: Engine, change: Change): void {
  const sheets = new Set(engine.workbook.getSheets().map((sheet) => sheet.getName().toLowerCase()));
  const tables = new Set(allTables(engine).map((table) => table.name.toLowerCase()));
  const living = allNames(engine).filter((each) => !isDead(each));
  const names = new Set(living.map(({ name }) => name.toLowerCase()));
  for (const sheet of change.newSheets) {
    if (sheets.has(sheet.name.toLowerCase()))
      throw new HostError({ code: 'sheetNameTaken', sheet: sheet.name });
    sheets.add(sheet.name.toLowerCase());
    for (const { name: table } of sheet.tables) {
      if (tables.has(table.toLowerCase()) || names.has(table.toLowerCase())) {
        throw new HostError({ code: 'tableNameTaken', table });
      }
      tables.add(table.toLowerCase());
    }
    for (const name of Object.keys(sheet.names)) {
      if (names.has(name.toLowerCase()) || tables.has(name.toLowerCase())) {
        throw new HostError({ code: 'nameTaken', name });
      }
      names.add(name.toLowerCase());
    }
  }
}

/** The table's sheet is open, and the cells that the rows will take are empty. */
function checkTableRows(engine: Engine, name: string, count: number): void {
  const table = findTable(engine, name);
  if (table === null) throw new HostError({ code: 'noSuchTable', table: name });
  const worksheet = engine.workbook.getSheetBySheetId(table.sheetId);
  if (worksheet == null) throw new HostError({ code: 'noSuchTable', table: name });
  demandOpenSheet(engine, worksheet.getName());
  const inTheWay = firstCellInTheWay(engine, worksheet, table, count);
  if (inTheWay !== null) {
    throw new HostError({ code: 'cellsInTheWay', sheet: worksheet.getName(), ...inTheWay });
  }
}

/** A cell with content, or of another table, in the `count` rows under the table. */
export function firstCellInTheWay(
  engine: Engine,
  worksheet: Worksheet,
  table: TableState,
  count: number,
): { row: number; column: number } | null {
  const { startColumn, endColumn, endRow } = table.range;
  const others = allTables(engine).filter((each) => each.sheetId === table.sheetId && each.id !== table.id);
  for (let row = endRow + 1; row <= endRow + count; row++) {
    for (let column = startColumn; column <= endColumn; column++) {
      const cell = storedCell(engine, worksheet, row, column);
      const isOfOther = others.some(
        ({ range }) =>
          row >= range.startRow &&
          row <= range.endRow &&
          column >= range.startColumn &&
          column <= range.endColumn,
      );
      if (hasContent(cell) || isOfOther) return { row, column };
    }
  }
  return null;
}
