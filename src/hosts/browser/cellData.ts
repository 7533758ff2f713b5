/** Cell contents as the engine stores them, and back. */
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { ERROR_TYPE_SET, type ErrorType } from '@univerjs/engine-formula';
import { printFormula, type Dialect } from '../../workbook/printFormula';
import type { CellContent, ReadValue } from '../../workbook/port';
import { messageIn } from './errorMessage';

/** Empties a cell but for its look. */
export const nothing = { v: null, t: null, f: null, si: null, p: null } as const;

/** Replaces whatever stands in the cell; its look stays. */
export function toCellData(content: CellContent, dialect: Dialect): ICellData {
  if (content === null || content === '') return { ...nothing };
  if (typeof content === 'object') return formulaData(printFormula(content.compute, dialect));
  if (typeof content === 'number') return { ...nothing, v: content, t: CellValueType.NUMBER };
  if (typeof content === 'boolean') return { ...nothing, v: content ? 1 : 0, t: CellValueType.BOOLEAN };
  return { ...nothing, v: content, t: textType(content) };
}

/** @param formula with its "=" */
export function formulaData(formula: string): ICellData {
  return { ...nothing, f: formula };
}

/** A text that looks like a number or a boolean becomes one when only its look is changed, unless it is forced. */
function textType(text: string): CellValueType {
  const looksLikeValue =
    text.trim() !== '' && (Number.isFinite(Number(text)) || /^(true|false)$/i.test(text));
  return looksLikeValue ? CellValueType.FORCE_STRING : CellValueType.STRING;
}

export function isComputedCell(cell: Nullable<ICellData>): boolean {
  return Boolean(cell?.f) || Boolean(cell?.si);
}

/** Erasing a cell in its editor leaves an empty text behind: nothing, unless a formula made it. */
export function hasContent(cell: Nullable<ICellData>): boolean {
  if (cell == null) return false;
  return isComputedCell(cell) || cell.p != null || (cell.v != null && cell.v !== '');
}

export function toReadValue(cell: Nullable<ICellData>): ReadValue {
  if (cell == null) return null;
  if (cell.p != null) return (cell.p.body?.dataStream ?? '').replace(/\r\n$/, '');
  const { v, t } = cell;
  if (v == null || (v === '' && !isComputedCell(cell))) return null;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true || /^(1|true)$/i.test(String(v));
  if (t === CellValueType.STRING || t === CellValueType.FORCE_STRING || typeof v === 'string') {
    // A text typed by a person may read like an error; a computed one is an error.
    if (isComputedCell(cell) && ERROR_TYPE_SET.has(v as ErrorType)) {
      return { error: String(v), message: messageIn(cell) };
    }
    return t === CellValueType.NUMBER ? Number(v) : String(v);
  }
  return v;
}
