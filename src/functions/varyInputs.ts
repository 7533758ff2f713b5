/**
 * What an answer becomes when one input alone is a little different, for each input that is a number or a date, defaults
 * among them: all by the same share, so that their effects can be set against one another.
 */
import { CalcError, type Problem } from '../calc/errors';
import { daysPerWeek } from '../calc/units/units';
import type { Quantity } from '../calc/working';
import { serialOfDay } from '../workbook/serialDate';
import type { FunctionDefinition, Parameter, Scalar } from './define';

/** A tenth: enough to be seen after rounding, little enough to happen in a field. Judgement. */
const part = 0.1;

export interface Variation {
  /** Serial for a date. */
  readonly given: number;
  /** How far that is from what was given: days for a date. */
  readonly step: number;
  /** The step as a share of what was given; null for a date, a year and from 0, of which there is none. */
  readonly share: number | null;
  /** The answer then; the refusal where there is none. */
  readonly answer: { readonly value: Scalar } | { readonly refused: string };
}

export interface VariedInput {
  readonly name: string;
  readonly holds: 'number' | 'date';
  readonly isWhole: boolean;
  /** One or two: more, then less. */
  readonly variations: readonly Variation[];
  /**
   * How far the answer moves at most, in its own unit, reckoned for a tenth where whole steps are more or less than that;
   * 1 for another word, Infinity for a refusal.
   */
  readonly effect: number;
}

/** Those that matter most first. None for an answer that is a list or a refusal. */
export function varyInputs(definition: FunctionDefinition, args: readonly unknown[]): VariedInput[] {
  const answer = definition.run(args);
  if ('error' in answer || Array.isArray(answer.value)) return [];
  const { value: base } = answer;
  const assumed = new Map(
    definition
      .explain(args)
      .entries.flatMap((entry) => ('assumed' in entry ? [[entry.assumed, entry.value] as const] : [])),
  );
  const varied = definition.parameters.flatMap(({ name, holds, read }, index): VariedInput[] => {
    const given =
      holds === undefined
        ? null
        : (numberIn(read, args[index], holds) ?? numberAssumed(assumed.get(name), holds));
    if (holds === undefined || given === null) return [];
    const withOther = (other: number): unknown[] =>
      definition.parameters.map((_, i) => (i === index ? other : args[i]));
    const attempt: Attempt = (other) => problemWith(definition, withOther(other));
    const isPoint = holds === 'date' || isYear(name);
    const isWhole =
      !isPoint && ((isCounted(name) && Number.isInteger(given)) || attempt(given + 0.5)?.code === 'notWhole');
    const usual = holds === 'date' ? daysPerWeek : isPoint ? 1 : Math.abs(given) * part;
    const wanted = isWhole ? Math.max(1, Math.round(usual)) : usual;
    const variations = othersNear(given, wanted, isWhole, name, attempt).map((other): Variation => {
      const step = other - given;
      const share = isPoint || given === 0 ? null : step / Math.abs(given);
      const outcome = definition.run(withOther(other));
      const answer = 'error' in outcome ? { refused: outcome.message } : { value: outcome.value as Scalar };
      return { given: other, step, share, answer };
    });
    // A step cut short by a limit is not drawn out: rounding would be drawn out with it.
    const scale = isWhole && given !== 0 ? usual / wanted : 1;
    const effect = scale * Math.max(...variations.map(({ answer: then }) => distance(base, then)));
    return variations.length === 0 ? [] : [{ name, holds, isWhole, variations, effect }];
  });
  return varied.sort((one, other) => (one.effect === other.effect ? 0 : other.effect - one.effect));
}

/** A year is a point in time, like a date: a tenth of it means nothing. */
function isYear(name: string): boolean {
  return name === 'year' || name.startsWith('year_');
}

/** Days and plants: a function may take parts of them, such as of an average, but nobody counts a tenth of one. */
function isCounted(name: string): boolean {
  return /(^|_)days(_|$)|^(plants|pollenizers)$/.test(name);
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

function distance(base: Scalar, answer: Variation['answer']): number {
  if ('refused' in answer) return Infinity;
  const { value } = answer;
  if (typeof base === 'number' && typeof value === 'number') return Math.abs(value - base);
  return value === base ? 0 : 1;
}
