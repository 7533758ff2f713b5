import { flowerTypes, type Crop, type FlowerType } from '../../reference/crops';

export interface Planting {
  readonly crop: Crop;
  readonly flowerType: FlowerType;
}

const byName: ReadonlyMap<string, FlowerType> = new Map(flowerTypes.map((type) => [type, type]));

/**
 * A crop as it flowers: with the flower type that somebody gave, or its own where none or no known one was given.
 * A triploid crop stays triploid: its packet may call it monoecious, and its pollen is still of no use.
 *
 * @param crop a record of reference/crops
 * @param given a flower type, null or undefined when none was given
 * @returns crop and flower type
 * Source: reference/crops; project convention.
 * @example planting(findCrop('cucumber'), 'Gynoecious').flowerType // 'gynoecious'
 */
export function planting(crop: Crop, given: string | null | undefined): Planting {
  const own = byName.get(crop.figures['flower type']?.text ?? '') ?? 'monoecious';
  const typed = given === null || given === undefined ? undefined : byName.get(given.trim().toLowerCase());
  return { crop, flowerType: own === 'triploid' ? own : (typed ?? own) };
}
