/** One change, all or nothing, as one undo step. */
import { generateRandomId } from '@univerjs/core';
import { isCarried, type Change, type Progress } from '../../workbook/port';
import { carryCell } from './carryCell';
import { toCellData } from './cellData';
import { putCells, putRowCount, type CellMatrix } from './cellSteps';
import { checkChange, groupRows } from './checkChange';
import type { Engine } from './engine';
import { markSteps } from './markSteps';
import { addPicture, removePictures } from './pictureSteps';
import { demandSheet } from './readWorkbook';
import { isInside } from './sheetSnapshot';
import { addMissingRule } from './ruleSteps';
import { addSheet } from './sheetSteps';
import { allTables, findTable, spanOf } from './tables';
import { lengthenTable } from './tableSteps';
import { writeAsOne, type WriteStep } from './writeSteps';

/** @throws HostError; then nothing was written */
export function applyChange(
  engine: Engine,
  change: Change,
  onWrite: (step: string) => void,
  progress: Progress,
): void {
  checkChange(engine, change);
  writeAsOne(engine, change.title, () => planSteps(engine, change), onWrite, progress);
}

/** Sheets that exist first, then new ones whole: no cell is written twice. */
function planSteps(engine: Engine, change: Change): WriteStep[] {
  const sheetIds = change.newSheets.map(() => generateRandomId());
  return [
    ...cellSteps(engine, change),
    ...tableRowSteps(engine, change),
    ...(change.rules ?? []).flatMap((rule) => addMissingRule(engine, rule)),
    ...markSteps(engine, change.marks),
    ...change.newSheets.flatMap((sheet, i) => addSheet(engine, sheet, sheetIds[i] ?? generateRandomId())),
    ...change.pictures.flatMap((picture) => [
      ...removePictures(engine, picture),
      addPicture(engine, picture),
    ]),
  ];
}

function cellSteps(engine: Engine, change: Change): WriteStep[] {
  const bySheet = new Map<string, CellMatrix>();
  const tables = allTables(engine);
  for (const block of change.cells) {
    const worksheet = demandSheet(engine, block.sheet);
    const sheetId = worksheet.getSheetId();
    const cells = bySheet.get(sheetId) ?? {};
    bySheet.set(sheetId, cells);
    const ofSheet = tables.filter((table) => table.sheetId === sheetId);
    block.contents.forEach((line, i) => {
      const row = block.row + i;
      const cellsOfRow = (cells[row] ??= {});
      line.forEach((content, j) => {
        const column = block.column + j;
        const table = ofSheet.find(({ range }) => isInside(spanOf(range), row, column))?.name ?? null;
        cellsOfRow[column] = isCarried(content)
          ? carryCell(engine, worksheet, column, content.carriedFrom, row)
          : toCellData(content, { namespace: engine.namespace, table });
      });
    });
  }
  return [...bySheet].flatMap(([sheetId, cells]) => {
    const lastRow = Math.max(-1, ...Object.keys(cells).map(Number));
    const rowCount = putRowCount(engine, sheetId, lastRow + 1);
    return [...(rowCount === null ? [] : [rowCount]), putCells(engine, sheetId, cells)];
  });
}

function tableRowSteps(engine: Engine, change: Change): WriteStep[] {
  const rowsByTable = groupRows(change);
  return [...rowsByTable].flatMap(([name, rows]) => {
    const table = findTable(engine, name);
    const worksheet = table && engine.workbook.getSheetBySheetId(table.sheetId);
    if (table === null || worksheet == null || rows.length === 0) return [];
    const { startColumn, endRow } = table.range;
    const cells: CellMatrix = {};
    rows.forEach((contents, i) => {
      const row = endRow + 1 + i;
      cells[row] = Object.fromEntries(
        contents.map((content, j) => [
          startColumn + j,
          isCarried(content)
            ? carryCell(engine, worksheet, startColumn + j, content.carriedFrom, row)
            : toCellData(content, { namespace: engine.namespace, table: table.name }),
        ]),
      );
    });
    return lengthenTable(engine, table, rows.length, cells);
  });
}
