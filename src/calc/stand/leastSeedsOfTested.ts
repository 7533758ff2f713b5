import { refuse } from '../errors';
import { checkShare } from '../limits/limits';
import { leastWhole } from '../whole/leastWhole';
import { allowedShortfall } from './allowedShortfall';
import { betaBinomialDensity } from './betaBinomialDensity';
import { binomialDensity } from './binomialDensity';

/** Answers in well under a second up to here. All three are limits of this program, not of the trade. */
const mostGerminated = 200_000;
const leastEmergence = 0.001;
const mostSeeds = 1e9;
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
 * The least number of seeds of which enough stand, when the germination is itself known only from a test.
 *
 * least n with P(stand < wanted) <= 1 - assurance, where stand | germinated ~ Binomial(germinated, emergence),
 * germinated ~ Binomial(n, q) and q ~ Beta(germination x tested + 1/2, (1 - germination) x tested + 1/2)
 *
 * @param wanted plants, whole, 1 or more
 * @param germination found in the test, above 0, at most 1
 * @param emergence share of germinable seeds that stand, 0.001 to 1
 * @param assurance above 0, below 1
 * @param tested seeds in the test, whole, 1 or more
 * @returns whole seeds, at least `wanted`
 * @throws outOfRange, tooManyForTested (over 200,000 seeds would have to germinate), tooFewTested (over 1e9 seeds)
 * Source: Jeffreys' prior, Beta(1/2, 1/2), for what a test tells: Brown, Cai and DasGupta, 2001, Statistical
 * Science 16(2):101-133; its beta-binomial prediction and emergence within the sum: project convention.
 * @example leastSeedsOfTested(100, 0.8, 1, 0.95, 50) // 147
 */
export function leastSeedsOfTested(
  wanted: number,
  germination: number,
  emergence: number,
  assurance: number,
  tested: number,
): number {
  checkShare('field_emergence', emergence, { atLeast: leastEmergence });
  const most = Math.floor(mostGerminated * emergence);
  if (wanted > most) refuse({ code: 'tooManyForTested', plants: wanted, most });
  const chances = chancesOfTooFew(wanted, emergence);
  const a = germination * tested + 0.5;
  const b = (1 - germination) * tested + 0.5;
  const allowed = allowedShortfall(assurance);
  const least = leastWhole(
    wanted,
    mostSeeds,
    (wanted / (germination * emergence)) * 1.1,
    (seeds) => chanceOfTooFewFrom(seeds, chances, a, b) <= allowed,
  );
  return least ?? refuse({ code: 'tooFewTested', tested, assurance });
}
