import { refuse } from '../errors';
import { checkShare } from '../limits/limits';
import { betaBinomialDensity } from './betaBinomialDensity';
import { binomialDensity } from './binomialDensity';

/** Answers in well under a second up to here. Both are limits of this program, not of the trade. */
const mostGerminated = 200_000;
const leastEmergence = 0.001;
/** Terms under this part of the largest are left out. */
const negligible = 1e-25;

/**
 * For 0, 1, 2, ... germinated seeds: the chance that fewer than `wanted` of them stand; 0 beyond the list's end.
 * 1 up to wanted - 1 seeds, then what is left of the wait for the wanted-th plant, summed from its far end.
 */
function chancesOfTooFew(wanted: number, emergence: number): Float64Array {
  if (emergence === 1) return new Float64Array(wanted).fill(1);
  // Each term: the chance that the wanted-th plant is the one of germinated seed g + 1. They rise up to `start`.
  const start = Math.floor((wanted - 1) / emergence);
  const top = emergence * binomialDensity(wanted - 1, start, emergence);
  const fromStart: number[] = [];
  for (let g = start, term = top; term > top * negligible; g++) {
    fromStart.push(term);
    term *= ((g + 1) * (1 - emergence)) / (g + 2 - wanted);
  }
  const downFromStart: number[] = [];
  for (let g = start - 1, term = top; g >= wanted - 1; g--) {
    term *= (g + 2 - wanted) / ((g + 1) * (1 - emergence));
    downFromStart.push(term);
  }
  const end = start + fromStart.length;
  const chances = new Float64Array(end).fill(1, 0, wanted);
  let left = 0;
  for (let g = end - 1; g >= wanted; g--) {
    left += (g >= start ? fromStart[g - start] : downFromStart[start - 1 - g]) ?? 0;
    chances[g] = left;
  }
  return chances;
}

/** Sum over germinated counts of their beta-binomial chance times the chance that too few of them stand. */
function chanceOfTooFewFrom(seeds: number, chances: Float64Array, a: number, b: number): number {
  const last = Math.min(seeds, chances.length - 1);
  const start = Math.min(last, Math.round((seeds * a) / (a + b)));
  const density = betaBinomialDensity(start, seeds, a, b);
  let sum = density * (chances[start] ?? 0);
  for (let g = start, chance = density; g < last; g++) {
    chance *= ((seeds - g) * (g + a)) / ((g + 1) * (seeds - g - 1 + b));
    sum += chance * (chances[g + 1] ?? 0);
  }
  for (let g = start, chance = density; g > 0; g--) {
    chance *= (g * (seeds - g + b)) / ((seeds - g + 1) * (g - 1 + a));
    sum += chance * (chances[g - 1] ?? 0);
  }
  return sum;
}

/**
 * The chance that too few of some seeds stand, when the germination is itself known only from a test.
 *
 * P(stand < wanted), where stand | germinated ~ Binomial(germinated, emergence),
 * germinated ~ Binomial(n, q) and q ~ Beta(germination x tested + 1/2, (1 - germination) x tested + 1/2)
 *
 * @param wanted plants, whole, 1 or more
 * @param germination found in the test, above 0, at most 1
 * @param emergence share of germinable seeds that stand, 0.001 to 1
 * @param tested seeds in the test, whole, 1 or more
 * @returns the chance by the number n of seeds, whole, 0 or more
 * @throws outOfRange, tooManyForTested (over 200,000 seeds would have to germinate)
 * Source: as leastSeedsOfTested.
 * @example chanceOfTooFewTested(1, 1, 1, 1)(2) // 0.125
 */
export function chanceOfTooFewTested(
  wanted: number,
  germination: number,
  emergence: number,
  tested: number,
): (seeds: number) => number {
  checkShare('field_emergence', emergence, { atLeast: leastEmergence });
  const most = Math.floor(mostGerminated * emergence);
  if (wanted > most) refuse({ code: 'tooManyForTested', plants: wanted, most });
  const chances = chancesOfTooFew(wanted, emergence);
  const a = germination * tested + 0.5;
  const b = (1 - germination) * tested + 0.5;
  return (seeds) => (seeds < wanted ? 1 : chanceOfTooFewFrom(seeds, chances, a, b));
}
