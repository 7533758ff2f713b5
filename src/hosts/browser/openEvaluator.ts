/** The engine as a calculator in Node: a formula in, its value or list out. */
import { ICommandService } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { HostError, type ReadValue } from '../../workbook/port';
import { startEngine, type WorkbookOptions } from './engine';
import { openWorkbook } from './openWorkbook';

export interface Evaluator {
  /** A value, or the rows of a list that spills. @throws HostError when no result came in time */
  evaluate(formula: string): Promise<ReadValue | readonly (readonly ReadValue[])[]>;
  dispose(): void;
}

const timeoutMs = 20000;

export function openEvaluator(options: WorkbookOptions): Evaluator {
  const engine = startEngine(options, null);
  const workbook = openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
  const sheet = engine.workbook.getActiveSheet();
  const sheetId = sheet.getSheetId();

  const putFormula = (cell: { f: string } | null): void => {
    engine.accessor.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, {
      unitId: engine.unitId,
      subUnitId: sheetId,
      cellValue: { 0: { 0: cell } },
    });
  };

  return {
    async evaluate(formula) {
      putFormula({ f: formula.startsWith('=') ? formula : `=${formula}` });
      const unsettled = await workbook.settle(timeoutMs);
      if (unsettled.length > 0) throw new HostError({ code: 'failed', action: formula });
      const spill = engine.formulas.getArrayFormulaRange()[engine.unitId]?.[sheetId]?.[0]?.[0];
      const rows = spill == null ? 1 : spill.endRow - spill.startRow + 1;
      const columns = spill == null ? 1 : spill.endColumn - spill.startColumn + 1;
      const area = { sheet: sheet.getName(), row: 0, column: 0, rows, columns };
      const { values } = await workbook.read(area);
      putFormula(null);
      await workbook.settle(timeoutMs);
      return rows === 1 && columns === 1 ? (values[0]?.[0] ?? null) : values;
    },
    dispose: () => workbook.dispose(),
  };
}
