import type { Expression } from '../../workbook/port';
import { printFormula } from '../../workbook/printFormula';
import { tableAround, type SheetState, type TableState } from './bookState';

const namespace = 'CUCURBIT.';

export function formulaAt(sheet: SheetState, row: number, column: number, expression: Expression): string {
  return printFormula(expression, { namespace, table: tableAround(sheet, row, column)?.name ?? null });
}

export function formulaInTable(table: TableState, expression: Expression): string {
  return printFormula(expression, { namespace, table: table.name });
}
