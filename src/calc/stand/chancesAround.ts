import { chanceOfTooFew } from './chanceOfTooFew';

/**
 * What shows that a number is the least that suffices: the chance that it does, and that one fewer does.
 *
 * P(Binomial(n, chance) >= wanted) at n = seeds and at n = seeds - 1
 *
 * @param wanted that must stand, whole, 1 or more
 * @param seeds whole, 1 to 1e8
 * @param chance that one stands, above 0, at most 1
 * @throws tooLarge where the library gives no chance
 * Source: as chanceOfTooFew.
 * @example chancesAround(3, 6, 0.8) // { chanceOfThese: 0.98304, chanceOfOneFewer: 0.94208 }
 */
export function chancesAround(
  wanted: number,
  seeds: number,
  chance: number,
): { readonly chanceOfThese: number; readonly chanceOfOneFewer: number } {
  return {
    chanceOfThese: 1 - chanceOfTooFew(wanted, seeds, chance),
    chanceOfOneFewer: 1 - chanceOfTooFew(wanted, seeds - 1, chance),
  };
}
