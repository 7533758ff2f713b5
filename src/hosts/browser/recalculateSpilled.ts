import { CommandType, ICommandService, type IAccessor, type ICommandInfo } from '@univerjs/core';
import {
  FormulaDataModel,
  IActiveDirtyManagerService,
  SetFormulaCalculationResultMutation,
} from '@univerjs/engine-formula';

interface Range {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

/** A list that spills, and what it holds. */
interface Spilled {
  readonly sheetId: string;
  readonly range: Range;
  readonly values: string;
}

const mutationId = 'cucurbit.mutation.spilled';

/**
 * What reads the cells of a list keeps old values in the engine where the list spills over fewer cells than before, and
 * where the list itself depends on another list. So the cells of every list that came out otherwise than before count
 * as changed: what reads them is calculated once more, until no list changes.
 */
export function recalculateSpilled(accessor: IAccessor, unitId: string): void {
  const commands = accessor.get(ICommandService);
  const formulas = accessor.get(FormulaDataModel);
  commands.registerCommand({ id: mutationId, type: CommandType.MUTATION, handler: () => true });
  accessor.get(IActiveDirtyManagerService).register(mutationId, {
    commandId: mutationId,
    getDirtyData: ({ params }: ICommandInfo) => {
      const ranges = params as readonly Pick<Spilled, 'sheetId' | 'range'>[];
      return { dirtyRanges: ranges.map((each) => ({ unitId, ...each })) };
    },
  });
  let before = spilledLists(formulas, unitId);
  commands.onCommandExecuted(({ id }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const now = spilledLists(formulas, unitId);
    const changed = [...new Set([...before.keys(), ...now.keys()])].flatMap((key) => {
      const [old, fresh] = [before.get(key), now.get(key)];
      if (old?.values === fresh?.values) return [];
      return [old, fresh].flatMap((list) => (list === undefined ? [] : withoutFirst(list)));
    });
    before = now;
    if (changed.length > 0) commands.syncExecuteCommand(mutationId, changed);
  });
}

function spilledLists(formulas: FormulaDataModel, unitId: string): ReadonlyMap<string, Spilled> {
  const lists = new Map<string, Spilled>();
  const cellsOf = formulas.getArrayFormulaCellData()[unitId];
  for (const [sheetId, rows] of Object.entries(formulas.getArrayFormulaRange()[unitId] ?? {})) {
    for (const cells of Object.values(rows ?? {})) {
      for (const range of Object.values<Range>(cells ?? {})) {
        const values: unknown[] = [];
        for (let row = range.startRow; row <= range.endRow; row++) {
          for (let column = range.startColumn; column <= range.endColumn; column++) {
            values.push(cellsOf?.[sheetId]?.[row]?.[column]?.v ?? null);
          }
        }
        const { startRow, startColumn, endRow, endColumn } = range;
        const key = JSON.stringify([sheetId, startRow, startColumn]);
        const shape = [endRow, endColumn];
        lists.set(key, { sheetId, range: { ...range }, values: JSON.stringify([shape, values]) });
      }
    }
  }
  return lists;
}

/** The formula's own cell is calculated anyhow. */
function withoutFirst({ sheetId, range }: Spilled): { readonly sheetId: string; readonly range: Range }[] {
  const { startRow, startColumn, endRow, endColumn } = range;
  return [
    ...(endColumn > startColumn ? [{ ...range, startColumn: startColumn + 1, endRow: startRow }] : []),
    ...(endRow > startRow ? [{ ...range, startRow: startRow + 1 }] : []),
  ].map((part) => ({ sheetId, range: part }));
}
