import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packOffers, partsOfMoney } from '../../../src/calc/seed/packOffers';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

describe('packOffers', () => {
  test('prices become whole ten-thousandths; nothing or 0 on both sides is no pack', () => {
    expect(packOffers([100, null, 0, 500, 0, null], [3.95, null, 0, 0.0001, null, 0])).toEqual([
      { size: 100, price: 39500 },
      { size: 500, price: 1 },
    ]);
  });

  test('every price in cents, as it is typed and as a sum of cents leaves it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9_999_999 }), (cents) => {
        expect(packOffers([1], [cents / 100])[0]?.price).toBe(cents * 100);
        expect(packOffers([1], [cents * 0.01])[0]?.price).toBe(cents * 100);
      }),
      seeded,
    );
    expect(partsOfMoney).toBe(10_000);
  });

  test('bounds, just in and just out', () => {
    expect(packOffers([10_000_000], [100_000])).toHaveLength(1);
    expect(packOffers(Array<number>(20).fill(1), Array<number>(20).fill(1))).toHaveLength(20);
    expect(refusalOf(() => packOffers(Array<number>(21).fill(1), Array<number>(21).fill(1)))).toEqual({
      code: 'tooManyPackSizes',
      count: 21,
      most: 20,
    });
    for (const bad of [0, -100, 10_000_001, NaN]) {
      expect(refusalOf(() => packOffers([bad], [3]))).toMatchObject({
        code: 'outOfRange',
        name: 'pack_size',
      });
    }
    expect(refusalOf(() => packOffers([99.5], [3]))).toMatchObject({ code: 'notWhole', name: 'pack_size' });
    for (const bad of [0, -3, 100_001, NaN, Infinity]) {
      expect(refusalOf(() => packOffers([100], [bad]))).toMatchObject({
        code: 'outOfRange',
        name: 'pack_price',
      });
    }
    for (const bad of [10 / 3, 0.00004, 1e-14]) {
      expect(refusalOf(() => packOffers([100], [bad]))).toEqual({
        code: 'priceTooFine',
        price: bad,
        decimals: 4,
      });
    }
  });

  test('lists that do not go together', () => {
    expect(refusalOf(() => packOffers([100, 500], [3]))).toEqual({
      code: 'unequalLists',
      name: 'pack_sizes',
      count: 2,
      otherName: 'pack_prices',
      otherCount: 1,
    });
    expect(refusalOf(() => packOffers([null, 100], [3, 4]))).toEqual({ code: 'missing', name: 'pack_size' });
    expect(refusalOf(() => packOffers([100], [null]))).toEqual({ code: 'missing', name: 'pack_price' });
    for (const none of [[], [null], [0]]) {
      expect(refusalOf(() => packOffers(none, none))).toEqual({ code: 'missing', name: 'pack_sizes' });
    }
  });
});
