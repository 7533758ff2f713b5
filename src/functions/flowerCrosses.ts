import { findCrop } from '../calc/crops/findCrop';
import { crossing } from '../calc/flowers/crossing';
import { sayCrossing } from './sayCrossing';
import { define } from './define';
import { optionalYesOrNo, text } from './parameters';
import { toCell } from './toCell';

export const crosses = define({
  id: 'FLOWER.CROSSES',
  parameters: [text('crop_a'), text('crop_b'), optionalYesOrNo('saving_seed')],
  result: 'plain',
  calculate: ([cropA, cropB, saving], record) =>
    sayCrossing(crossing(findCrop(cropA), findCrop(cropB), saving, record), saving === true),
});

/**
 * Whether two crops cross, and what that means for this year's fruit and for saved seed.
 * @customfunction FLOWER.CROSSES
 * @param crop_a Crop or trade name, such as "zucchini"
 * @param crop_b Crop or trade name of the other
 * @param [saving_seed] TRUE if seed is to be saved (default FALSE)
 * @returns A verdict in words
 */
export function flowerCrosses(crop_a: any, crop_b: any, saving_seed?: any): any {
  return toCell(crosses, [crop_a, crop_b, saving_seed]);
}
