/** The options of `plan`, read and checked before anything is done. */
import { parseArgs } from 'node:util';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { dayOfIso, serialOfDay } from '../workbook/serialDate';

const words = english.commands.plan;

export interface PlanOptions {
  readonly plots: string;
  readonly out: string;
  readonly replace: boolean;
  /** Values of the Season form, by cell name. */
  readonly season: Readonly<Record<string, string | number>>;
}

/** What is wrong with the command line, as a sentence. */
export class UsageError extends Error {}

function refuse(sentence: string, values: Readonly<Record<string, string>> = {}): never {
  throw new UsageError(fill(sentence, { usage: words.usage, ...values }));
}

/** @throws UsageError */
export function readPlanOptions(args: readonly string[]): PlanOptions {
  const { values, positionals } = parse(args);
  const [plots] = positionals;
  if (plots === undefined || positionals.length > 1) refuse(`${words.oneFile}\n\n{usage}`);
  const out = values.out ?? refuse(words.missingOption, { option: '--out', example: '--out plan.xlsx' });
  if (!/\.xlsx$/i.test(out)) refuse(words.outExtension, { given: out });
  const lastFrost = dateOption('--last-frost', values['last-frost'], '2026-05-02');
  const firstFrost = dateOption('--first-frost', values['first-frost'], '2026-10-10');
  if (firstFrost <= lastFrost) {
    refuse(words.frostsReversed, { last: values['last-frost'] ?? '', first: values['first-frost'] ?? '' });
  }
  const units = values.units ?? 'us';
  if (units !== 'us' && units !== 'metric') refuse(words.badUnits, { given: units });
  return {
    plots,
    out,
    replace: values.replace ?? false,
    season: {
      ...(values.place === undefined ? {} : { PLACE: values.place }),
      SEASON_YEAR: new Date(lastFrost * 86400000).getUTCFullYear(),
      LAST_FROST: serialOfDay(lastFrost),
      FIRST_FROST: serialOfDay(firstFrost),
      FROST_RISK: shareOption('--frost-risk', values['frost-risk'] ?? '0.5', '0.5'),
      ASSURANCE: shareOption('--assurance', values.assurance ?? '0.9', '0.9'),
      UNITS: units,
    },
  };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        'last-frost': { type: 'string' },
        'first-frost': { type: 'string' },
        'frost-risk': { type: 'string' },
        units: { type: 'string' },
        assurance: { type: 'string' },
        place: { type: 'string' },
        replace: { type: 'boolean' },
      },
    });
  } catch (error) {
    return refuse(words.badOption, { message: (error as Error).message });
  }
}

function dateOption(option: string, given: string | undefined, example: string): number {
  if (given === undefined) refuse(words.missingOption, { option, example: `${option} ${example}` });
  return dayOfIso(given) ?? refuse(words.badDate, { option, given });
}

function shareOption(option: string, given: string, example: string): number {
  const share = Number(given);
  if (given.trim() === '' || !(share > 0 && share < 1)) refuse(words.badShare, { option, given, example });
  return share;
}
