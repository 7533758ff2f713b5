import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { checkCount } from '../limits/limits';
import type { UnitSystemName } from '../units/units';
import { drawBy, problemKinds, type Argument } from './problemKinds';

export interface Problem {
  /** Of the function that gives the answer. */
  readonly id: string;
  readonly args: readonly Argument[];
}

/** What a class can tell one another, and more than anybody does. Judgement. */
export const homeworkLimits = {
  number: { atLeast: 1, atMost: 9999 },
  count: { atLeast: 1, atMost: 100 },
} as const;

/**
 * The problems of a homework: the same number and units give the same ones, and more of them begin with those of fewer.
 *
 * Kinds of problems are shuffled (Fisher and Yates), each is asked once before one comes again. They are drawn apart
 * from the figures, so that one number asks the same things in both unit systems; metric leaves out what there is in US
 * units alone, with the figures drawn for it, so that all else stays.
 *
 * @param number of the homework, whole, 1 to 9,999
 * @param count of problems, whole, 1 to 100
 * @param units that its figures are in
 * @returns problems whose function refuses none of their arguments
 * @throws outOfRange, notWhole
 * Source: xoroshiro128+ of Blackman and Vigna, as the package pure-rand has it, seeded by the number (figures by its
 * complement). Another version of it, or a kind put in, makes other homework of the same number.
 * @example makeProblems(7, 20, 'us')
 */
export function makeProblems(number: number, count: number, units: UnitSystemName): Problem[] {
  const seed = checkCount('homework_number', number, 'none', homeworkLimits.number);
  const wanted = checkCount('homework_count', count, 'none', homeworkLimits.count);
  const below = drawnFrom(seed);
  const draw = drawBy(drawnFrom(~seed), units);
  const problems: Problem[] = [];
  let left = [...problemKinds];
  while (problems.length < wanted) {
    if (left.length === 0) left = [...problemKinds];
    const [kind] = left.splice(below(left.length), 1);
    if (kind === undefined) continue;
    const problem = { id: kind.id, args: kind.draw(draw) };
    if (units === 'us' || kind.isUsOnly !== true) problems.push(problem);
  }
  return problems;
}

function drawnFrom(seed: number): (limit: number) => number {
  const generator = xoroshiro128plus(seed);
  return (limit) => uniformInt(generator, 0, limit - 1);
}
