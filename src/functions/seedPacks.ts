import { cheapestPacks } from '../calc/seed/cheapestPacks';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { number, numbers } from './parameters';
import { toCells } from './toCell';

export const packs = define({
  id: 'SEED.PACKS',
  parameters: [number('seeds'), numbers('pack_sizes'), numbers('pack_prices')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([seeds, sizes, prices], record) => {
    const order = cheapestPacks(seeds, sizes, prices, record);
    return [
      ...order.packs.map(({ size, count, cost }) => [size, count, cost]),
      [catalogue.orders.total, order.count, order.cost],
    ];
  },
});

/**
 * Cheapest packs that hold at least the seeds needed: a row for each size to buy, then the total.
 * @customfunction SEED.PACKS
 * @param seeds Seeds needed, whole, 1 to 1,000,000
 * @param pack_sizes Range of seeds per pack, whole, at most 20 packs
 * @param pack_prices Range of prices in the same order, at most 4 decimals
 * @returns Rows of pack size, count and cost
 */
export function seedPacks(seeds: any, pack_sizes: any[][], pack_prices: any[][]): any[][] {
  return toCells(packs, [seeds, pack_sizes, pack_prices]);
}
