import type { Crop } from '../../reference/crops';
import type { Recorder } from '../working';
import { cropText } from './cropText';

/**
 * The species that a crop's fruit may belong to, written out. The reference has them as one phrase, such as
 * "Cucurbita pepo (small ornamental) or Lagenaria siceraria (hard-shell)" or "Cucurbita pepo or C. maxima".
 *
 * @param crop a record of reference/crops
 * @returns species, in the phrase's order
 * @throws noFigure
 * Source: reference/crops; Robinson and Decker-Walters, 1997, from memory, check.
 * @example speciesOfCrop(findCrop('acorn squash')) // ['Cucurbita pepo', 'Cucurbita maxima']
 */
export function speciesOfCrop(crop: Crop, record?: Recorder): readonly string[] {
  const names = cropText(crop, 'species', record)
    .replace(/\([^)]*\)/g, '')
    .split(/,| or /)
    .map((name) => name.trim());
  const genus = names[0]?.split(' ')[0] ?? '';
  return names.map((name) => name.replace(/^[A-Z]\. /, `${genus} `));
}
