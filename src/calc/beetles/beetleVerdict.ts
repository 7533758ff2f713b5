import { practice } from '../../reference/practice';
import { checkCount } from '../limits/limits';
import type { Recorder } from '../working';
import { beetleThreshold } from './beetleThreshold';

/** Seedling: one to about five true leaves. */
export const beetleStages = ['cotyledon', 'seedling', 'older'] as const;
export type BeetleStage = (typeof beetleStages)[number];

export interface BeetleVerdict {
  readonly isAtThreshold: boolean;
  /** Beetles a plant. */
  readonly mean: number;
  readonly threshold: number;
  /** Past the stages in which beetles matter most. */
  readonly isOlder: boolean;
  readonly isTooFew: boolean;
}

/**
 * Whether beetles counted on some plants reach the threshold. It says nothing of what to do.
 *
 * at threshold: beetles / plants >= threshold
 *
 * @param beetles counted on all plants looked at, whole, 0 or more
 * @param plants looked at, whole, 1 or more; under 25 are too few
 * @param cropName a crop's name or synonym
 * @param stage of the plants
 * @param wiltProne as in beetleThreshold
 * @returns the verdict
 * @throws outOfRange, notWhole, unknownName
 * Source: as beetleThreshold. Stages: University of Wisconsin XHT1092, most at risk to 3 leaves; to about 5, common
 * practice, no source. 25 plants: judgement.
 * @example beetleVerdict(30, 30, 'cucumber', 'seedling', undefined).isAtThreshold // true
 */
export function beetleVerdict(
  beetles: number,
  plants: number,
  cropName: string,
  stage: BeetleStage,
  wiltProne: boolean | undefined,
  record?: Recorder,
): BeetleVerdict {
  const counted = checkCount('beetles', beetles, 'none', { atLeast: 0 });
  const lookedAt = checkCount('plants', plants, 'plants', { atLeast: 1 });
  const threshold = beetleThreshold(cropName, wiltProne, record);
  const mean = counted / lookedAt;
  record?.({
    step: 'beetlesPerPlant',
    inputs: { beetles: counted, plants: lookedAt },
    result: mean,
    unit: 'beetlesPerPlant',
  });
  const isAtThreshold = mean >= threshold;
  record?.({
    step: 'beetleVerdict',
    inputs: { beetlesPerPlant: mean, beetleThreshold: threshold, stage },
    result: isAtThreshold,
    unit: 'none',
  });
  record?.({ remark: 'beetlesMatterEarly' });
  record?.({ source: 'wi-beetles' });
  return {
    isAtThreshold,
    mean,
    threshold,
    isOlder: stage === 'older',
    isTooFew: lookedAt < practice.plantsScouted.value,
  };
}
