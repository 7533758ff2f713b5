import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkCount } from '../limits/limits';
import { checkAssurance } from '../stand/checkAssurance';
import { standChance } from '../stand/standChance';
import { chancesAround } from '../stand/chancesAround';
import { chancesAroundTested } from '../stand/chancesAroundTested';
import { leastSeeds } from '../stand/leastSeeds';
import { leastSeedsOfTested } from '../stand/leastSeedsOfTested';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/**
 * Seeds to sow for a stand: on average, or with a given assurance, or with one that doubts the germination too.
 *
 * no assurance: plants / (germination x field emergence), rounded up
 * assurance:    least n with P(Binomial(n, germination x field emergence) >= plants) >= assurance
 * tested:       the same with germination ~ Beta(g t + 1/2, (1 - g) t + 1/2), t seeds tested
 *
 * @param plants whole, 1 or more
 * @param germination share found in the test, above 0, at most 1
 * @param fieldEmergence share of germinable seeds that stand, above 0, at most 1; 1 when left out
 * @param assurance chance that the stand is reached, above 0, below 1; left out, the sum is an average
 * @param tested seeds in the germination test, whole, 1 or more; only with an assurance
 * @returns whole seeds
 * @throws outOfRange, percentForShare, notWhole, testedWithoutAssurance, assuranceOfOne, tooManyForAssurance,
 * tooManyForTested, tooFewTested, tooLarge
 * Source: division by germination as in the IRRI Knowledge Bank's seed rate calculation; the rest in leastSeeds
 * and leastSeedsOfTested.
 * @example seedsNeeded(100, 0.8, 0.9, 0.95) // 151
 */
export function seedsNeeded(
  plants: number,
  germination: number,
  fieldEmergence?: number,
  assurance?: number,
  tested?: number,
  record?: Recorder,
): number {
  const wanted = checkCount('plants', plants, 'plants', { atLeast: 1 });
  if (assurance !== undefined) checkAssurance(assurance);
  if (tested !== undefined) checkCount('tested', tested, 'seeds', { atLeast: 1 });
  if (tested !== undefined && assurance === undefined) refuse({ code: 'testedWithoutAssurance' });

  const { emergence, chance } = standChance(germination, fieldEmergence, record);

  if (assurance === undefined) {
    const exact = wanted / chance;
    const average = ceilWhole(exact);
    record?.({
      step: 'seedsOnAverage',
      inputs: { plants: wanted, standChance: chance },
      result: average,
      unit: 'seeds',
      ...roundingOf(exact, average),
    });
    record?.({ remark: 'averageFallsShort' });
    return average;
  }
  if (tested === undefined) {
    const seeds = leastSeeds(wanted, chance, assurance);
    record?.({
      step: 'seedsForAssurance',
      inputs: {
        plants: wanted,
        standChance: chance,
        assurance,
        ...chancesAround(wanted, seeds, chance),
      },
      result: seeds,
      unit: 'seeds',
    });
    return seeds;
  }
  const seeds = leastSeedsOfTested(wanted, germination, emergence, assurance, tested);
  record?.({
    step: 'seedsForAssuranceTested',
    inputs: {
      plants: wanted,
      germination,
      tested,
      field_emergence: emergence,
      assurance,
      ...chancesAroundTested(wanted, seeds, germination, emergence, tested),
    },
    result: seeds,
    unit: 'seeds',
  });
  record?.({ source: 'brown-2001' });
  return seeds;
}
