/**
 * What Excel does by itself: a row typed or pasted under a growing table becomes part of it, with the table's
 * formulas, looks and pick lists. It joins the undo step of the edit.
 */
import type { ICellData, IMutationInfo, IUndoRedoItem, Nullable, Worksheet } from '@univerjs/core';
import {
  MoveRangeMutation,
  SetRangeValuesMutation,
  type IMoveRangeMutationParams,
  type ISetRangeValuesMutationParams,
} from '@univerjs/sheets';
import type { Expression } from '../../workbook/port';
import { hasContent, toCellData } from './cellData';
import { putCells, type CellMatrix } from './cellSteps';
import type { Engine } from './engine';
import type { Consequence } from './joiningUndoService';
import { customOf } from './sheetCustom';
import { allTables, type TableState } from './tables';
import { lengthenTable } from './tableSteps';
import { runSteps } from './writeSteps';

/** Row → columns that an edit wrote. */
type Touched = ReadonlyMap<number, ReadonlySet<number>>;

export function growTables(engine: Engine): void {
  engine.undo.joinWith((edit) => (edit.unitID === engine.unitId ? growAfter(engine, edit) : null));
}

function growAfter(engine: Engine, edit: IUndoRedoItem): Consequence | null {
  const parts: Consequence[] = [];
  for (const table of allTables(engine)) {
    const worksheet = engine.workbook.getSheetBySheetId(table.sheetId);
    if (worksheet == null) continue;
    const growth = customOf(worksheet).growth[table.id];
    if (growth === undefined) continue;
    const touched = touchedCells(engine, table, edit.redoMutations);
    if (touched.size === 0) continue;
    const count = rowsToAdd(engine, worksheet, table, touched);
    const formulas = formulasDue(engine, worksheet, table, growth, touched, count);
    if (count > 0)
      parts.push(runSteps(engine, lengthenTable(engine, table, count, formulas), () => undefined));
    else if (Object.keys(formulas).length > 0) {
      parts.push(runSteps(engine, [putCells(engine, table.sheetId, formulas)], () => undefined));
    }
  }
  if (parts.length === 0) return null;
  return {
    redos: parts.flatMap(({ redos }) => redos),
    undos: parts.reverse().flatMap(({ undos }) => undos),
  };
}

/** Cells inside the table's columns and below its headers. */
function touchedCells(engine: Engine, table: TableState, mutations: readonly IMutationInfo[]): Touched {
  const { startRow, startColumn, endColumn } = table.range;
  const touched = new Map<number, Set<number>>();
  for (const cells of mutations.flatMap((mutation) => writtenCells(engine, table.sheetId, mutation))) {
    for (const [row, columns] of Object.entries(cells)) {
      if (Number(row) <= startRow || columns == null) continue;
      const inTable = Object.keys(columns).map(Number);
      for (const column of inTable.filter((each) => each >= startColumn && each <= endColumn)) {
        touched.set(Number(row), (touched.get(Number(row)) ?? new Set()).add(column));
      }
    }
  }
  return touched;
}

type Written = Record<string, Nullable<Record<string, unknown>>>;

function writtenCells(engine: Engine, sheetId: string, { id, params }: IMutationInfo): Written[] {
  if (id === SetRangeValuesMutation.id) {
    const { unitId, subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
    return unitId === engine.unitId && subUnitId === sheetId ? [(cellValue ?? {}) as Written] : [];
  }
  if (id === MoveRangeMutation.id) {
    const { unitId, to } = params as IMoveRangeMutationParams;
    return unitId === engine.unitId && to.subUnitId === sheetId ? [to.value as Written] : [];
  }
  return [];
}

function cellOf(worksheet: Worksheet, row: number, column: number): Nullable<ICellData> {
  return worksheet.getCellMatrix().getValue(row, column);
}

/** To the last row of content that the edit wrote without a gap; none if somebody's cells lie in those rows. */
function rowsToAdd(engine: Engine, worksheet: Worksheet, table: TableState, touched: Touched): number {
  const { endRow, startColumn, endColumn } = table.range;
  let last = endRow;
  for (let row = endRow + 1; touched.has(row); row++) {
    const columns = touched.get(row) ?? new Set();
    if ([...columns].some((column) => hasContent(cellOf(worksheet, row, column)))) last = row;
  }
  for (let row = endRow + 1; row <= last; row++) {
    for (let column = startColumn; column <= endColumn; column++) {
      if (!touched.get(row)?.has(column) && hasContent(cellOf(worksheet, row, column))) return 0;
    }
  }
  const overlapsOther = allTables(engine).some(
    ({ id, sheetId, range }) =>
      id !== table.id &&
      sheetId === table.sheetId &&
      range.startRow <= last &&
      range.endRow > endRow &&
      range.startColumn <= endColumn &&
      range.endColumn >= startColumn,
  );
  return overlapsOther ? 0 : last - endRow;
}

/**
 * In new rows, and in rows that were put into the table and got their first value: a formula in every computed cell
 * that is empty. A cell that the edit wrote stays as it is.
 */
function formulasDue(
  engine: Engine,
  worksheet: Worksheet,
  table: TableState,
  growth: Readonly<Record<string, Expression>>,
  touched: Touched,
  count: number,
): CellMatrix {
  const { range, headers, name } = table;
  const dialect = { namespace: engine.namespace, table: name };
  const computed = headers.flatMap((header, i) => {
    const compute = growth[header];
    return compute === undefined ? [] : [{ column: range.startColumn + i, compute }];
  });
  const formulas: CellMatrix = {};
  for (let row = range.endRow + 1; row <= range.endRow + count; row++) fill(row);
  for (const [row, columns] of touched) {
    const hasValue = [...columns].some((column) => hasContent(cellOf(worksheet, row, column)));
    const isWithout = computed.every(({ column }) => !hasContent(cellOf(worksheet, row, column)));
    if (row <= range.endRow && hasValue && isWithout) fill(row);
  }
  return formulas;

  function fill(row: number): void {
    for (const { column, compute } of computed) {
      if (hasContent(cellOf(worksheet, row, column))) continue;
      (formulas[row] ??= {})[column] = toCellData({ compute }, dialect);
    }
  }
}
