/**
 * A formula's text without a letter is a text. The engine takes such a result for an empty cell, which counts as 0, as
 * long as it reads it out of the calculation that made it; read out of the sheet, at the next one, it is a text.
 */
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { BaseReferenceObject } from '@univerjs/engine-formula';

const readCell = BaseReferenceObject.prototype.getCellData;

/** To the engine a cell with a formula is not empty. */
const asFormula = '=""';

function isEmptyText(cell: Nullable<ICellData>): cell is ICellData {
  return cell?.v === '' && cell.t === CellValueType.STRING && cell.f == null && cell.si == null;
}

/** For all engines of this page or process. */
export function readEmptyTexts(): void {
  BaseReferenceObject.prototype.getCellData = function (row, column) {
    const cell = readCell.call(this, row, column);
    // One in the sheet itself, without a formula, is what is left of an erased cell.
    const isOfSheet = (): boolean =>
      this.getCurrentActiveSheetData()?.cellData.getValue(row, column) === cell;
    return isEmptyText(cell) && !isOfSheet() ? { ...cell, f: asFormula } : cell;
  };
}
