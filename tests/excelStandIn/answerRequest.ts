/** Carries out one request of the library: its actions one after another, up to the first that Excel refuses. */
import { ExcelError, refuse, UnknownToStandIn } from './excelError';
import { isModel, type Model } from './model';
import { isMemberOf } from './requirementSets';

interface Path {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] };
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: {
    readonly Arguments?: readonly unknown[];
    readonly ReferencedObjectPathIds?: readonly number[];
  };
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface RequestBody {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, Path>>;
}

interface Answer {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly ActionIndex: number };
}

const pathTypes = { global: 1, method: 3, property: 4, indexer: 5 };
const actionTypes = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 };

export interface Answering {
  readonly root: Model;
  /** ExcelApi 1.… */
  readonly apiMinor: number;
  /** Called for what the stand-in was not taught, before the request fails. */
  onUnknown(what: string): void;
  /** Only so many actions are carried out, then the request fails; for tests. */
  readonly mostActions: number;
}

export function answerRequest({ Actions, ObjectPaths }: RequestBody, answering: Answering): Answer {
  const made = new Map<number, Model | null>();
  const Results: { ActionId: number; Value: unknown }[] = [];
  for (const [index, action] of Actions.entries()) {
    try {
      if (index >= answering.mostActions) refuse('GeneralException', 'a fault made by the test');
      Results.push({ ActionId: action.Id, Value: carryOut(action) });
    } catch (error) {
      if (!(error instanceof ExcelError)) answering.onUnknown(String(error));
      const code = error instanceof ExcelError ? error.code : 'GeneralException';
      return { Results, Error: { Code: code, Message: String(error), ActionIndex: index } };
    }
  }
  return { Results };

  function carryOut(action: Action): unknown {
    if (action.ActionType === actionTypes.trace) return null;
    const model = resolve(action.ObjectPathId);
    if (action.ActionType === actionTypes.instantiate) return model === null ? null : {};
    if (action.ActionType === actionTypes.query) {
      return model === null ? null : load(model, action.QueryInfo?.Select ?? []);
    }
    if (model === null) return refuse('InvalidObjectPath', `${action.Name} of a null object`);
    const args = (action.ArgumentInfo?.Arguments ?? []).map((each, i) =>
      argument(each, action.ArgumentInfo?.ReferencedObjectPathIds?.[i]),
    );
    if (action.ActionType === actionTypes.set) {
      demandMember(model, model.put?.[action.Name], action.Name)(args[0]);
      return null;
    }
    const value = demandMember(model, model.call?.[action.Name], action.Name)(...args);
    return isModel(value) ? {} : (value ?? null);
  }

  function resolve(id: number): Model | null {
    const known = made.get(id);
    if (known !== undefined) return known;
    const path = ObjectPaths[id];
    if (path === undefined) throw new UnknownToStandIn(`object path ${id}`);
    const model = create(path);
    made.set(id, model);
    return model;
  }

  function create(path: Path): Model | null {
    if (path.ObjectPathType === pathTypes.global) return answering.root;
    const parent = resolve(path.ParentObjectPathId ?? 0);
    if (parent === null) return refuse('InvalidObjectPath', `${path.Name} of a null object`);
    const info = path.ArgumentInfo as Action['ArgumentInfo'];
    const args = (info?.Arguments ?? []).map((each, i) => argument(each, info?.ReferencedObjectPathIds?.[i]));
    if (path.ObjectPathType === pathTypes.property) {
      return demandMember(parent, parent.child?.[path.Name], path.Name)();
    }
    if (path.ObjectPathType === pathTypes.indexer)
      return demandMember(parent, parent.item, 'GetItem')(args[0]);
    if (path.ObjectPathType === pathTypes.method) {
      const result = demandMember(parent, parent.call?.[path.Name], path.Name)(...args);
      return result === null || isModel(result) ? result : refuse('GeneralException', path.Name);
    }
    throw new UnknownToStandIn(`object path of type ${path.ObjectPathType}`);
  }

  /** Objects come as the ids of their paths, at the top or inside a plain object. */
  function argument(given: unknown, pathId: number | undefined): unknown {
    if (typeof pathId === 'number' && pathId > 0) return resolve(pathId);
    if (typeof given !== 'object' || given === null || Array.isArray(given)) return given;
    if ('_ObjectPathId' in given) return resolve(Number(given._ObjectPathId));
    return Object.fromEntries(Object.entries(given).map(([key, value]) => [key, argument(value, undefined)]));
  }

  function load(model: Model, select: readonly string[]): unknown {
    // A load of everything is what the host must not do.
    if (select.length === 0) throw new UnknownToStandIn(`a load of all of ${model.className}`);
    if (model.items !== undefined) return { _Items: model.items().map((item) => load(item, select)) };
    const loaded: Record<string, unknown> = {};
    if (model.get?.['Id'] !== undefined) loaded['_Id'] = model.get['Id']();
    for (const path of select) {
      const [name = '', ...rest] = path
        .split('/')
        .map((part) => part.charAt(0).toUpperCase() + part.slice(1));
      if (rest.length === 0) loaded[name] = demandMember(model, model.get?.[name], name)();
      else {
        const child = demandMember(model, model.child?.[name], name)();
        const inner = load(child, [rest.join('/')]) as object;
        loaded[name] = { ...(loaded[name] as object | undefined), ...inner };
      }
    }
    return loaded;
  }

  function demandMember<T>(model: Model, member: T | undefined, name: string): T {
    if (!isMemberOf(model.className, name, answering.apiMinor)) {
      return refuse('ApiNotFound', `${model.className}.${name} is not in ExcelApi 1.${answering.apiMinor}`);
    }
    if (member === undefined) throw new UnknownToStandIn(`${model.className}.${name}`);
    return member;
  }
}
