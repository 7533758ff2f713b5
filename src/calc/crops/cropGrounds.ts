import type { Crop, Trait } from '../../reference/crops';
import { refuse } from '../errors';

/**
 * What a figure of a crop stands on.
 *
 * @param crop a record of reference/crops
 * @param trait any trait
 * @returns `grounds`, each a key of reference/sources or "common practice, no source" or "judgement"; `note`, the
 *   key of a remark on the figure, where there is one
 * @throws noFigure
 * Source: reference/crops.
 * @example cropGrounds(findCrop('gourd'), 'hill spacing').grounds // ['common practice, no source']
 */
export function cropGrounds(
  crop: Crop,
  trait: Trait,
): { readonly grounds: readonly string[]; readonly note?: string } {
  return crop.figures[trait] ?? refuse({ code: 'noFigure', crop: crop.name, trait });
}
