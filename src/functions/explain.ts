/** The working of a call in lines that a person reads: the numbers put in, the rounding, every default, the source. */
import type { Assumption, Entry, Quantity, Step } from '../calc/working';
import type { Unit } from '../calc/units/units';
import { catalogue } from '../texts/catalogue';
import { remarks, steps } from '../texts/workings';
import { fill } from '../texts/fill';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { sayGround } from './citation';
import type { CellFault, CellOutcome, FunctionDefinition, Scalar } from './define';
import { varyInputs, type Answer, type Variation, type VariedInput } from './varyInputs';
import { sayNumber, sayQuantityName, sayUnit } from './wording';

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
  /** What else went in, and why it is not varied; the name in words. */
  readonly notVaried: readonly { readonly name: string; readonly why: 'word' | 'dayOfRecord' }[];
  /** Whether the effects are on a list. */
  readonly isList: boolean;
}

/** One input varied alone. */
export interface Effect {
  readonly name: string;
  /** Of the input, from 0. */
  readonly place: number;
  readonly changes: readonly {
    /** "" for a range. */
    readonly given: string;
    readonly step: string;
    readonly answer: string;
    readonly outcome: Variation['answer'];
  }[];
  /** Whether the answer is another then. */
  readonly matters: boolean;
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
  const isList = !('error' in outcome) && Array.isArray(outcome.value);
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

function notVariedOf({ parameters }: FunctionDefinition, args: readonly unknown[]): CallWorking['notVaried'] {
  return parameters.flatMap(({ name, holds, holdsMany = 'word' }, index) => {
    if (holds !== undefined || holdsMany === 'number' || holdsMany === 'date') return [];
    const cells = [args[index]].flat(2);
    const isWord = cells.some(
      (cell) => typeof cell === 'boolean' || (typeof cell === 'string' && cell !== ''),
    );
    return isWord || holdsMany === 'dayOfRecord' ? [{ name: sayQuantityName(name), why: holdsMany }] : [];
  });
}

function sayEffect(
  { name, place, holds, isRange, by, variations, effect }: VariedInput,
  base: Answer,
  definition: FunctionDefinition,
): Effect {
  return {
    name: sayQuantityName(name),
    place,
    matters: effect > 0,
    changes: variations.map(({ given, step, share, answer }) => {
      const said = sayVariedBy(step, share, isRange && by === 'whole' ? 'share' : by);
      return {
        given: given === null ? '' : sayArgument(given, holds === 'date'),
        step: isRange
          ? fill(texts.working.variedEach[by === 'whole' ? 'whole' : 'other'], { step: said })
          : said,
        answer: sayAnswer(base, answer, definition),
        outcome: answer,
      };
    }),
  };
}

/** Of a row all of it; of a longer list the last row that is another one. */
function sayAnswer(base: Answer, answer: Variation['answer'], definition: FunctionDefinition): string {
  if ('error' in answer) return answer.message;
  const { value } = answer;
  if (!Array.isArray(value)) return sayValue(value, definition.result === 'day');
  const sayRow = (row: readonly Scalar[] = []): string => sayList([row], definition);
  if (!Array.isArray(base) || (base.length === 1 && value.length === 1)) return sayList(value, definition);
  const { same, otherRow, otherRows } = texts.working.list;
  const rows = value.length;
  if (rows !== base.length) return fill(otherRows, { rows, before: base.length, last: sayRow(value.at(-1)) });
  const isOther = (i: number): boolean => value[i]?.some((one, column) => one !== base[i]?.[column]) === true;
  const last = [...value.keys()].filter(isOther).at(-1);
  if (last === undefined) return same;
  return fill(otherRow, { row: last + 1, rows, before: sayRow(base[last]), after: sayRow(value[last]) });
}

/** Two digits of a share are enough. */
function sayVariedBy(step: number, share: number | null, by: VariedInput['by']): string {
  const signed = (value: number): string => (value < 0 ? '' : '+') + sayNumber(value);
  const percent = signed(Number((100 * (share ?? 0)).toPrecision(2)));
  return fill(texts.working.variedBy[by], { step: signed(step), percent });
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

/** More cells are not read one by one. Judgement. */
const mostCellsTold = 12;

/** Its values; of a long one the first rows, and its size. */
function sayList(rows: readonly (readonly Scalar[])[], definition: FunctionDefinition): string {
  const { between, betweenRows, more } = texts.working.list;
  const columns = rows[0]?.length ?? 0;
  const told = rows.slice(0, Math.max(1, Math.floor(mostCellsTold / Math.max(1, columns))));
  const values = told
    .map((row) =>
      row.flatMap((value, column) => (value === '' ? [] : sayValue(value, holdsDates(definition, column)))),
    )
    .map((row) => row.join(between))
    .join(columns === 1 ? between : betweenRows);
  if (told.length === rows.length) return values;
  return fill(more, { values, cells: fill(texts.working.cells, { rows: rows.length, columns }) });
}

function holdsDates({ result, dateColumns }: FunctionDefinition, column: number): boolean {
  return result === 'day' || dateColumns.includes(column);
}

/** @param isDate numbers are serials */
function sayValue(value: Scalar, isDate: boolean): string {
  const day = isDate && typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? sayQuantity(value, 'none') : isoOfDay(Math.floor(day));
}

/** Of a range its size. */
function sayArgument(raw: unknown, isDate: boolean): string {
  if (Array.isArray(raw)) {
    const rows = raw as readonly unknown[][];
    const [first] = rows.flat();
    if (rows.flat().length === 1) return sayArgument(first, isDate);
    return fill(texts.working.cells, { rows: rows.length, columns: rows[0]?.length ?? 0 });
  }
  if (typeof raw === 'object' && raw !== null && 'error' in raw) return String(raw.error);
  if (raw === null || raw === undefined) return '';
  return sayValue(raw as Scalar, isDate);
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

function sayQuantity(value: Quantity, unit: Unit): string {
  if (typeof value === 'boolean') return value ? texts.working.yes : texts.working.no;
  if (typeof value === 'string') return value;
  return unit === 'date' ? isoOfDay(value) : sayNumber(value);
}
