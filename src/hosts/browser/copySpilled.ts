import type { IRange, Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { COPY_TYPE, ISheetClipboardService } from '@univerjs/sheets-ui';
import type { Engine } from './engine';

/**
 * Of a list that spills the engine copies the formula alone, and of its other cells nothing. Copied are the values of
 * all cells that were chosen; the formula goes along where its own cell is the only one of its list.
 */
export function copySpilled({ accessor, workbook, unitId }: Engine): void {
  const formulas = accessor.get(FormulaDataModel);
  let copied: { readonly sheetId: string; readonly range: IRange } | null = null;
  accessor.get(ISheetClipboardService).addClipboardHook({
    id: 'cucurbit-spilled',
    onBeforeCopy(_, sheetId, range, type) {
      copied = type === COPY_TYPE.COPY ? { sheetId, range } : null;
    },
    getCellValueBySpecialMatrix(row, column) {
      if (copied === null) return undefined;
      const { sheetId, range } = copied;
      const spilled = formulas.getArrayFormulaCellData()[unitId]?.[sheetId]?.[row]?.[column];
      const list = formulas.getArrayFormulaRange()[unitId]?.[sheetId]?.[row]?.[column];
      if (spilled == null || isAlone(list, range)) return undefined;
      const sheet = workbook.getSheetBySheetId(sheetId);
      const { v, t, s } = spilled;
      const shown = sheet?.getCell(row, column)?.v;
      return {
        ...sheet?.getCellRaw(row, column),
        f: null,
        si: null,
        v,
        t,
        ...(s == null ? {} : { s }),
        displayV: String(shown ?? ''),
      };
    },
  });
}

/** Whether the list begins here, and none of its other cells is in the range. */
function isAlone(list: Nullable<IRange>, { startRow, startColumn, endRow, endColumn }: IRange): boolean {
  if (list == null) return false;
  return (
    Math.min(list.endRow, endRow) === Math.max(list.startRow, startRow) &&
    Math.min(list.endColumn, endColumn) === Math.max(list.startColumn, startColumn)
  );
}
