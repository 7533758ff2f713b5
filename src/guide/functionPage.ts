/** All that the page of a function says, put together from what the code says of it. */
import { explain, type WorkingLine } from '../functions/explain';
import type { FunctionDefinition } from '../functions/define';
import { catalogue } from '../texts/catalogue';
import type { ListedFunction } from '../workbook/functionHelp';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { findRefusals } from './findRefusals';
import type { Calculation, CommentsOfFunction } from './readCalculations';

export interface FunctionPage {
  readonly help: ListedFunction;
  readonly gives: string;
  /** What the example gives, as it stands in a cell. */
  readonly result: string;
  readonly working: readonly WorkingLine[];
  readonly calculations: readonly Calculation[];
  /** For each parameter, what is said to some of what it cannot take. */
  readonly refusedArguments: readonly (readonly string[])[];
  /** Sentences of `texts.errors`, with their placeholders. */
  readonly refuses: readonly string[];
  readonly cautions: readonly string[];
}

/** What the engine makes of the example: its value, and the arguments that the function itself was handed. */
export interface RunExample {
  readonly value: unknown;
  readonly args: readonly unknown[];
}

/** @throws Error when the example gives an error */
export function functionPage(
  help: ListedFunction,
  definition: FunctionDefinition,
  comments: CommentsOfFunction,
  { value, args }: RunExample,
): FunctionPage {
  const working = explain(definition, args);
  return {
    help,
    gives: comments.gives,
    result: sayValue(value, help, definition),
    working,
    calculations: comments.calculations,
    refusedArguments: findRefusals(definition, args),
    refuses: refusalsOf(comments.calculations),
    // Some are remarks of the working already.
    cautions: cautionsOf(help.id).filter((caution) => working.every(({ title }) => title !== caution)),
  };
}

function sayValue(value: unknown, { id, example }: ListedFunction, { result }: FunctionDefinition): string {
  if (typeof value === 'string' || typeof value === 'boolean') return String(value);
  if (typeof value !== 'number') throw new Error(`the example of ${id} gives ${JSON.stringify(value)}`);
  const isItsOwn = new RegExp(`^=[A-Z]+\\.${id.replace('.', '\\.')}\\(`).test(example);
  const day = result === 'day' && isItsOwn ? dayOfSerial(value) : null;
  return day === null ? String(Number(value.toPrecision(12))) : isoOfDay(day);
}

/** Said to single arguments, with the limits that hold for each. */
const saidOfArguments: ReadonlySet<string> = new Set([
  'outOfRange',
  'notWhole',
  'percentForShare',
  'notADate',
]);

function refusalsOf(calculations: readonly Calculation[]): string[] {
  const codes = new Set(calculations.flatMap(({ refuses }) => refuses));
  const sentences: Readonly<Record<string, string>> = catalogue.errors;
  return [...codes].flatMap((code) => (saidOfArguments.has(code) ? [] : (sentences[code] ?? [])));
}

/** By the id, or by what it begins with. */
const cautions: Readonly<Record<string, readonly (keyof typeof catalogue.cautions)[]>> = {
  'BEETLE.': ['pesticides'],
  'CROP.': ['bitterFruit'],
  'DATE.AFTERSPRAY': ['pesticides'],
  'FLOWER.CROSSES': ['bitterFruit'],
  'FLOWER.HIVES': ['pesticides'],
  'PICKLE.': ['canning'],
  'ROTATION.': ['history'],
  'SEED.': ['treatedSeed'],
  'TRAY.': ['treatedSeed'],
};

function cautionsOf(id: string): string[] {
  return Object.entries(cautions).flatMap(([start, names]) =>
    id.startsWith(start) ? names.map((name) => catalogue.cautions[name]) : [],
  );
}
