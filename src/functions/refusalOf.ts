import { CalcError } from '../calc/errors';
import { functions } from './index';
import { sayProblem } from './wording';

/** What a function says to a value that one of its arguments cannot be, by the argument alone; null where it can. */
export function refusalOf(id: string, place: number, given: string | number | boolean): string | null {
  try {
    functions.get(id)?.parameters[place]?.read(given);
    return null;
  } catch (error) {
    if (error instanceof CalcError) return sayProblem(error.problem);
    throw error;
  }
}
