/**
 * Cares of the engine's memory of parsed formulas. It keeps what it parsed before a table changed its range or a name
 * its cell: all of that is made to be forgotten. And while a table or a name has changed it parses every formula that
 * mentions it once a cell instead of once a text, which for a thousand plots is most of the time. For a table that is
 * needless once all is forgotten, so it is told that no table changed; a changed name makes formulas dirty as well, so
 * of a name it is told that only where no formula mentions it yet.
 */
import { ICommandService, type ICommandInfo } from '@univerjs/core';
import {
  IActiveDirtyManagerService,
  IFunctionService,
  SetDefinedNameMutation,
  SetFormulaCalculationStartMutation,
  SetSuperTableMutation,
  type IFormulaDataItem,
  type ISetDefinedNameMutationParam,
  type ISetSuperTableMutationParam,
} from '@univerjs/engine-formula';
import type { NewSheet } from '../../workbook/port';
import type { Engine } from './engine';

export class FreshNames {
  private readonly fresh = new Set<string>();

  constructor(private readonly engine: Engine) {
    this.watch<ISetDefinedNameMutationParam>(SetDefinedNameMutation.id, ({ name }) => name);
    this.watch<ISetSuperTableMutationParam>(SetSuperTableMutation.id, ({ tableName }) => tableName);
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
    for (const name of this.unmentioned(names)) this.fresh.add(name);
  }

  private unmentioned(names: readonly string[]): readonly string[] {
    if (names.length === 0) return names;
    const formulas = Object.values(this.engine.formulas.getFormulaData()[this.engine.unitId] ?? {})
      .flatMap((rows) => Object.values(rows ?? {}))
      .flatMap((cells) => Object.values<IFormulaDataItem | null>(cells ?? {}))
      .map((cell) => cell?.f.toLowerCase() ?? '');
    return names.filter((name) => !formulas.some((formula) => formula.includes(name.toLowerCase())));
  }

  /** All of it: of a formula longer than 64 characters the engine keeps no text to find a name in. */
  private forgetParsed(): void {
    this.engine.accessor.get(IFunctionService).deleteFormulaAstCacheKey('');
  }

  private watch<P>(mutation: string, nameIn: (params: P) => string): void {
    const { accessor } = this.engine;
    accessor.get(ICommandService).onCommandExecuted(({ id }) => {
      if (id === mutation) this.forgetParsed();
    });
    const tracked = accessor.get(IActiveDirtyManagerService);
    const usual = tracked.get(mutation);
    if (!usual) throw new Error(`the engine does not track ${mutation}`);
    tracked.register(mutation, {
      commandId: mutation,
      getDirtyData: (command: ICommandInfo) => {
        const dirt = { ...usual.getDirtyData(command), dirtySuperTableMap: {} };
        // Only its coming is no news: a table made longer before the first calculation is.
        if (!this.fresh.delete(nameIn(command.params as P))) return dirt;
        return { ...dirt, dirtyDefinedNameMap: {} };
      },
    });
  }
}
