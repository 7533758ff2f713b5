import { refuse } from '../errors';
import { leastWhole } from '../whole/leastWhole';
import { allowedShortfall } from './allowedShortfall';
import { chanceOfTooFew, mostSeedsSummed } from './chanceOfTooFew';

/**
 * The least number of seeds (or cells) of which, with a given assurance, enough stand.
 *
 * least n with P(Binomial(n, chance) < wanted) <= 1 - assurance
 *
 * The search starts from the normal approximation n = wanted/chance + z sqrt(wanted (1 - chance))/chance with a
 * rough z; where it starts has no bearing on the result.
 *
 * @param wanted that must stand, whole, 1 or more
 * @param chance that one stands, above 0, at most 1
 * @param assurance above 0, below 1
 * @returns whole seeds, at least `wanted`
 * @throws tooManyForAssurance (over 1e8 seeds), tooLarge where the library gives no chance
 * Source: the quantile of the negative binomial distribution; seeds are taken to stand independently.
 * @example leastSeeds(100, 0.8, 0.95) // 135
 */
export function leastSeeds(wanted: number, chance: number, assurance: number): number {
  const allowed = allowedShortfall(assurance);
  const z = Math.sqrt(-2 * Math.log(Math.min(allowed, 0.5))) - 1.1;
  const guess = (wanted + z * Math.sqrt(wanted * (1 - chance))) / chance;
  if (Number.isNaN(guess)) refuse({ code: 'tooLarge' });
  const tooMany = { code: 'tooManyForAssurance', most: mostSeedsSummed } as const;
  if (guess >= mostSeedsSummed) refuse(tooMany);
  const least = leastWhole(
    wanted,
    mostSeedsSummed,
    guess,
    (seeds) => chanceOfTooFew(wanted, seeds, chance) <= allowed,
  );
  return least ?? refuse(tooMany);
}
