/**
 * What an answer becomes when one input alone is a little different, for each input that is a number or a date or a
 * range of them, defaults among them: measures all by the same share, so that their effects can be set against one
 * another. A range is one input: all that stands in it moves together. Of an answer that is a list every value counts.
 */
import { CalcError, type Problem } from '../calc/errors';
import { daysPerWeek } from '../calc/units/units';
import type { Quantity } from '../calc/working';
import { serialOfDay } from '../workbook/serialDate';
import type { CellFault, FunctionDefinition, Parameter } from './define';
import { distanceOfAnswers, type Answer } from './distanceOfAnswers';

/** A tenth: enough to be seen after rounding, little enough to happen in a field. Judgement. */
const part = 0.1;

export interface Variation {
  /** Serial for a date; null for a range. */
  readonly given: number | null;
  /** How far that is from what was given: days for a date. Of a range the whole numbers are rounded after it. */
  readonly step: number;
  /** The step as a share of what was given; null for a date, a year, a temperature and from 0, of which there is none. */
  readonly share: number | null;
  /** The answer then; the refusal where there is none. */
  readonly answer: { readonly value: Answer } | CellFault;
}

/** 'whole' for a share brought to whole numbers, 'one' for a year and for a count from none. */
export type StepKind = 'share' | 'whole' | 'one' | 'days' | 'degrees';

export interface VariedInput {
  readonly name: string;
  /** Of the parameter, from 0. */
  readonly place: number;
  readonly holds: 'number' | 'date';
  readonly isRange: boolean;
  readonly by: StepKind;
  /** One or two: more, then less. */
  readonly variations: readonly Variation[];
  /**
   * How far the answer moves at most, in its own unit, reckoned for a tenth where whole steps are more or less than that;
   * 1 for another word and for a row more or less, Infinity for a refusal.
   */
  readonly effect: number;
}

/** Those that matter most first. None for a refusal. */
export function varyInputs(definition: FunctionDefinition, args: readonly unknown[]): VariedInput[] {
  const answer = definition.run(args);
  if ('error' in answer) return [];
  const { value: base } = answer;
  const assumed = new Map(
    definition
      .explain(args)
      .entries.flatMap((entry) => ('assumed' in entry ? [[entry.assumed, entry.value] as const] : [])),
  );
  const varied = definition.parameters.flatMap((parameter, index): VariedInput[] => {
    const tryWith = (other: unknown): Tried => {
      const others = definition.parameters.map((_, i) => (i === index ? other : args[i]));
      return {
        problem: () => problemWith(definition, others),
        answer: () => {
          const outcome = definition.run(others);
          return 'error' in outcome ? outcome : { value: outcome.value };
        },
      };
    };
    const input =
      parameter.holdsMany === undefined
        ? varyNumber(parameter, args[index], assumed.get(parameter.name), tryWith)
        : varyRange(parameter, args[index], tryWith);
    if (input === null || input.variations.length === 0) return [];
    const { scale, ...rest } = input;
    const effect =
      scale * Math.max(...input.variations.map(({ answer: then }) => distanceOfAnswers(base, then)));
    return [{ ...rest, name: parameter.name, place: index, effect }];
  });
  return varied.sort((one, other) => (one.effect === other.effect ? 0 : other.effect - one.effect));
}

/** The function with another value for the input. */
type TryWith = (other: unknown) => Tried;
interface Tried {
  /** What is refused; null when nothing is. */
  problem(): Problem | null;
  answer(): Variation['answer'];
}

type Varied = Omit<VariedInput, 'name' | 'place' | 'effect'> & {
  /** What a tenth is to the step that was taken. */
  readonly scale: number;
};

function varyNumber(
  { name, holds, read }: Parameter<unknown>,
  raw: unknown,
  assumed: Quantity | undefined,
  tryWith: TryWith,
): Varied | null {
  const given = holds === undefined ? null : (numberIn(read, raw, holds) ?? numberAssumed(assumed, holds));
  if (holds === undefined || given === null) return null;
  const attempt: Attempt = (other) => tryWith(other).problem();
  const fixed = fixedStep(name, holds);
  const isWhole =
    fixed === null &&
    ((isCounted(name) && Number.isInteger(given)) || attempt(given + 0.5)?.code === 'notWhole');
  const usual = fixed?.step ?? Math.abs(given) * part;
  const wanted = isWhole ? Math.max(1, Math.round(usual)) : usual;
  const variations = othersNear(given, wanted, isWhole, name, attempt).map((other): Variation => {
    const step = other - given;
    const share = fixed !== null || given === 0 ? null : step / Math.abs(given);
    return { given: other, step, share, answer: tryWith(other).answer() };
  });
  // A step cut short by a limit is not drawn out: rounding would be drawn out with it.
  const scale = isWhole && given !== 0 ? usual / wanted : 1;
  const by = fixed?.by ?? (isWhole ? (given === 0 ? 'one' : 'whole') : 'share');
  return { holds, isRange: false, by, variations, scale };
}

