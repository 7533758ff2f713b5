/** What stands in a cell, for another row of its column. */
import type { ICellData, Worksheet } from '@univerjs/core';
import { carryFormula } from '../../workbook/carryFormula';
import { formulaData, nothing } from './cellData';
import type { Engine } from './engine';
import { readFormula } from './readWorkbook';

export function carryCell(
  engine: Engine,
  worksheet: Worksheet,
  column: number,
  fromRow: number,
  toRow: number,
): ICellData {
  const formula = readFormula(engine, worksheet, fromRow, column);
  if (formula !== null) return formulaData(carryFormula(formula, fromRow, toRow));
  const { v = null, t = null, p = null } = worksheet.getCellMatrix().getValue(fromRow, column) ?? nothing;
  return { ...nothing, v, t, p };
}
