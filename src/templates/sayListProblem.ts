/** What is wrong with a line of a list, as the end of a sentence that names the line. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { DelimitedProblem } from '../workbook/readDelimited';
import type { InputProblem } from '../workbook/readInputs';
import type { TableTemplate } from '../workbook/template';
import { plotsTable } from './plots';
import { sayChoice } from './sayChoice';
import { sayLimits } from './sayLimits';
import { seedPricesTable } from './seedPrices';

const words = catalogue.commands.plan;

export type ListProblem = DelimitedProblem | InputProblem;

/** The names that somebody may have meant, nearest first; an entry hands in how they are found. */
export type NearestNames = (given: string, names: readonly string[]) => readonly string[];

/** More choices than these are too many to list. */
const mostListed = 8;

/** What is said of a list: its table, and the sentences that only fit it. */
export interface ListKind {
  readonly table: TableTemplate;
  readonly spoiled: string;
  /** What a row without a name is called. */
  readonly noName: string;
  /** Where all names of rows are to be found. */
  readonly see: string;
  readonly problems: Readonly<Partial<Record<ListProblem['code'], string>>>;
}

export const listOfPlots: ListKind = {
  table: plotsTable,
  spoiled: words.spoiled,
  noName: words.noName,
  see: words.seeCrops,
  problems: {},
};
export const listOfSeedPrices: ListKind = {
  table: seedPricesTable,
  see: words.seeCrops,
  ...words.seedPrices,
};

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

/** Each with its line, in their order. What is the same for several is said once. */
export function sayListProblems(
  problems: readonly ListProblem[],
  nearestNames: NearestNames,
  kind: ListKind = listOfPlots,
): readonly { readonly line: number; readonly problem: string }[] {
  const headers = inputHeaders(kind);
  const firstFar = problems.find(
    (problem) => problem.code === 'unknownHeader' && nearestNames(problem.header, headers).length === 0,
  );
  return problems.map((problem) => {
    const sentence = fill(kind.problems[problem.code] ?? words.problems[problem.code], {
      ...cutShort(problem),
      ...(problem.code === 'outOfRange' && { limits: sayLimits(problem.limits, problem.format) }),
      ...(problem.code === 'percentForShare' && { fraction: shown(problem.value / 100) }),
      advice: problem === firstFar ? sayNames(words.columns, headers) : advise(problem, nearestNames, kind),
      spoiled: kind.spoiled,
    });
    return { line: lineOfProblem(problem), problem: sentence.trimEnd() };
  });
}

function inputHeaders({ table }: ListKind): readonly string[] {
  return table.columns.filter(({ kind }) => kind === 'input').map(({ header }) => header);
}

/** Without the dust of binary fractions. */
function shown(value: number): string {
  return String(Number(value.toPrecision(12)));
}

function advise(problem: ListProblem, nearestNames: NearestNames, kind: ListKind): string {
  if (problem.code === 'unknownHeader') {
    const near = nearestNames(problem.header, inputHeaders(kind));
    return near.length > 0 ? sayNames(words.near, near) : '';
  }
  if (problem.code !== 'notAChoice') return '';
  if (problem.choices.length <= mostListed) {
    const column = kind.table.columns.find(({ header }) => header === problem.header) ?? {};
    return sayNames(
      words.choose,
      problem.choices.map((choice) => sayChoice(column, choice)),
    );
  }
  const near = nearestNames(problem.given, problem.choices);
  return near.length > 0 ? sayNames(words.near, near) : kind.see;
}

function sayNames(sentence: string, names: readonly string[]): string {
  return fill(sentence, { names: names.join(', ') });
}
