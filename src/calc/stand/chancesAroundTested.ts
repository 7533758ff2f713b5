import { chanceOfTooFewTested } from './chanceOfTooFewTested';

/**
 * As chancesAround, when the germination is itself known only from a test.
 *
 * 1 - P(stand < wanted) at n = seeds and at n = seeds - 1
 *
 * @param wanted that must stand, whole, 1 or more
 * @param seeds whole, 1 or more
 * @param germination found in the test, above 0, at most 1
 * @param emergence share of germinable seeds that stand, 0.001 to 1
 * @param tested seeds in the test, whole, 1 or more
 * @throws as chanceOfTooFewTested
 * Source: as leastSeedsOfTested.
 * @example chancesAroundTested(1, 2, 1, 1, 1) // { chanceOfThese: 0.875, chanceOfOneFewer: 0.75 }
 */
export function chancesAroundTested(
  wanted: number,
  seeds: number,
  germination: number,
  emergence: number,
  tested: number,
): { readonly chanceOfThese: number; readonly chanceOfOneFewer: number } {
  const chanceOfTooFew = chanceOfTooFewTested(wanted, germination, emergence, tested);
  return { chanceOfThese: 1 - chanceOfTooFew(seeds), chanceOfOneFewer: 1 - chanceOfTooFew(seeds - 1) };
}
