import { CalcError, type Problem } from '../../src/calc/errors';

/** The problem that a calculation refuses with. */
export function refusalOf(calculate: () => unknown): Problem {
  try {
    calculate();
  } catch (error) {
    if (error instanceof CalcError) return error.problem;
    throw error;
  }
  throw new Error('nothing was refused');
}
