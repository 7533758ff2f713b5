import { cropNamed } from '../crops/cropNamed';
import { findCrop } from '../crops/findCrop';
import { refuse } from '../errors';

/** Of the packs of one crop, in the order of the price list. */
interface PacksOfCrop<Figure> {
  readonly sizes: readonly Figure[];
  readonly prices: readonly Figure[];
}

/**
 * One crop's packs out of a price list of all crops.
 *
 * @param cropName a crop's name or synonym
 * @param allCrops of each pack on the list, its crop's name or synonym; null where none is named. A name that is not
 *   known counts for nothing: its own line says so
 * @param sizes of the packs in the same order, as they come: only those of the crop need be numbers
 * @param prices of the packs in the same order, likewise
 * @returns at least one pack
 * @throws unknownName, unequalLists, noPackListed
 * Source: project convention.
 * @example packsOfCrop('melon', ['muskmelon', 'gourd'], [100, 50], [3.5, 4]) // { sizes: [100], prices: [3.5] }
 */
export function packsOfCrop<Figure>(
  cropName: string,
  allCrops: readonly (string | null)[],
  sizes: readonly Figure[],
  prices: readonly Figure[],
): PacksOfCrop<Figure> {
  const crop = findCrop(cropName);
  const others = { pack_sizes: sizes.length, pack_prices: prices.length };
  for (const [otherName, otherCount] of Object.entries(others)) {
    if (otherCount === allCrops.length) continue;
    refuse({ code: 'unequalLists', name: 'all_crops', count: allCrops.length, otherName, otherCount });
  }
  const isOfCrop = (_: Figure, index: number): boolean => {
    const name = allCrops[index] ?? null;
    return name !== null && cropNamed(name) === crop;
  };
  const own = { sizes: sizes.filter(isOfCrop), prices: prices.filter(isOfCrop) };
  return own.sizes.length > 0 ? own : refuse({ code: 'noPackListed', crop: crop.name });
}
