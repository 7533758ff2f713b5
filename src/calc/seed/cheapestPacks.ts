import { checkCount } from '../limits/limits';
import type { Recorder } from '../working';
import { packOffers, partsOfMoney } from './packOffers';

/** Some 8 acres of pickling cucumber for the machine. An answer takes under half a second up to here. */
const mostSeeds = 1_000_000;

interface PacksOfSize {
  readonly size: number;
  readonly count: number;
  readonly cost: number;
}

export interface Order {
  readonly packs: readonly PacksOfSize[];
  readonly count: number;
  readonly cost: number;
}

/**
 * The cheapest packs that hold at least a number of seeds, any number of each; of equally cheap ones the fewest
 * seeds over, then the fewest packs.
 *
 * best(s) = least over the packs on offer of (price, 0, 1) + best(s - size), compared from the left; a last pack
 * that is larger than s adds (price, size - s, 1)
 *
 * @param seeds needed, whole, 1 to 1,000,000
 * @param sizes seeds in each pack, as packOffers
 * @param prices of the packs in the same order, as packOffers
 * @returns the packs to buy in the order of the lists, each size with its cost, and the whole order's count and cost
 * @throws outOfRange, notWhole, and what packOffers throws
 * Source: dynamic programming over the seeds still needed (Bellman), every sum in whole numbers.
 * @example cheapestPacks(1200, [100, 500, 1000], [3.5, 12, 20]) // 2 of 100 and 1 of 1000, cost 27
 */
export function cheapestPacks(
  seeds: number,
  sizes: readonly (number | null)[],
  prices: readonly (number | null)[],
  record?: Recorder,
): Order {
  const needed = checkCount('seeds', seeds, 'seeds', { atLeast: 1, atMost: mostSeeds });
  const offers = packOffers(sizes, prices);

  const cost = new Float64Array(needed + 1);
  const over = new Int32Array(needed + 1);
  const packs = new Int32Array(needed + 1);
  const chosen = new Uint8Array(needed + 1);
  for (let s = 1; s <= needed; s++) {
    let leastCost = Infinity;
    let leastOver = 0;
    let leastPacks = 0;
    for (const [i, { size, price }] of offers.entries()) {
      const left = Math.max(0, s - size);
      const newCost = price + (cost[left] ?? 0);
      if (newCost > leastCost) continue;
      const newOver = left > 0 ? (over[left] ?? 0) : size - s;
      const newPacks = 1 + (packs[left] ?? 0);
      const isNoBetter = newOver > leastOver || (newOver === leastOver && newPacks >= leastPacks);
      if (newCost === leastCost && isNoBetter) continue;
      leastCost = newCost;
      leastOver = newOver;
      leastPacks = newPacks;
      chosen[s] = i;
    }
    cost[s] = leastCost;
    over[s] = leastOver;
    packs[s] = leastPacks;
  }

  const counts = offers.map(() => 0);
  for (let s = needed; s > 0;) {
    const i = chosen[s] ?? 0;
    counts[i] = (counts[i] ?? 0) + 1;
    s -= offers[i]?.size ?? s;
  }
  const bought = offers
    .map(({ size, price }, i) => ({ size, count: counts[i] ?? 0, price }))
    .filter(({ count }) => count > 0)
    .map(({ size, count, price }) => ({ size, count, cost: (count * price) / partsOfMoney }));
  const order = { packs: bought, count: packs[needed] ?? 0, cost: (cost[needed] ?? 0) / partsOfMoney };
  for (const { size, count, cost: costOfSize } of bought) {
    record?.({
      step: 'packsOfSize',
      inputs: { pack_size: size, packs: count },
      result: costOfSize,
      unit: 'none',
    });
  }
  record?.({
    step: 'cheapestPacks',
    inputs: { seeds: needed, packs: order.count, seedsOver: over[needed] ?? 0 },
    result: order.cost,
    unit: 'none',
  });
  return order;
}
