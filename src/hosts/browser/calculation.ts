/** Knows whether results are still to come. The engine starts calculating a moment after a write. */
import { ICommandService } from '@univerjs/core';
import { IActiveDirtyManagerService, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula';
import { FormulaCalculationSessionService } from '@univerjs/sheets-formula';
import type { Unsettled } from '../../workbook/port';
import { isComputedCell } from './cellData';
import type { Engine } from './engine';

/** Of how the engine's parts speak of a calculation under way, many times in a long one. Its results are cells written. */
export function isCalculationTalk(mutation: string): boolean {
  return mutation.startsWith('formula.mutation.set-formula-calculation-');
}

export interface Calculation {
  settle(timeoutMs: number): Promise<readonly Unsettled[]>;
  dispose(): void;
}

export function watchCalculation(engine: Engine): Calculation {
  const commands = engine.accessor.get(ICommandService);
  const dirt = engine.accessor.get(IActiveDirtyManagerService);
  const session = engine.accessor.get(FormulaCalculationSessionService);
  // A new workbook calculates once by itself.
  let isStartDue = true;
  let writes = 0;
  const listening = commands.onCommandExecuted((command, options) => {
    if (command.id === SetFormulaCalculationStartMutation.id) {
      isStartDue = false;
    } else if (dirt.get(command.id) !== undefined && options?.onlyLocal !== true) {
      isStartDue = true;
      writes += 1;
    }
  });

  const isRunning = (): boolean => {
    const { started, resultApplied, stopped, completed, resultEmitted } = session.state;
    return started && !(resultApplied && (stopped || completed || resultEmitted));
  };

  return {
    async settle(timeoutMs) {
      const deadline = Date.now() + timeoutMs;
      while (isStartDue || isRunning()) {
        const left = deadline - Date.now();
        if (left <= 0) return unsettledCells(engine);
        const writesBefore = writes;
        // Resolves as well when no calculation starts: then what was written made no formula dirty.
        const isApplied = await session.waitForLatestApplied(left).then(
          () => true,
          () => false,
        );
        if (!isApplied) return unsettledCells(engine);
        // A result can itself make cells count as changed: see recalculateSpilled.
        if (!isRunning() && writes === writesBefore) isStartDue = false;
      }
      return [];
    },
    dispose: () => listening.dispose(),
  };
}

/** The engine does not tell which cells it is at: where one keeps a result, that may be an older one. */
function unsettledCells(engine: Engine): Unsettled[] {
  const cells: Unsettled[] = [];
  for (const worksheet of engine.workbook.getSheets()) {
    const sheet = worksheet.getName();
    worksheet.getCellMatrix().forValue((row, column, cell) => {
      if (isComputedCell(cell)) cells.push({ sheet, row, column });
    });
  }
  return cells;
}
