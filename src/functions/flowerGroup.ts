import { chanceOfNoPollenizer } from '../calc/flowers/chanceOfNoPollenizer';
import { groupWithPollenizer } from '../calc/flowers/groupWithPollenizer';
import { define } from './define';
import { number, optionalNumber } from './parameters';
import { toCell } from './toCell';

export const noPollenizer = define({
  id: 'FLOWER.NOPOLLENIZER',
  parameters: [number('plants'), number('share')],
  result: 'plain',
  calculate: ([plants, share], record) => chanceOfNoPollenizer(plants, share, record),
});

/**
 * Chance that a group of plants out of mixed seed holds no pollenizer.
 * @customfunction FLOWER.NOPOLLENIZER
 * @param plants Plants in the group, whole, 1 or more
 * @param share Share of the seed that are pollenizers, 0 to 1, such as 10%
 * @returns A share
 */
export function flowerNoPollenizer(plants: any, share: any): any {
  return toCell(noPollenizer, [plants, share]);
}

export const groupSize = define({
  id: 'FLOWER.GROUPSIZE',
  parameters: [number('share'), optionalNumber('assurance')],
  result: 'plain',
  calculate: ([share, assurance], record) => groupWithPollenizer(share, assurance, record),
});

/**
 * Least plants out of mixed seed among which there is a pollenizer.
 * @customfunction FLOWER.GROUPSIZE
 * @param share Share of the seed that are pollenizers, above 0 to 1, such as 10%
 * @param [assurance] Chance that the group holds one, above 0, below 1, default 0.95
 * @returns Whole plants
 */
export function flowerGroupSize(share: any, assurance?: any): any {
  return toCell(groupSize, [share, assurance]);
}
