import { CalcError } from '../calc/errors';
import type { FunctionDefinition } from '../functions/define';
import { sayProblem, sayQuantityName } from '../functions/wording';
import { guide } from '../texts/guide';

/** Numbers that an argument may not take: none, fewer, a part of one, and 85 for 85%. */
const numbers = [0, -1, 0.5, 85];
/** No name of anything. */
const word = guide.functions.noName;

/**
 * What a function says to single arguments that it cannot take, found by giving it some.
 *
 * @param args arguments that it can take
 * @returns for each parameter its distinct sentences; none for a range
 */
export function findRefusals(
  { parameters, run }: FunctionDefinition,
  args: readonly unknown[],
): readonly (readonly string[])[] {
  const answerTo = (place: number, given: unknown): string | null => {
    const outcome = run(parameters.map((_, i) => (i === place ? given : args[i])));
    return 'error' in outcome ? outcome.message : null;
  };
  return parameters.map(({ name, read }, place) => {
    if (Array.isArray(args[place])) return [];
    const problem = problemOf(() => read(word));
    // A date is refused like any other, and a text is refused by what looks it up.
    if (problem?.code === 'notADate') return [];
    if (problem !== null && problem.code !== 'notANumber') return [sayProblem(problem)];
    // Whatever is given is handed on: what is said of it is another function's.
    if (problem === null && args[place] === undefined) return [];
    if (problem === null) return [answerTo(place, word) ?? []].flat();
    const said = new Map<string, string>();
    for (const given of numbers) {
      const answer = answerTo(place, given);
      if (answer === null || !answer.includes(sayQuantityName(name))) continue;
      // "It is 0" and "It is -1" say the same of the limit.
      const pattern = answer.replace(` ${given}`, '');
      if (!said.has(pattern)) said.set(pattern, answer);
    }
    return [...said.values()];
  });
}

function problemOf(read: () => unknown): CalcError['problem'] | null {
  try {
    read();
    return null;
  } catch (error) {
    if (error instanceof CalcError) return error.problem;
    throw error;
  }
}
