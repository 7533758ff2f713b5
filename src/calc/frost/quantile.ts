import { refuse } from '../errors';
import { checkShare } from '../limits/limits';

export const quantileRules = ['inc', 'exc'] as const;
export type QuantileRule = (typeof quantileRules)[number];

/**
 * The quantile between the two values that it falls between, in a line.
 *
 * place = (n - 1) p + 1 under "inc", (n + 1) p under "exc"
 *
 * @param sorted values, rising, at least one
 * @param at p [share], 0 to 1
 * @throws percentForShare, outOfRange, tooFewSeasons: "exc" has no quantile beyond 1/(n + 1) and n/(n + 1)
 * Source: types 7 and 6 of Hyndman and Fan 1996, which spreadsheets call PERCENTILE.INC and PERCENTILE.EXC.
 * @example quantile([1, 2, 4], 0.75, 'inc') // 3
 */
export function quantile(sorted: readonly number[], at: number, rule: QuantileRule): number {
  const { low, high, part } = placeOfQuantile(sorted, at, rule);
  return low + (high - low) * part;
}

/**
 * Where the quantile falls: the values on both sides of it, and how far from the one to the other.
 *
 * @returns place counted from 1; part 0 to 1
 * @throws as quantile
 * @example placeOfQuantile([1, 2, 4], 0.75, 'inc') // { place: 2.5, low: 2, high: 4, part: 0.5 }
 */
export function placeOfQuantile(
  sorted: readonly number[],
  at: number,
  rule: QuantileRule,
): Readonly<Record<'place' | 'low' | 'high' | 'part', number>> {
  checkShare('at', at);
  const count = sorted.length;
  const place = rule === 'inc' ? (count - 1) * at : (count + 1) * at - 1;
  // Rounding error alone puts no quantile outside.
  if (place < -1e-9 || place > count - 1 + 1e-9) {
    refuse({ code: 'tooFewSeasons', seasons: count, needed: neededFor(at) });
  }
  const below = Math.min(Math.max(Math.floor(place), 0), count - 1);
  const above = Math.min(below + 1, count - 1);
  const low = sorted[below] ?? NaN;
  const high = sorted[above] ?? NaN;
  const part = Math.min(Math.max(place - below, 0), 1);
  return { place: below + 1 + part, low, high, part };
}

/** Infinity at 0 and 1. */
function neededFor(at: number): number {
  const tail = Math.min(at, 1 - at);
  return Math.ceil(1 / tail - 1 - 1e-9);
}
