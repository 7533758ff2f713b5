import { ICommandService, type IAccessor } from '@univerjs/core';
import { FormulaDataModel, SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import { SetRangeValuesMutation } from '@univerjs/sheets';

interface Spilled {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}
type Place = readonly [subUnitId: string, row: string, column: string];

/**
 * When a list spills over fewer cells than before, the engine calculates what reads the cells that it lost with their
 * old values. Those cells are made to count as changed.
 */
export function recalculateShrunk(accessor: IAccessor, unitId: string): void {
  const commands = accessor.get(ICommandService);
  const formulas = accessor.get(FormulaDataModel);
  let before = spilledRanges(formulas, unitId);
  commands.onCommandExecuted(({ id }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const now = spilledRanges(formulas, unitId);
    const lost = [...before].map(([key, range]) => [key, cellsLost(range, now.get(key))] as const);
    before = now;
    for (const [key, cellValue] of lost) {
      if (Object.keys(cellValue).length === 0) continue;
      const [subUnitId] = JSON.parse(key) as Place;
      commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId, subUnitId, cellValue });
    }
  });
}

function spilledRanges(formulas: FormulaDataModel, unitId: string): ReadonlyMap<string, Spilled> {
  const ranges = new Map<string, Spilled>();
  for (const [subUnitId, rows] of Object.entries(formulas.getArrayFormulaRange()[unitId] ?? {})) {
    for (const [row, cells] of Object.entries(rows ?? {})) {
      for (const [column, range] of Object.entries(cells ?? {})) {
        const place: Place = [subUnitId, row, column];
        ranges.set(JSON.stringify(place), { ...(range as Spilled) });
      }
    }
  }
  return ranges;
}

/** As cells of nothing: merged into what stands there they change nothing of it. */
function cellsLost(before: Spilled, now: Spilled | undefined): Record<number, Record<number, object>> {
  const endRow = now?.endRow ?? before.startRow;
  const endColumn = now?.endColumn ?? before.startColumn;
  const lost: Record<number, Record<number, object>> = {};
  for (let row = before.startRow; row <= before.endRow; row++) {
    for (let column = before.startColumn; column <= before.endColumn; column++) {
      if (row > endRow || column > endColumn) (lost[row] ??= {})[column] = {};
    }
  }
  return lost;
}
