import type { Expression } from '../../workbook/port';
import { printFormula, type Dialect } from '../../workbook/printFormula';
import { tableAround, type SheetState, type TableState } from './bookState';

export function formulaAt(sheet: SheetState, row: number, column: number, expression: Expression): string {
  return printFormula(expression, dialectOf(tableAround(sheet, row, column)));
}

/** As a file keeps it. */
export function storedFormulaAt(
  sheet: SheetState,
  row: number,
  column: number,
  expression: Expression,
): string {
  return printFormula(expression, { ...dialectOf(tableAround(sheet, row, column)), isStored: true });
}

/** As a file keeps it. */
export function formulaInTable(table: TableState, expression: Expression): string {
  return printFormula(expression, { ...dialectOf(table), isStored: true });
}

function dialectOf(table: TableState | undefined): Dialect {
  return { namespace: 'CUCURBIT.', table: table?.name ?? null };
}
