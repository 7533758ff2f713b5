/** Contents of cells as Excel takes and gives them. */
import {
  isCellError,
  type CellContent,
  type CellError,
  type CellsRead,
  type CellValue,
  type ReadValue,
} from '../../workbook/port';
import { printFormula, type Dialect } from '../../workbook/printFormula';

/** A value that Excel's arrays hold: "" for an empty cell, a formula with its "=". */
export type RawCell = string | number | boolean;

/** @throws RangeError for what no cell can hold */
export function enterContent(content: CellContent, dialect: Dialect): RawCell {
  if (content === null) return '';
  if (typeof content === 'object') return printFormula(content.compute, dialect);
  if (typeof content === 'number' && !Number.isFinite(content)) throw new RangeError(`${content} in a cell`);
  return typeof content === 'string' ? enterText(content) : content;
}

/**
 * Excel reads a text that is put into a cell as if it were typed: digits, dates, formulas, truth values become
 * what they look like. An apostrophe before it keeps it a text, and is no part of it.
 */
export function enterText(text: string): string {
  return /^[\s=+\-@'#]|\d|^(true|false)\s*$/i.test(text) ? `'${text}` : text;
}

export interface RawCells {
  readonly values: readonly (readonly RawCell[])[];
  readonly formulas: readonly (readonly RawCell[])[];
  readonly types: readonly (readonly string[])[];
}

export function valueOf(value: RawCell, type: string): ReadValue {
  if (type === 'Empty') return null;
  return type === 'Error' ? { error: String(value), message: null } : value;
}

/** null where the cell holds no formula: a text that starts with "=" is its own value, which no formula is. */
export function formulaOf(value: RawCell, formula: RawCell, type: string): string | null {
  const isFormula = typeof formula === 'string' && formula.startsWith('=');
  return isFormula && (formula !== value || type === 'Error') ? formula : null;
}

export function cellsRead({ values, formulas, types }: RawCells): CellsRead {
  return {
    values: values.map((row, i) => row.map((value, j) => valueOf(value, types[i]?.[j] ?? 'Empty'))),
    formulas: values.map((row, i) =>
      row.map((value, j) => formulaOf(value, formulas[i]?.[j] ?? '', types[i]?.[j] ?? 'Empty')),
    ),
  };
}

/** What stands in a cell, whatever it amounts to at the moment. */
export type Standing = CellValue | CellError | { readonly formula: string };

export function isFormula(standing: Standing): standing is { readonly formula: string } {
  return typeof standing === 'object' && standing !== null && 'formula' in standing;
}

export function standingOf(value: RawCell, formula: RawCell, type: string): Standing {
  const found = formulaOf(value, formula, type);
  return found === null ? valueOf(value, type) : { formula: found };
}

/** Puts back what stood in a cell. */
export function enterStanding(standing: Standing): RawCell {
  if (standing === null) return '';
  if (isFormula(standing)) return standing.formula;
  if (isCellError(standing)) return standing.error;
  return typeof standing === 'string' ? enterText(standing) : standing;
}
