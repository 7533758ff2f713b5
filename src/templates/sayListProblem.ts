/** What is wrong with a line of a list of plots, as the end of a sentence that names the line. */
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { DelimitedProblem } from '../workbook/readDelimited';
import type { InputProblem } from '../workbook/readInputs';
import { plotsTemplate } from './plots';
import { sayLimits } from './sayLimits';

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

function cutShort(values: object): Record<string, string | number> {
  const short: Record<string, string | number> = {};
  for (const [key, value] of Object.entries(values) as [string, unknown][]) {
    if (typeof value === 'number') short[key] = value;
    if (typeof value !== 'string') continue;
    short[key] = value.length > mostQuoted ? `${value.slice(0, mostQuoted)}…` : value;
  }
  return short;
}

export function lineOfProblem(problem: ListProblem): number {
  return 'line' in problem ? problem.line : 1;
}

export function sayListProblem(problem: ListProblem, nearestNames: NearestNames): string {
  return fill(words.problems[problem.code], {
    ...cutShort(problem),
    ...(problem.code === 'outOfRange' && { limits: sayLimits(problem.limits, problem.format) }),
    ...(problem.code === 'percentForShare' && {
      percent: shown(problem.value * 100),
      fraction: shown(problem.value / 100),
    }),
    advice: advise(problem, nearestNames),
    spoiled: words.spoiled,
  });
}

/** Without the dust of binary fractions. */
function shown(value: number): string {
  return String(Number(value.toPrecision(12)));
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
