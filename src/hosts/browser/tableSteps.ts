/** Writes that make a table, and that make one longer. */
import type { ICellData, IRange } from '@univerjs/core';
import { DataValidationModel, UpdateDataValidationMutation, UpdateRuleType } from '@univerjs/data-validation';
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  type ITableRange,
} from '@univerjs/sheets-table';
import type { TableShape } from '../../workbook/port';
import { putCells, putRowCount, type CellMatrix } from './cellSteps';
import type { Engine } from './engine';
import { spareRows } from './sheetSnapshot';
import type { TableState } from './tables';
import type { WriteStep } from './writeSteps';

export function addTable(engine: Engine, sheetId: string, tableId: string, shape: TableShape): WriteStep {
  const { unitId } = engine;
  const range: ITableRange = {
    startRow: shape.row,
    endRow: shape.row + shape.rows - 1,
    startColumn: shape.column,
    endColumn: shape.column + shape.columns - 1,
  };
  return {
    name: 'table',
    mutations: () => ({
      redo: {
        id: AddSheetTableMutation.id,
        params: {
          unitId,
          subUnitId: sheetId,
          tableId,
          name: shape.name,
          range,
          header: [...shape.headers],
          options: { showHeader: true },
        },
      },
      undo: { id: DeleteSheetTableMutation.id, params: { unitId, subUnitId: sheetId, tableId } },
    }),
  };
}

/** The cells written, the range drawn around them, looks and pick lists of the last row continued. */
export function lengthenTable(
  engine: Engine,
  table: TableState,
  count: number,
  cells: CellMatrix,
): WriteStep[] {
  const { sheetId, range } = table;
  const endRow = range.endRow + count;
  const longer = { ...range, endRow };
  const setRange = (newRange: IRange) => ({
    id: SetSheetTableMutation.id,
    params: {
      unitId: engine.unitId,
      subUnitId: sheetId,
      tableId: table.id,
      config: { updateRange: { newRange } },
    },
  });
  const rowCount = putRowCount(engine, sheetId, endRow + 1 + spareRows);
  return [
    ...(rowCount === null ? [] : [rowCount]),
    putCells(engine, sheetId, dressed(engine, table, count, cells)),
    { name: 'tableRange', mutations: () => ({ redo: setRange(longer), undo: setRange(range) }) },
    ...lengthenLists(engine, table, count),
  ];
}

/** New rows look like the last one; as many free rows under the table as before have the formats of its columns. */
function dressed(
  engine: Engine,
  { sheetId, range }: TableState,
  count: number,
  cells: CellMatrix,
): CellMatrix {
  const matrix = engine.workbook.getSheetBySheetId(sheetId)?.getCellMatrix();
  const all: CellMatrix = { ...cells };
  const endRow = range.endRow + count;
  const put = (row: number, column: number, style: ICellData['s']): void => {
    if (style != null) all[row] = { ...all[row], [column]: { ...all[row]?.[column], s: style } };
  };
  for (let column = range.startColumn; column <= range.endColumn; column++) {
    const ofLastRow = matrix?.getValue(range.endRow, column)?.s;
    const ofFreeRow = matrix?.getValue(range.endRow + spareRows, column)?.s;
    for (let row = range.endRow + 1; row <= endRow; row++) put(row, column, ofLastRow);
    for (let row = Math.max(endRow, range.endRow + spareRows) + 1; row <= endRow + spareRows; row++) {
      if (matrix?.getValue(row, column) == null) put(row, column, ofFreeRow);
    }
  }
  return all;
}

function lengthenLists(engine: Engine, { sheetId, range }: TableState, count: number): WriteStep[] {
  const { unitId } = engine;
  const isOfLastRow = (each: IRange): boolean =>
    each.startRow <= range.endRow &&
    each.endRow === range.endRow &&
    each.startColumn >= range.startColumn &&
    each.endColumn <= range.endColumn;
  const rules = engine.accessor.get(DataValidationModel).getRules(unitId, sheetId);
  return rules
    .filter((rule) => (rule.ranges as IRange[]).some(isOfLastRow))
    .map((rule) => {
      const before = rule.ranges as IRange[];
      const after = before.map((each) =>
        isOfLastRow(each) ? { ...each, endRow: each.endRow + count } : each,
      );
      const setRanges = (ranges: IRange[]) => ({
        id: UpdateDataValidationMutation.id,
        params: {
          unitId,
          subUnitId: sheetId,
          ruleId: rule.uid,
          payload: { type: UpdateRuleType.RANGE, payload: ranges },
        },
      });
      return { name: 'list', mutations: () => ({ redo: setRanges(after), undo: setRanges(before) }) };
    });
}
