import { crops, type Crop } from '../../reference/crops';
import { refuse } from '../errors';
import { cropNamed } from './cropNamed';
import { nearestNames } from './nearestNames';

/**
 * The crop that a name or trade name stands for.
 *
 * @param name a crop's name or synonym, capitals and spaces as they come
 * @returns the crop's record
 * @throws unknownName with the nearest names
 * Source: reference/crops; synonyms are the trade's.
 * @example findCrop(' Zucchini ').name // 'summer squash'
 */
export function findCrop(name: string): Crop {
  const crop = cropNamed(name);
  if (crop !== undefined) return crop;
  const names = [...crops.map((one) => one.name), ...crops.flatMap((one) => one.synonyms)];
  return refuse({
    code: 'unknownName',
    kind: 'crop',
    given: name.trim(),
    nearest: nearestNames(name, names),
  });
}
