import { checkShare } from '../limits/limits';
import { checkAssurance } from '../stand/checkAssurance';
import { chancesAround } from '../stand/chancesAround';
import { leastSeeds } from '../stand/leastSeeds';
import { orAssume, type Recorder } from '../working';

/** Judgement. */
export const usualAssuranceOfGroup = 0.95;

/**
 * The least plants out of mixed seed among which, with a given assurance, at least one is a pollenizer.
 *
 * least n with (1 - share)^n <= 1 - assurance
 *
 * @param share pollenizers in the seed [share], above 0 to 1
 * @param assurance chance that the group holds one, above 0, below 1; 0.95 when left out (judgement)
 * @returns whole plants
 * @throws outOfRange, percentForShare, assuranceOfOne, tooManyForAssurance
 * Source: as leastSeeds. Blends carry 10 to 15 % monoecious seed: North Carolina AG-552, terminology.
 * @example groupWithPollenizer(0.1, 0.95) // 29
 */
export function groupWithPollenizer(share: number, assurance?: number, record?: Recorder): number {
  checkShare('share', share, { above: 0 });
  if (assurance !== undefined) checkAssurance(assurance);
  const sure = orAssume(assurance, usualAssuranceOfGroup, 'assurance', 'share', 'judgement', record);
  const plants = leastSeeds(1, share, sure);
  record?.({
    step: 'groupWithPollenizer',
    inputs: { share, assurance: sure, ...chancesAround(1, plants, share) },
    result: plants,
    unit: 'plants',
  });
  record?.({ source: 'nc-ag-552-terms' });
  return plants;
}
