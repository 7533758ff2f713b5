/** The engine as a calculator in Node: a formula in, its value or list out. */
import { ICommandService } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { FormulaFault } from '../../workbook/formulaFault';
import { HostError, type ReadValue } from '../../workbook/port';
import { findFormulaFault } from './findFormulaFault';
import { startEngine, type WorkbookOptions } from './engine';
import { openWorkbook } from './openWorkbook';

export interface Evaluator {
  /** A value, or the rows of a list that spills. @throws HostError when no result came in time */
  evaluate(formula: string): Promise<ReadValue | readonly (readonly ReadValue[])[]>;
  /** What keeps the engine from reading the formula; null when it can. */
  findFault(formula: string): FormulaFault | null;
  dispose(): void;
}

const timeoutMs = 20000;
/** Column ALM of the first row, with room for a list beside it: nobody's A1 is the formula's own cell. */
const column = 1000;
const columnCount = 1100;

export function openEvaluator(options: WorkbookOptions): Evaluator {
  const engine = startEngine(options, null);
  const workbook = openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
  const sheet = engine.workbook.getActiveSheet();
  const sheetId = sheet.getSheetId();
  sheet.setColumnCount(columnCount);

  const putFormula = (cell: { f: string } | null): void => {
    engine.accessor.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, {
      unitId: engine.unitId,
      subUnitId: sheetId,
      cellValue: { 0: { [column]: cell } },
    });
  };

  return {
    async evaluate(formula) {
      putFormula({ f: withSign(formula) });
      const unsettled = await workbook.settle(timeoutMs);
      if (unsettled.length > 0) throw new HostError({ code: 'failed', action: formula });
      const spill = engine.formulas.getArrayFormulaRange()[engine.unitId]?.[sheetId]?.[0]?.[column];
      const rows = spill == null ? 1 : spill.endRow - spill.startRow + 1;
      const columns = spill == null ? 1 : spill.endColumn - spill.startColumn + 1;
      const area = { sheet: sheet.getName(), row: 0, column, rows, columns };
      const { values } = await workbook.read(area);
      putFormula(null);
      await workbook.settle(timeoutMs);
      return rows === 1 && columns === 1 ? (values[0]?.[0] ?? null) : values;
    },
    findFault: (formula) => findFormulaFault(engine.accessor, withSign(formula)),
    dispose: () => workbook.dispose(),
  };
}

function withSign(formula: string): string {
  return formula.startsWith('=') ? formula : `=${formula}`;
}
