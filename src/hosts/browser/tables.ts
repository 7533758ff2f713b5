/** The tables of the workbook, as the engine's table plugin keeps them. */
import type { IRange } from '@univerjs/core';
import { TableManager } from '@univerjs/sheets-table';
import type { Span } from '../../workbook/port';
import type { Engine } from './engine';

export interface TableState {
  readonly id: string;
  readonly name: string;
  readonly sheetId: string;
  readonly range: IRange;
  readonly headers: readonly string[];
}

export function allTables(engine: Engine): TableState[] {
  return engine.accessor
    .get(TableManager)
    .getTableList(engine.unitId)
    .map(({ id, name, subUnitId, range, columns }) => ({
      id,
      name,
      sheetId: subUnitId,
      range,
      headers: columns.map((column) => column.displayName),
    }));
}

/** Names of tables are one whatever their case. */
export function findTable(engine: Engine, name: string): TableState | null {
  return allTables(engine).find((table) => isSameName(table.name, name)) ?? null;
}

export function isSameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

export function spanOf({ startRow, endRow, startColumn, endColumn }: IRange): Span {
  return {
    row: startRow,
    column: startColumn,
    rows: endRow - startRow + 1,
    columns: endColumn - startColumn + 1,
  };
}
