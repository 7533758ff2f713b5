/** What is wrong with a line of a list of plots, as the end of a sentence that names the line. */
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { DelimitedProblem } from '../workbook/readDelimited';
import type { InputProblem } from '../workbook/readInputs';
import { plotsTemplate } from './plots';

const words = english.commands.plan;

export type ListProblem = DelimitedProblem | InputProblem;

/** The names that somebody may have meant, nearest first; an entry hands in how they are found. */
export type NearestNames = (given: string, names: readonly string[]) => readonly string[];

/** More choices than these are too many to list. */
const mostListed = 8;

const inputHeaders = plotsTemplate.tables.flatMap(({ columns }) =>
  columns.filter(({ kind }) => kind === 'input').map(({ header }) => header),
);

/** What is quoted back; a cell can hold a book. */
const mostQuoted = 100;

function cutShort<Values extends object>(values: Values): Record<string, string | number> {
  return Object.fromEntries(
    Object.entries(values).map(([key, value]: [string, string | number]) => [
      key,
      typeof value === 'string' && value.length > mostQuoted ? `${value.slice(0, mostQuoted)}…` : value,
    ]),
  );
}

export function lineOfProblem(problem: ListProblem): number {
  return 'line' in problem ? problem.line : 1;
}

export function sayListProblem(problem: ListProblem, nearestNames: NearestNames): string {
  const values = cutShort('choices' in problem ? { ...problem, choices: '' } : problem);
  const advice = advise(problem, nearestNames);
  return fill(words.problems[problem.code], { ...values, advice, spoiled: words.spoiled });
}

function advise(problem: ListProblem, nearestNames: NearestNames): string {
  if (problem.code === 'unknownHeader') {
    const near = nearestNames(problem.header, inputHeaders);
    return near.length > 0 ? sayNames(words.near, near) : sayNames(words.columns, inputHeaders);
  }
  if (problem.code !== 'notAChoice') return '';
  if (problem.choices.length <= mostListed) return sayNames(words.choose, problem.choices);
  const near = nearestNames(problem.given, problem.choices);
  return near.length > 0 ? sayNames(words.near, near) : words.seeCrops;
}

function sayNames(sentence: string, names: readonly string[]): string {
  return fill(sentence, { names: names.join(', ') });
}
