import { nearestNames } from '../calc/crops/nearestNames';
import { refuse } from '../calc/errors';
import type { FunctionDefinition } from './define';
import { explainable } from './explainable';

/** The function of a name with the namespace in front or without, in any letters. @throws CalcError unknownFunction */
export function findFunction(name: string): FunctionDefinition {
  const id = name.toUpperCase();
  const found = explainable.get(id) ?? explainable.get(id.slice(id.indexOf('.') + 1));
  const nearest = (): readonly string[] => nearestNames(name, [...explainable.keys()]);
  return found ?? refuse({ code: 'unknownFunction', given: name, nearest: nearest() });
}
