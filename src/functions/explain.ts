/** The working of a call in lines that a person reads: the numbers put in, the rounding, every default, the source. */
import type { Assumption, Entry, Step } from '../calc/working';
import { catalogue } from '../texts/catalogue';
import { remarks, steps } from '../texts/workings';
import { fill } from '../texts/fill';
import { sayGround } from './citation';
import type { CellFault, CellOutcome, FunctionDefinition } from './define';
import { notVariedOf, sayEffect, type Effect, type NotVaried } from './sayEffects';
import { holdsDates, sayArgument, sayList, sayQuantity, sayValue } from './sayValues';
import { varyInputs } from './varyInputs';
import { sayQuantityName, sayUnit } from './wording';

const texts = catalogue;

/** One line. What a kind of line does not have is "", so that lines stand in a table. */
export interface WorkingLine {
  readonly kind: 'step' | 'assumption' | 'remark' | 'source';
  /** The name of a step or an assumed quantity, the sentence of a remark, the citation of a source. */
  readonly title: string;
  /** In words; for an assumption, the ground it stands on. */
  readonly formula: string;
  readonly numbersPutIn: string;
  readonly result: string;
  readonly unit: string;
  readonly rounding: string;
}

const blank = { formula: '', numbersPutIn: '', result: '', unit: '', rounding: '' };

/** A call as a person reads it. */
export interface CallWorking {
  readonly lines: readonly WorkingLine[];
  /** The answer, or the refusal. */
  readonly result: string;
  /** Of a row of results the first, which is what a problem asks for; null for any other answer. */
  readonly firstOfRow: string | null;
  /** Of the answer; "" for what has none. */
  readonly unit: string;
  readonly isRefused: boolean;
  /** Whether the numbers that it gives are dates. */
  readonly isDate: boolean;
  readonly effects: readonly Effect[];
  readonly notVaried: readonly NotVaried[];
  /** Whether the answer is a list of more rows than one, whose effects are told by one of them. */
  readonly isList: boolean;
}

/** Arguments that are day numbers inside a calculation. Results of steps in the unit "date" join them. */
const dateArguments = [
  'last_frost',
  'first_frost',
  'set_out',
  'start',
  'first_pick',
  'last_pick',
  'first',
  'last',
  'today',
  'last_planting',
  'spray_date',
  'manure_date',
  'date',
  'sowing',
  'countingStart',
  'earlierFrost',
  'laterFrost',
];

/** The lines of one call. A refusal is the last line, after the steps that went before it. */
export function explain(definition: FunctionDefinition, args: readonly unknown[]): readonly WorkingLine[] {
  const { outcome, entries } = definition.explain(args);
  const lines = sayWorking(entries);
  return 'error' in outcome ? [...lines, { ...blank, kind: 'remark', title: outcome.message }] : lines;
}

/** The lines, what comes out, and what would change it most. */
export function explainCall(definition: FunctionDefinition, args: readonly unknown[]): CallWorking {
  const { outcome, entries } = definition.explain(args);
  const isDate = definition.result === 'day';
  const unit = entries.flatMap((entry) => ('step' in entry ? entry.unit : [])).at(-1) ?? 'none';
  const isList = !('error' in outcome) && Array.isArray(outcome.value) && outcome.value.length > 1;
  return {
    lines: sayWorking(entries),
    result: sayOutcome(outcome, definition),
    firstOfRow: sayFirstOfRow(outcome, definition),
    unit: !('error' in outcome) && typeof outcome.value === 'number' ? sayUnit(unit, outcome.value) : '',
    isRefused: 'error' in outcome,
    isDate,
    effects:
      'error' in outcome
        ? []
        : varyInputs(definition, args).map((varied) => sayEffect(varied, outcome.value, definition)),
    notVaried: notVariedOf(definition, args),
    isList,
  };
}

/** What was put in, in the order of the parameters; "" for what is left out. */
export function sayInputs({ parameters }: FunctionDefinition, args: readonly unknown[]): string[] {
  return parameters.map(({ holds }, index) => sayArgument(args[index], holds === 'date'));
}

function sayOutcome(outcome: CellOutcome | CellFault, definition: FunctionDefinition): string {
  if ('error' in outcome) return outcome.message;
  const { value } = outcome;
  return Array.isArray(value) ? sayList(value, definition) : sayValue(value, definition.result === 'day');
}

function sayFirstOfRow(outcome: CellOutcome | CellFault, definition: FunctionDefinition): string | null {
  if ('error' in outcome || !Array.isArray(outcome.value) || outcome.value.length > 1) return null;
  const first = outcome.value[0]?.[0];
  return first === undefined ? null : sayValue(first, holdsDates(definition, 0));
}

/** A remark or a source that several steps share is said once. */
export function sayWorking(entries: readonly Entry[]): readonly WorkingLine[] {
  const dates = new Set(dateArguments);
  const said = new Set<string>();
  const lines: WorkingLine[] = [];
  for (const entry of entries) {
    const line = sayEntry(entry, dates);
    if ('step' in entry && entry.unit === 'date') dates.add(entry.step);
    if (line.kind === 'remark' || line.kind === 'source') {
      if (said.has(line.title)) continue;
      said.add(line.title);
    }
    lines.push(line);
  }
  return lines;
}

function sayEntry(entry: Entry, dates: ReadonlySet<string>): WorkingLine {
  if ('step' in entry) return sayStep(entry, dates);
  if ('assumed' in entry) return sayAssumption(entry);
  if ('source' in entry) return { ...blank, kind: 'source', title: sayGround(entry.source) };
  const sentences: Readonly<Record<string, string>> = remarks;
  return { ...blank, kind: 'remark', title: sentences[entry.remark] ?? entry.remark };
}

function sayStep(step: Step, dates: ReadonlySet<string>): WorkingLine {
  const known: Readonly<Record<string, { readonly name: string; readonly formula: string }>> = steps;
  const { name, formula } = known[step.step] ?? { name: sayQuantityName(step.step), formula: '' };
  const values = Object.entries(step.inputs).map(
    ([key, value]) => [key, sayQuantity(value, dates.has(key) ? 'date' : 'none')] as const,
  );
  return {
    kind: 'step',
    title: name,
    formula: fill(formula, Object.fromEntries(values)),
    numbersPutIn: values
      .map(([key, value]) => fill(texts.working.numberPutIn, { name: sayName(key), value }))
      .join(texts.working.and),
    result: sayQuantity(step.result, step.unit),
    unit: sayUnit(step.unit, step.result),
    rounding: step.rounded === undefined ? '' : texts.working.rounded[step.rounded],
  };
}

function sayAssumption({ assumed, value, unit, ground }: Assumption): WorkingLine {
  return {
    ...blank,
    kind: 'assumption',
    title: fill(texts.working.assumed, { name: sayName(assumed) }),
    formula: sayGround(ground),
    result: sayQuantity(value, unit),
    unit: sayUnit(unit, value),
  };
}

/** The name of an argument, or of the earlier step whose result is put in. */
export function sayName(key: string): string {
  const known: Readonly<Record<string, { readonly name: string }>> = steps;
  return key in texts.quantities ? sayQuantityName(key) : (known[key]?.name ?? sayQuantityName(key));
}
