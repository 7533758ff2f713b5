import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { checkCount } from '../limits/limits';
import type { UnitSystemName } from '../units/units';
import { drawBy, problemFamilies, type Argument } from './problemKinds';

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
 * Families are asked in rounds, each round in an order of its own, so that none comes twice before each came once; a
 * family's kinds come in turn, and no problem comes twice. Order and turns are drawn apart from the figures, so that one
 * number asks the same things in both unit systems, but for a kind that metric leaves out.
 *
 * @param number of the homework, whole, 1 to 9,999
 * @param count of problems, whole, 1 to 100
 * @param units that its figures are in
 * @returns problems whose function refuses none of their arguments
 * @throws outOfRange, notWhole
 * Source: xoroshiro128+ of Blackman and Vigna, as the package pure-rand has it, seeded by the number (figures by its
 * complement); shuffled as by Fisher and Yates. Another version of it, or a kind put in, makes other homework of the same
 * number.
 * @example makeProblems(7, 20, 'us')
 */
export function makeProblems(number: number, count: number, units: UnitSystemName): Problem[] {
  const seed = checkCount('homework_number', number, 'none', homeworkLimits.number);
  const wanted = checkCount('homework_count', count, 'none', homeworkLimits.count);
  const below = drawnFrom(seed);
  const draw = drawBy(drawnFrom(~seed), units);
  const turns = problemFamilies.map((kinds) =>
    shuffled(kinds, below).filter(({ isUsOnly }) => units === 'us' || isUsOnly !== true),
  );
  const problems = new Map<string, Problem>();
  for (let round = 0; problems.size < wanted; round++) {
    for (const turn of shuffled(turns, below).slice(0, wanted - problems.size)) {
      const kind = turn[round % turn.length];
      if (kind === undefined) continue;
      const before = problems.size;
      while (problems.size === before) {
        const problem = { id: kind.id, args: kind.draw(draw) };
        problems.set(JSON.stringify(problem), problem);
      }
    }
  }
  return [...problems.values()];
}

function shuffled<T>(all: readonly T[], below: (limit: number) => number): T[] {
  const left = [...all];
  return all.flatMap(() => left.splice(below(left.length), 1));
}

function drawnFrom(seed: number): (limit: number) => number {
  const generator = xoroshiro128plus(seed);
  return (limit) => uniformInt(generator, 0, limit - 1);
}
