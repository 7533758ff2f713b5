import { leastGermination } from '../calc/crops/leastGermination';
import { define } from './define';
import { text } from './parameters';
import { toCell } from './toCell';

export const standard = define({
  id: 'SEED.STANDARD',
  parameters: [text('crop')],
  result: 'plain',
  calculate: ([crop], record) => leastGermination(crop, record),
});

/**
 * Federal germination standard for a crop's seed; below it seed is sold marked "Below Standard".
 * @customfunction SEED.STANDARD
 * @param crop Crop or trade name, such as "cantaloupe"
 * @returns A share, such as 0.8; #N/A for gourd, which the rules do not list
 */
export function seedStandard(crop: any): any {
  return toCell(standard, [crop]);
}
