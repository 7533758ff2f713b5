import { bushelsOf } from '../calc/harvest/bushelsOf';
import { pickingUses } from '../calc/harvest/pickingSizeOf';
import { sizeVerdict } from '../calc/harvest/sizeVerdict';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { number, optionalChoice, text, units } from './parameters';
import { toCell } from './toCell';

export const bushels = define({
  id: 'HARVEST.BUSHELS',
  parameters: [number('pounds'), text('crop')],
  result: 'plain',
  calculate: ([pounds, crop], record) => bushelsOf(pounds, crop, record),
});

/**
 * Bushels in a weight of fruit; legal weights differ by state.
 * @customfunction HARVEST.BUSHELS
 * @param pounds Weight, lb, 0 or more
 * @param crop Crop or trade name, such as "cucumber"
 * @returns Bushels; #N/A for pumpkin, watermelon and gourd
 */
export function harvestBushels(pounds: any, crop: any): any {
  return toCell(bushels, [pounds, crop]);
}

export const sizeOfFruit = define({
  id: 'HARVEST.SIZE',
  parameters: [number('size'), text('crop'), optionalChoice('use', pickingUses), units],
  result: 'plain',
  calculate: ([measured, crop, use, system], record) =>
    catalogue.sizeVerdicts[sizeVerdict(measured, crop, use, system, record)],
});

/**
 * Whether a fruit has the size to be picked.
 * @customfunction HARVEST.SIZE
 * @param size Length of a cucumber or zucchini, diameter of a pumpkin or scallop squash, in (cm)
 * @param crop Crop or trade name, such as "zucchini"
 * @param [use] "fresh" or "pickles" (default: what the crop is grown for)
 * @param [units] "us" (default) or "metric"
 * @returns "under", "ready" or "over"; #N/A with the sign for a crop judged by ripeness
 */
export function harvestSize(size: any, crop: any, use?: any, units?: any): any {
  return toCell(sizeOfFruit, [size, crop, use, units]);
}
