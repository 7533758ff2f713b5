/** Writes into cells and rows of sheets that exist. */
import type { ICellData, IMutationInfo, IObjectMatrixPrimitiveType, Nullable } from '@univerjs/core';
import {
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetWorksheetRowCountMutation,
  type ISetRangeValuesMutationParams,
} from '@univerjs/sheets';
import type { Engine } from './engine';
import type { WriteStep } from './writeSteps';

export type CellMatrix = Record<number, Record<number, ICellData>>;

export function putCells(engine: Engine, sheetId: string, cells: CellMatrix): WriteStep {
  return {
    name: 'cells',
    mutations() {
      const params: ISetRangeValuesMutationParams = {
        unitId: engine.unitId,
        subUnitId: sheetId,
        cellValue: cells as IObjectMatrixPrimitiveType<Nullable<ICellData>>,
      };
      const undo = SetRangeValuesUndoMutationFactory(engine.accessor, params);
      return { redo: cellMutation(params), undo: cellMutation(undo) };
    },
  };
}

function cellMutation(params: ISetRangeValuesMutationParams): IMutationInfo {
  return { id: SetRangeValuesMutation.id, params };
}

/** null when the sheet has that many rows. */
export function putRowCount(engine: Engine, sheetId: string, least: number): WriteStep | null {
  const before = engine.workbook.getSheetBySheetId(sheetId)?.getRowCount() ?? 0;
  if (before >= least) return null;
  const mutation = (rowCount: number): IMutationInfo => ({
    id: SetWorksheetRowCountMutation.id,
    params: { unitId: engine.unitId, subUnitId: sheetId, rowCount },
  });
  return { name: 'rowCount', mutations: () => ({ redo: mutation(least), undo: mutation(before) }) };
}
