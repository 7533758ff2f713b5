import { checkCount, checkShare } from '../limits/limits';
import { binomialDensity } from '../stand/binomialDensity';
import type { Recorder } from '../working';

/**
 * The chance that a group of plants out of mixed seed holds no pollenizer at all.
 *
 * (1 - share)^plants
 *
 * @param plants in the group, whole, 1 or more
 * @param share pollenizers in the seed [share], 0 to 1
 * @returns probability
 * @throws outOfRange, notWhole, percentForShare
 * Source: arithmetic of independent plants. Blends carry 10 to 15 % monoecious seed: North Carolina AG-552,
 * terminology.
 * @example chanceOfNoPollenizer(29, 0.1) // 0.0471
 */
export function chanceOfNoPollenizer(plants: number, share: number, record?: Recorder): number {
  const group = checkCount('plants', plants, 'plants', { atLeast: 1 });
  checkShare('share', share);
  const none = binomialDensity(0, group, share);
  record?.({ step: 'chanceOfNoPollenizer', inputs: { plants: group, share }, result: none, unit: 'share' });
  record?.({ source: 'nc-ag-552-terms' });
  return none;
}
