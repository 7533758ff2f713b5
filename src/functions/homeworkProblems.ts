/** The problems of a homework in words, with what goes into cells: dates as yyyy-mm-dd, shares as fractions. */
import { makeProblems, type Problem } from '../calc/homework/makeProblems';
import type { Argument } from '../calc/homework/problemKinds';
import { catalogue } from '../texts/catalogue';
import { homeworkProblemTexts } from '../texts/homeworkProblems';
import { fill } from '../texts/fill';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { answering } from './answering';
import type { Scalar } from './define';
import { explainable } from './explainable';
import { sayNumber } from './wording';

export interface HomeworkProblem {
  readonly text: string;
  /** The function that gives the answer, and its arguments. */
  readonly id: string;
  readonly args: readonly (string | number)[];
  /** A number, or a date as yyyy-mm-dd. */
  readonly answer: Scalar;
}

export const homeworkProblems = answering((number: number, count: number): readonly HomeworkProblem[] =>
  makeProblems(number, count).map(inWords),
);

function inWords({ id, args }: Problem): HomeworkProblem {
  const definition = explainable.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const cells = args.map(cellOf);
  const outcome = definition.run(cells);
  if ('error' in outcome) throw new Error(`${id}: ${outcome.message}`);
  const first = Array.isArray(outcome.value) ? outcome.value[0]?.[0] : outcome.value;
  const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
  const said = definition.parameters.map(({ name }, i) => {
    const argument = args[i];
    return [name, argument === undefined ? '' : say(argument)] as const;
  });
  return {
    text: fill(texts[id] ?? id, Object.fromEntries(said)),
    id,
    args: cells,
    answer:
      typeof first !== 'number'
        ? String(first)
        : outcome.pattern === undefined
          ? Number(sayNumber(first))
          : isoOfDay(dayOfSerial(first) ?? NaN),
  };
}

function cellOf({ as, value }: Argument): string | number {
  return as === 'day' ? isoOfDay(value) : value;
}

function say({ as, value }: Argument): string {
  switch (as) {
    case 'day':
      return isoOfDay(value);
    case 'share':
      return fill(catalogue.homework.percent, { percent: sayNumber(value * 100) });
    case 'number':
      return sayNumber(value);
    case 'word':
      return value;
  }
}
