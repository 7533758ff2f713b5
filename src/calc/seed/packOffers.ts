import { refuse } from '../errors';
import { checkCount, checkNumber } from '../limits/limits';
import { asWhole } from '../whole/wholeNumbers';

/** A pack as it is sold. `price` is a whole number of ten-thousandths, so that sums are exact: 0.1 + 0.2 is 0.3. */
export interface PackOffer {
  readonly size: number;
  readonly price: number;
}

const decimals = 4;
export const partsOfMoney = 10 ** decimals;
const mostOffers = 20;
const mostInPack = 1e7;
/** A million such packs still cost a whole number of parts that a double holds. */
const mostPrice = 100_000;

const isNothing = (value: number | null): boolean => value === null || value === 0;

/**
 * The packs on offer, out of the list of their sizes and that of their prices.
 *
 * @param sizes seeds in each pack, whole, 1 to 10,000,000; null and 0 on both sides is no pack
 * @param prices of the packs in the same order, above 0, at most 100,000, at most 4 decimals
 * @returns at least one and at most 20 packs, in the lists' order
 * @throws unequalLists, missing, outOfRange, notWhole, priceTooFine, tooManyPackSizes
 * Source: project convention.
 * @example packOffers([100, null], [3.95, null]) // [{ size: 100, price: 39500 }]
 */
export function packOffers(
  sizes: readonly (number | null)[],
  prices: readonly (number | null)[],
): readonly PackOffer[] {
  if (sizes.length !== prices.length) {
    refuse({
      code: 'unequalLists',
      name: 'pack_sizes',
      count: sizes.length,
      otherName: 'pack_prices',
      otherCount: prices.length,
    });
  }
  const offers = sizes.flatMap((size, i) => {
    const price = prices[i] ?? null;
    return isNothing(size) && isNothing(price) ? [] : offer(size, price);
  });
  if (offers.length === 0) refuse({ code: 'missing', name: 'pack_sizes' });
  if (offers.length > mostOffers) {
    refuse({ code: 'tooManyPackSizes', count: offers.length, most: mostOffers });
  }
  return offers;
}

function offer(size: number | null, price: number | null): PackOffer {
  if (size === null) return refuse({ code: 'missing', name: 'pack_size' });
  if (price === null) return refuse({ code: 'missing', name: 'pack_price' });
  const seeds = checkCount('pack_size', size, 'seeds', { atLeast: 1, atMost: mostInPack });
  checkNumber('pack_price', price, 'none', { above: 0, atMost: mostPrice });
  const parts = asWhole(price * partsOfMoney);
  // A price too small to be counted would be free.
  if (parts === null || parts === 0) return refuse({ code: 'priceTooFine', price, decimals });
  return { size: seeds, price: parts };
}
