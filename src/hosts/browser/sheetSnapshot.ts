/** A new sheet as the engine's whole snapshot of it, so that it comes and goes in one write. */
import {
  BooleanNumber,
  mergeWorksheetSnapshotWithDefault,
  type ICellData,
  type IStyleData,
  type IWorksheetData,
  type Nullable,
} from '@univerjs/core';
import type { Expression, Format, NewSheet, Span, TableShape } from '../../workbook/port';
import { toCellData } from './cellData';
import { styleId, styleOf } from './cellStyles';
import { rowHeights } from './rowHeights';
import { packCustom } from './sheetCustom';

/** Free rows and columns beyond the contents. */
export const spareRows = 200;
const spareColumns = 6;
const leastRows = 300;
const leastColumns = 26;

/** The engine's. */
const defaultRowPx = 24;

/** A character of Arial 11, and the room to both sides of a cell's text. */
const characterPx = 7.5;
const cellPaddingPx = 8;

export interface SheetSnapshot {
  readonly sheet: IWorksheetData;
  readonly styles: Record<string, IStyleData>;
}

/** `tableIds` go along with `newSheet.tables`. */
export function takeSnapshot(
  newSheet: NewSheet,
  sheetId: string,
  tableIds: readonly string[],
  namespace: string,
): SheetSnapshot {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const styles: Record<string, IStyleData> = {};
  const cellAt = (row: number, column: number): ICellData => ((cellData[row] ??= {})[column] ??= {});

  for (const dressing of newSheet.dressings) {
    const id = styleId(dressing.role, dressing.format);
    styles[id] ??= styleOf(dressing.role, dressing.format);
    forEachCell(dressing, (row, column) => (cellAt(row, column).s = id));
  }
  prepareRowsUnder(newSheet, (row, column, format) => {
    const id = styleId('plain', format);
    styles[id] ??= styleOf('plain', format);
    cellAt(row, column).s ??= id;
  });
  for (const block of newSheet.blocks) {
    block.contents.forEach((line, i) =>
      line.forEach((content, j) => {
        if (content === null) return;
        const row = block.row + i;
        const column = block.column + j;
        const table = newSheet.tables.find((each) => isInside(each, row, column))?.name ?? null;
        Object.assign(cellAt(row, column), withoutNulls(toCellData(content, { namespace, table })));
      }),
    );
  }
  const size = sizeOf(newSheet);
  const growth = Object.fromEntries(
    newSheet.tables.flatMap((table, i) => {
      const id = tableIds[i];
      return table.grows === null || id === undefined ? [] : [[id, growthOf(table)]];
    }),
  );
  const sheet = mergeWorksheetSnapshotWithDefault({
    id: sheetId,
    name: newSheet.name,
    cellData,
    rowCount: Math.max(leastRows, size.rows + spareRows),
    columnCount: Math.max(leastColumns, size.columns + spareColumns),
    columnData: Object.fromEntries(
      newSheet.widths.map((characters, column) => [
        column,
        { w: Math.round(characters * characterPx + cellPaddingPx), hd: BooleanNumber.FALSE },
      ]),
    ),
    rowData: Object.fromEntries(
      [...rowHeights(newSheet, defaultRowPx)].map(([row, h]) => [row, { h, ia: BooleanNumber.FALSE }]),
    ),
    freeze: {
      xSplit: newSheet.frozenColumns,
      ySplit: newSheet.frozenRows,
      // The first row and column that scroll; -1 where nothing is frozen.
      startRow: newSheet.frozenRows > 0 ? newSheet.frozenRows : -1,
      startColumn: newSheet.frozenColumns > 0 ? newSheet.frozenColumns : -1,
    },
    custom: packCustom({ mark: newSheet.mark, growth }),
  });
  return { sheet, styles };
}

/**
 * The free rows under a growing table have the formats of its columns already: what is typed there becomes a row of
 * the table, and a plot called 007 must not have become a number before that.
 */
function prepareRowsUnder(
  newSheet: NewSheet,
  visit: (row: number, column: number, format: Format) => void,
): void {
  // Where two dressings meet, the later one holds.
  const dressings = [...newSheet.dressings].reverse();
  for (const table of newSheet.tables.filter(({ grows }) => grows !== null)) {
    const lastRow = table.row + table.rows - 1;
    for (let column = table.column; column < table.column + table.columns; column++) {
      const format = dressings.find((each) => isInside(each, lastRow, column))?.format;
      if (format === undefined || format === 'general') continue;
      for (let row = lastRow + 1; row <= lastRow + spareRows; row++) visit(row, column, format);
    }
  }
}

function growthOf(table: TableShape): Record<string, Expression> {
  return Object.fromEntries(
    table.headers.flatMap((header, i) => {
      const expression = table.grows?.[i] ?? null;
      return expression === null ? [] : [[header, expression]];
    }),
  );
}

export function isInside(span: Span, row: number, column: number): boolean {
  return (
    row >= span.row &&
    row < span.row + span.rows &&
    column >= span.column &&
    column < span.column + span.columns
  );
}

function forEachCell(span: Span, visit: (row: number, column: number) => void): void {
  for (let row = span.row; row < span.row + span.rows; row++) {
    for (let column = span.column; column < span.column + span.columns; column++) visit(row, column);
  }
}

function sizeOf(newSheet: NewSheet): { rows: number; columns: number } {
  const ends = [
    ...newSheet.dressings.map((span) => [span.row + span.rows, span.column + span.columns] as const),
    ...newSheet.blocks.map(
      (block) =>
        [
          block.row + block.contents.length,
          block.column + Math.max(0, ...block.contents.map((line) => line.length)),
        ] as const,
    ),
  ];
  return {
    rows: Math.max(0, ...ends.map(([rows]) => rows)),
    columns: Math.max(newSheet.widths.length, ...ends.map(([, columns]) => columns)),
  };
}

/** In a snapshot an absent field is absent. */
function withoutNulls(cell: ICellData): ICellData {
  return Object.fromEntries(
    Object.entries(cell).filter(([, value]: [string, Nullable<unknown>]) => value != null),
  );
}
