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
  return low + (high - low) * Math.min(Math.max(place - below, 0), 1);
}

/** Infinity at 0 and 1. */
function neededFor(at: number): number {
  const tail = Math.min(at, 1 - at);
  return Math.ceil(1 / tail - 1 - 1e-9);
}
