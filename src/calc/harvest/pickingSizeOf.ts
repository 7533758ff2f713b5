import type { Crop } from '../../reference/crops';
import {
  picklingCrops,
  picklingSize,
  ripenessSigns,
  scallopNames,
  scallopSize,
  type PickingSize,
} from '../../reference/pickingSizes';
import { plainName } from '../crops/plainName';
import { refuse } from '../errors';

export const pickingUses = ['fresh', 'pickles'] as const;
export type PickingUse = (typeof pickingUses)[number];

/** The one whose own size is that for pickles. */
const picklingType = 'pickling cucumber';

/**
 * The size at which fruit is picked for a use.
 *
 * @param crop a record of reference/crops
 * @param name what it was called: a trade name may mean a shape
 * @param use "fresh" or "pickles"; undefined: what the crop is grown for
 * @returns bounds in inches, how it is measured, and the grounds
 * @throws judgedByRipeness, noSizeForUse
 * Source: reference/pickingSizes and reference/crops, which name the grounds of each.
 * @example pickingSizeOf(findCrop('zucchini'), 'zucchini', undefined) // 6 to 8 in of length
 */
export function pickingSizeOf(crop: Crop, name: string, use: PickingUse | undefined): PickingSize {
  const ownUse = crop.name === picklingType ? 'pickles' : 'fresh';
  const wanted = use ?? ownUse;
  if (wanted === 'pickles' && picklingCrops.includes(crop.name)) return picklingSize;
  const size = crop.figures['picking size'];
  const measured = crop.figures['size measured'];
  if (wanted === ownUse) {
    if (scallopNames.includes(plainName(name))) return scallopSize;
    if (size !== undefined && measured !== undefined) return { ...size, measured: measured.text };
    const ripe = ripenessSigns[crop.name];
    if (ripe !== undefined) refuse({ code: 'judgedByRipeness', crop: crop.name, sign: ripe.sign });
  }
  return refuse({ code: 'noSizeForUse', crop: crop.name, use: wanted });
}
