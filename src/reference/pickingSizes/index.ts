/**
 * Sizes at which fruit is picked that are not the crop's own of reference/crops: young cucumbers for pickles, and
 * scallop squash, which is measured across. And the sign of ripeness of crops that are not picked by size.
 */
import data from './data.json';

export interface PickingSize {
  /** in */
  readonly low: number;
  readonly high: number;
  /** "length" or "diameter". */
  readonly measured: string;
  /** Keys of reference/sources, or words of unsourcedGrounds. */
  readonly grounds: readonly string[];
}

const { pickles, scallop, ripeness } = data;
for (const size of [pickles, scallop]) {
  Object.freeze(size.grounds);
  Object.freeze(size);
}
Object.values(ripeness).forEach(Object.freeze);

export const picklingSize: PickingSize = pickles;
/** Crops of reference/crops that are picked young for pickles. */
export const picklingCrops: readonly string[] = Object.freeze(pickles.crops);

export const scallopSize: PickingSize = scallop;
/** Trade names of summer squash that mean the scallop shape. */
export const scallopNames: readonly string[] = Object.freeze(scallop.names);

export type RipenessSign = 'hardRind' | 'dryStem' | 'slips' | 'groundSpot';

export const ripenessSigns = Object.freeze(ripeness) as Readonly<
  Partial<Record<string, { readonly sign: RipenessSign; readonly ground: string }>>
>;
