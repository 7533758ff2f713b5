import type { Recorder } from '../calc/working';
import { cheapestPacks, type Order } from '../calc/seed/cheapestPacks';
import { packsOfCrop } from '../calc/seed/packsOfCrop';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { define } from './define';
import { number, numbersWhenAsked, text, texts, type WhenAsked } from './parameters';
import { toCell } from './toCell';

const parameters = [
  number('seeds'),
  text('crop'),
  texts('all_crops'),
  numbersWhenAsked('pack_sizes', 'pack_size'),
  numbersWhenAsked('pack_prices', 'pack_price'),
] as const;

type Values = [number, string, readonly (string | null)[], readonly WhenAsked[], readonly WhenAsked[]];

/** Lines of other crops are not looked at: what is wrong with one spoils its own crop alone. */
function orderOf([seeds, crop, allCrops, allSizes, allPrices]: Values, record?: Recorder): Order {
  const { sizes, prices } = packsOfCrop(crop, allCrops, allSizes, allPrices);
  const asked = (figures: readonly WhenAsked[]): (number | null)[] => figures.map((figure) => figure());
  return cheapestPacks(seeds, asked(sizes), asked(prices), record);
}

export const packCost = define({
  id: 'SEED.PACKCOST',
  parameters,
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: (values, record) => orderOf(values, record).cost,
});

/**
 * Cost of the cheapest packs of a crop, out of a price list of all crops, that hold the seeds needed.
 * @customfunction SEED.PACKCOST
 * @param seeds Seeds needed, whole, 1 to 1,000,000
 * @param crop Crop or trade name, such as "cantaloupe"
 * @param all_crops Range of the price list's crops or trade names
 * @param pack_sizes Range of seeds per pack, whole, of equal length
 * @param pack_prices Range of prices in the same order, at most 4 decimals
 * @returns Money; #N/A where the list has no pack of the crop
 */
export function seedPackCost(
  seeds: any,
  crop: any,
  all_crops: any[][],
  pack_sizes: any[][],
  pack_prices: any[][],
): any {
  return toCell(packCost, [seeds, crop, all_crops, pack_sizes, pack_prices]);
}

export const packList = define({
  id: 'SEED.PACKLIST',
  parameters,
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: (values, record) =>
    orderOf(values, record)
      .packs.map((packs) => fill(catalogue.orders.packs, { ...packs }))
      .join(catalogue.orders.and),
});

/**
 * The packs that SEED.PACKCOST gives the cost of, as a text: how many of each size.
 * @customfunction SEED.PACKLIST
 * @param seeds Seeds needed, whole, 1 to 1,000,000
 * @param crop Crop or trade name, such as "cantaloupe"
 * @param all_crops Range of the price list's crops or trade names
 * @param pack_sizes Range of seeds per pack, whole, of equal length
 * @param pack_prices Range of prices in the same order, at most 4 decimals
 * @returns A text such as "2 of 100, 1 of 1000"; #N/A where the list has no pack of the crop
 */
export function seedPackList(
  seeds: any,
  crop: any,
  all_crops: any[][],
  pack_sizes: any[][],
  pack_prices: any[][],
): any {
  return toCell(packList, [seeds, crop, all_crops, pack_sizes, pack_prices]);
}