/** null for one of words, for the days of a record, and for one without a number. */
function varyRange(
  { name, holdsMany, read }: Parameter<unknown>,
  raw: unknown,
  tryWith: TryWith,
): Varied | null {
  if (holdsMany !== 'number' && holdsMany !== 'date') return null;
  const cells = (read(raw) as readonly unknown[]).map(cellRead);
  if (!cells.some((cell) => typeof cell === 'number' && cell !== 0)) return null;
  const withEach = (move: (one: number) => number): Tried =>
    tryWith(
      cells.map((cell) => {
        if (typeof cell !== 'number') return [cell];
        return [move(holdsMany === 'date' ? serialOfDay(cell) : cell)];
      }),
    );
  const fixed = fixedStep(name, holdsMany);
  const isWhole = fixed === null && withEach((one) => one + 0.5).problem()?.code === 'notWhole';
  const variations = [1, -1].flatMap((sign): Variation[] => {
    const tried = withEach((one) => {
      const step = fixed?.step ?? Math.abs(one) * part;
      return one + sign * (isWhole ? Math.round(step) : step);
    });
    const problem = tried.problem();
    if (problem !== null && isOfInputs(problem)) return [];
    const step = sign * (fixed?.step ?? part);
    return [{ given: null, step, share: fixed === null ? step : null, answer: tried.answer() }];
  });
  const by = fixed?.by ?? (isWhole ? 'whole' : 'share');
  return { holds: holdsMany, isRange: true, by, variations, scale: 1 };
}

/** One of a list that is read when it is asked for may be wrong where nobody asks. */
function cellRead(cell: unknown): unknown {
  if (typeof cell !== 'function') return cell;
  try {
    return (cell as () => unknown)();
  } catch (error) {
    if (error instanceof CalcError) return null;
    throw error;
  }
}

/** A refusal of inputs that there cannot be, of which no answer is missed. */
function isOfInputs({ code }: Problem): boolean {
  return code === 'outOfRange' || code === 'notATemperature' || code === 'priceTooFine' || isCrossed(code);
}

function isCrossed(code: Problem['code']): boolean {
  return code === 'lowAboveHigh' || code === 'lowAboveHighInRow';
}

/** A point in time or on a scale, of which a tenth means nothing, moves by a week, a year, a degree; null for a measure. */
function fixedStep(
  name: string,
  holds: 'number' | 'date',
): { readonly step: number; readonly by: StepKind } | null {
  if (holds === 'date') return { step: daysPerWeek, by: 'days' };
  if (isYear(name)) return { step: 1, by: 'one' };
  return isTemperature(name) ? { step: 1, by: 'degrees' } : null;
}

function isYear(name: string): boolean {
  return name === 'year' || name === 'past_years' || name.startsWith('year_');
}

function isTemperature(name: string): boolean {
  return /^(highs?|lows?|base|ceiling|threshold|soil_temperature)$/.test(name);
}

/** Days, plants and seeds: a function may take parts of them, such as of an average, but nobody counts a tenth of one. */
function isCounted(name: string): boolean {
  return /(^|_)days(_|$)|^(plants|pollenizers|seeds)$/.test(name);
}

/** The one number that is given, null for none. What cannot be read is refused by the function itself. */
function numberIn(read: Parameter<unknown>['read'], raw: unknown, holds: 'number' | 'date'): number | null {
  const value = read(raw);
  if (typeof value !== 'number') return null;
  return holds === 'date' ? serialOfDay(value) : value;
}

/** The default that stood in for what was left out. */
function numberAssumed(value: Quantity | undefined, holds: 'number' | 'date'): number | null {
  if (typeof value !== 'number') return null;
  return holds === 'date' ? serialOfDay(value) : value;
}

/** What is refused with that input; null when nothing is. */
type Attempt = (other: number) => Problem | null;

function problemWith(definition: FunctionDefinition, args: readonly unknown[]): Problem | null {
  try {
    definition.calculate(definition.read(args));
    return null;
  } catch (error) {
    if (error instanceof CalcError) return error.problem;
    throw error;
  }
}

/** A step more and less, and no further than the function lets it. */
function othersNear(given: number, step: number, isWhole: boolean, name: string, attempt: Attempt): number[] {
  const others = [given + step, given - step].flatMap((other) => {
    const problem = attempt(other);
    if (problem !== null && isCrossed(problem.code)) return [];
    if (problem === null || !('name' in problem) || problem.name !== name) return other;
    const limit = limitBetween(problem, given, other);
    if (limit === null) return [];
    if (attempt(limit) === null) return limit;
    return isWhole ? [] : (given + limit) / 2;
  });
  return others.filter((other) => other !== given);
}

/** Where an input is refused beyond; null where that cannot be told. */
function limitBetween(problem: Problem, given: number, other: number): number | null {
  if (problem.code === 'percentForShare') return given <= 1 ? 1 : null;
  if (problem.code !== 'outOfRange') return null;
  const { atMost, atLeast, below, above } = problem;
  return (other > given ? (atMost ?? below) : (atLeast ?? above)) ?? null;
}
