import cdf from '@stdlib/stats-base-dists-binomial-cdf';
import { refuse } from '../errors';

/** The library's sum is good to 1e-8 up to here, and wrong in the third digit at 1e9. */
export const mostSeedsSummed = 1e8;

/**
 * The chance that fewer stand than wanted: the tail itself, so that a small one loses no digits.
 *
 * P(Binomial(seeds, chance) < wanted)
 *
 * @param wanted whole, 0 or more
 * @param seeds whole, 0 to 1e8
 * @param chance that one stands, 0 to 1
 * @returns probability
 * @throws tooLarge where the library gives none
 * Source: definition of the binomial distribution; seeds are taken to stand independently.
 * @example chanceOfTooFew(3, 5, 0.8) // 0.05792
 */
export function chanceOfTooFew(wanted: number, seeds: number, chance: number): number {
  const tail = cdf(wanted - 1, seeds, chance);
  return Number.isFinite(tail) ? tail : refuse({ code: 'tooLarge' });
}
