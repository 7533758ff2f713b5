/**
 * The engine parses every formula that mentions a new name or table once a cell instead of once a text, in case an
 * older formula waited for it. For a thousand plots that is most of the time of filling; where no formula of the
 * workbook mentions the name yet, it is told so.
 */
import {
  IActiveDirtyManagerService,
  IFunctionService,
  SetDefinedNameMutation,
  SetSuperTableMutation,
  SetFormulaCalculationStartMutation,
  type IFormulaDataItem,
  type ISetDefinedNameMutationParam,
  type ISetSuperTableMutationParam,
} from '@univerjs/engine-formula';
import { ICommandService, type ICommandInfo } from '@univerjs/core';
import type { NewSheet } from '../../workbook/port';
import type { Engine } from './engine';

export class FreshNames {
  private readonly fresh = new Set<string>();

  constructor(private readonly engine: Engine) {
    this.intercept<ISetDefinedNameMutationParam>(SetDefinedNameMutation.id, ({ name }) => name);
    this.intercept<ISetSuperTableMutationParam>(SetSuperTableMutation.id, ({ tableName }) => tableName);
    engine.accessor.get(ICommandService).onCommandExecuted(({ id }) => {
      if (id === SetFormulaCalculationStartMutation.id) this.fresh.clear();
    });
  }

  /** To be called before the sheets are brought in; holds until the next calculation. */
  expect(newSheets: readonly NewSheet[]): void {
    const names = newSheets.flatMap((sheet) => [
      ...Object.keys(sheet.names),
      ...sheet.tables.map((table) => table.name),
    ]);
    if (names.length === 0) return;
    for (const name of this.unmentioned(names)) this.fresh.add(name);
    // What the engine parsed before an undo or a deletion points at what is gone.
    this.engine.accessor.get(IFunctionService).deleteFormulaAstCacheKey(...names);
  }

  private unmentioned(names: readonly string[]): string[] {
    const formulas = Object.values(this.engine.formulas.getFormulaData()[this.engine.unitId] ?? {})
      .flatMap((rows) => Object.values(rows ?? {}))
      .flatMap((cells) => Object.values<IFormulaDataItem | null>(cells ?? {}))
      .map((cell) => cell?.f.toLowerCase() ?? '');
    return names.filter((name) => !formulas.some((formula) => formula.includes(name.toLowerCase())));
  }

  private intercept<P>(mutation: string, nameIn: (params: P) => string): void {
    const tracked = this.engine.accessor.get(IActiveDirtyManagerService);
    const usual = tracked.get(mutation);
    if (!usual) throw new Error(`the engine does not track ${mutation}`);
    tracked.register(mutation, {
      commandId: mutation,
      getDirtyData: (command: ICommandInfo) => {
        const dirt = usual.getDirtyData(command);
        if (!this.fresh.has(nameIn(command.params as P))) return dirt;
        return { ...dirt, dirtySuperTableMap: {}, dirtyDefinedNameMap: {} };
      },
    });
  }
}
