import { checkCount } from '../limits/limits';
import { checkAssurance } from '../stand/checkAssurance';
import { standChance } from '../stand/standChance';
import { chancesAround } from '../stand/chancesAround';
import { leastSeeds } from '../stand/leastSeeds';
import { orAssume, type Recorder } from '../working';

/** Nine hills in ten come up full. */
const usualAssurance = 0.9;

/**
 * Seeds to drop in a hill so that, with a given assurance, enough plants stand in it before thinning.
 *
 * least n with P(Binomial(n, germination x field emergence) >= plants per hill) >= assurance
 *
 * @param plantsPerHill left to stand, whole, 1 or more
 * @param germination above 0, at most 1
 * @param fieldEmergence share of germinable seeds that stand, above 0, at most 1; 1 when left out
 * @param assurance chance that a hill is full, above 0, below 1; 0.9 when left out (judgement)
 * @returns whole seeds a hill
 * @throws outOfRange, percentForShare, notWhole, assuranceOfOne, tooManyForAssurance, tooLarge
 * Source: as leastSeeds. The customary 4 to 5 seeds for 3 plants (Illinois Vegetable Garden Guide) fill 82 to 94 %
 * of hills at 80 % germination.
 * @example seedsPerHill(3, 0.8, undefined, 0.95) // 6
 */
export function seedsPerHill(
  plantsPerHill: number,
  germination: number,
  fieldEmergence?: number,
  assurance?: number,
  record?: Recorder,
): number {
  const wanted = checkCount('plants_per_hill', plantsPerHill, 'plants', { atLeast: 1 });
  if (assurance !== undefined) checkAssurance(assurance);

  const { chance } = standChance(germination, fieldEmergence, record);
  const sure = orAssume(assurance, usualAssurance, 'assurance', 'share', 'judgement', record);
  const seeds = leastSeeds(wanted, chance, sure);
  record?.({
    step: 'seedsPerHill',
    inputs: {
      plants_per_hill: wanted,
      standChance: chance,
      assurance: sure,
      ...chancesAround(wanted, seeds, chance),
    },
    result: seeds,
    unit: 'seeds',
  });
  return seeds;
}
