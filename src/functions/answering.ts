import { CalcError } from '../calc/errors';
import { sayProblem } from './wording';

/** What a calculation gives, or the advice it refuses with. */
export type Answer<Value> = { readonly value: Value } | { readonly wrong: string };

/** The calculation, with its refusals as advice. */
export const answering =
  <Args extends readonly unknown[], Value>(compute: (...args: Args) => Value) =>
  (...args: Args): Answer<Value> => {
    try {
      return { value: compute(...args) };
    } catch (error) {
      if (error instanceof CalcError) return { wrong: sayProblem(error.problem) };
      throw error;
    }
  };
