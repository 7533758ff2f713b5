import { seedLifeLeft } from '../calc/seed/seedLifeLeft';
import { define } from './define';
import { number, text } from './parameters';
import { toCell } from './toCell';

export const left = define({
  id: 'SEED.STORAGELEFT',
  parameters: [text('crop'), number('year_packed'), number('year')],
  result: 'plain',
  calculate: ([crop, packed, year], record) => seedLifeLeft(crop, packed, year, record),
});

/**
 * Years that stored seed should still keep, by the shorter of published lives; test it before use.
 * @customfunction SEED.STORAGELEFT
 * @param crop Crop or trade name, such as "cantaloupe"
 * @param year_packed Year on the packet, such as 2024
 * @param year Year of sowing, not before the year on the packet
 * @returns Years, 0 when outlived; #N/A for gourd, which the lists leave out
 */
export function seedStorageLeft(crop: any, year_packed: any, year: any): any {
  return toCell(left, [crop, year_packed, year]);
}
