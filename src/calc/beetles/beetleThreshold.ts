import { beetleThresholds, wiltProneCrops } from '../../reference/beetles';
import { findCrop } from '../crops/findCrop';
import { recordGrounds } from '../crops/recordGrounds';
import type { Recorder } from '../working';

/**
 * Striped cucumber beetles on a plant at which to act. No measure is named: that is the label's and the extension
 * office's.
 *
 * threshold = 1 where the crop takes bacterial wilt, 5 where it does not
 *
 * @param cropName a crop's name or synonym
 * @param wiltProne whether the type takes bacterial wilt; the crop's own when undefined: yes but for watermelon
 * @returns beetles a plant, on average
 * @throws unknownName
 * Source: Purdue Vegetable Crops Hotline, 1 and 5; squash and pumpkin at 1: Ontario. See reference/beetles.
 * @example beetleThreshold('cucumber', undefined) // 1
 */
export function beetleThreshold(cropName: string, wiltProne: boolean | undefined, record?: Recorder): number {
  const crop = findCrop(cropName).name;
  // A crop that is missing there is taken for prone: the safe side.
  const own = wiltProneCrops[crop] ?? { prone: true, ground: 'judgement' };
  const isProne = wiltProne ?? own.prone;
  if (wiltProne === undefined) {
    record?.({ step: 'wiltProne', inputs: { crop }, result: isProne, unit: 'none' });
    recordGrounds([own.ground], isProne, 'none', 'wilt_prone', record);
  }
  const { beetlesPerPlant, ground } = beetleThresholds[isProne ? 'wiltProne' : 'notWiltProne'];
  record?.({
    step: 'beetleThreshold',
    inputs: { crop, wilt_prone: isProne },
    result: beetlesPerPlant,
    unit: 'beetlesPerPlant',
  });
  record?.({ source: ground });
  record?.({ remark: 'squashDiffer' });
  record?.({ remark: 'pesticides' });
  return beetlesPerPlant;
}
