import { refuse } from '../errors';
import { leastWhole } from '../whole/leastWhole';
import { allowedShortfall } from './allowedShortfall';
import { chanceOfTooFewTested } from './chanceOfTooFewTested';

/** A limit of this program, not of the trade. */
const mostSeeds = 1e9;

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
  const chanceOfTooFew = chanceOfTooFewTested(wanted, germination, emergence, tested);
  const allowed = allowedShortfall(assurance);
  const least = leastWhole(
    wanted,
    mostSeeds,
    (wanted / (germination * emergence)) * 1.1,
    (seeds) => chanceOfTooFew(seeds) <= allowed,
  );
  return least ?? refuse({ code: 'tooFewTested', tested, assurance });
}
