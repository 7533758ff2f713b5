import { beetleThreshold } from '../calc/beetles/beetleThreshold';
import { beetleStages, beetleVerdict } from '../calc/beetles/beetleVerdict';
import { define } from './define';
import { choice, number, optionalYesOrNo, text } from './parameters';
import { sayBeetles } from './sayBeetles';
import { toCell } from './toCell';

export const threshold = define({
  id: 'BEETLE.THRESHOLD',
  parameters: [text('crop'), optionalYesOrNo('wilt_prone')],
  result: 'plain',
  calculate: ([crop, wiltProne], record) => beetleThreshold(crop, wiltProne, record),
});

/**
 * Striped cucumber beetles on a plant at which to act; the label and the extension office say how.
 * @customfunction BEETLE.THRESHOLD
 * @param crop Crop or trade name, such as "zucchini"
 * @param [wilt_prone] Whether the type takes bacterial wilt (default: yes, but for watermelon)
 * @returns Beetles a plant, on average
 */
export function beetleThresholdOf(crop: any, wilt_prone?: any): any {
  return toCell(threshold, [crop, wilt_prone]);
}

export const verdict = define({
  id: 'BEETLE.VERDICT',
  parameters: [
    number('beetles'),
    number('plants'),
    text('crop'),
    choice('stage', beetleStages),
    optionalYesOrNo('wilt_prone'),
  ],
  result: 'plain',
  calculate: ([beetles, plants, crop, stage, wiltProne], record) =>
    sayBeetles(beetleVerdict(beetles, plants, crop, stage, wiltProne, record)),
});

/**
 * Whether beetles counted on some plants reach the threshold, and whether enough plants were looked at.
 * @customfunction BEETLE.VERDICT
 * @param beetles Beetles counted on all those plants, whole, 0 or more
 * @param plants Plants looked at, whole; 25 or more across the field
 * @param crop Crop or trade name, such as "cucumber"
 * @param stage "cotyledon", "seedling" (to about 5 true leaves) or "older"
 * @param [wilt_prone] Whether the type takes bacterial wilt (default: yes, but for watermelon)
 * @returns A verdict in words
 */
export function beetleVerdictOn(beetles: any, plants: any, crop: any, stage: any, wilt_prone?: any): any {
  return toCell(verdict, [beetles, plants, crop, stage, wilt_prone]);
}
