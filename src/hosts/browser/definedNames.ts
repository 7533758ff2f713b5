/** The named cells of the workbook, as the engine keeps them. */
import { IDefinedNamesService, type ISetDefinedNameMutationParam } from '@univerjs/engine-formula';
import type { Engine } from './engine';
import { isSameName } from './tables';

export function allNames(engine: Engine): ISetDefinedNameMutationParam[] {
  const map = engine.accessor.get(IDefinedNamesService).getDefinedNameMap(engine.unitId) ?? {};
  return Object.values(map).map((each) => ({ ...each, unitId: engine.unitId }));
}

export function findName(engine: Engine, name: string): ISetDefinedNameMutationParam | null {
  return allNames(engine).find((each) => isSameName(each.name, name)) ?? null;
}

/** Its cell went with a sheet or row that somebody deleted; only what mentions it still holds on to it. */
export function isDead({ formulaOrRefString }: ISetDefinedNameMutationParam): boolean {
  return formulaOrRefString === '#REF!';
}
