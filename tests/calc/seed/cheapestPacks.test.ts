import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPacks } from '../../../src/calc/seed/cheapestPacks';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

/** Every way to fill the need, pack by pack; the least of (cost in cents, seeds over, packs) in that order. */
function bruteForce(needed: number, sizes: readonly number[], cents: readonly number[]): readonly number[] {
  let least: readonly number[] = [Infinity, 0, 0];
  const fillUp = (i: number, left: number, cost: number, packs: number): void => {
    if (left <= 0) {
      const found = [cost, 0 - left, packs];
      const first = found.findIndex((value, k) => value !== least[k]);
      if (first >= 0 && (found[first] ?? 0) < (least[first] ?? 0)) least = found;
      return;
    }
    const size = sizes[i];
    if (size === undefined) return;
    for (let count = 0; ; count++) {
      fillUp(i + 1, left - count * size, cost + count * (cents[i] ?? 0), packs + count);
      if (count * size >= left) break;
    }
  };
  fillUp(0, needed, 0, 0);
  return least;
}

describe('cheapestPacks', () => {
  test.each([
    [
      1200,
      [100, 500, 1000],
      [3.5, 12, 20],
      [
        [100, 2, 7],
        [1000, 1, 20],
      ],
      '20 + 7 under 2 x 12 + 7 and 32',
    ],
    [450, [100, 500], [3, 12], [[500, 1, 12]], 'one large under 5 x 3'],
    [1, [1000], [20], [[1000, 1, 20]], 'a whole pack for one seed'],
    [7, [5, 10], [5, 10], [[10, 1, 10]], '5 + 5 and 10 cost the same and hold the same: fewer packs'],
    [9, [10, 12], [3, 3], [[10, 1, 3]], 'as dear: fewer seeds over'],
    [100, [100, 100], [5, 4.5], [[100, 1, 4.5]], 'one size at two prices'],
  ] as const)('%d seeds of packs %j at %j: %j (hand computed: %s)', (seeds, sizes, prices, packs, _why) => {
    const order = cheapestPacks(seeds, sizes, prices);
    expect(order.packs.map(({ size, count, cost }) => [size, count, cost])).toEqual(packs);
    expect(order.cost).toBe(packs.reduce((sum, [, , cost]) => sum + cost, 0));
  });

  test('prices add up exactly: 3 packs at 0.1 are 0.3, 7 at 3.95 are 27.65', () => {
    expect(cheapestPacks(3, [1], [0.1])).toEqual({
      packs: [{ size: 1, count: 3, cost: 0.3 }],
      count: 3,
      cost: 0.3,
    });
    expect(cheapestPacks(700, [100], [3.95]).cost).toBe(27.65);
    // 0.1 + 0.2 against 0.3: equal, so fewer packs, though binary fractions make 0.30000000000000004 of the two.
    expect(cheapestPacks(3, [1, 2, 3], [0.1, 0.2, 0.3]).packs).toEqual([{ size: 3, count: 1, cost: 0.3 }]);
  });

  test('brute force over every way to fill the need', () => {
    const pack = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 40 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.array(pack, { minLength: 1, maxLength: 4 }),
        (needed, packs) => {
          const sizes = packs.map(([size]) => size);
          const cents = packs.map(([, price]) => price);
          const before = JSON.stringify([sizes, cents]);
          const prices = cents.map((price) => price / 100);
          const order = cheapestPacks(needed, sizes, prices);
          const held = order.packs.reduce((sum, { size, count }) => sum + size * count, 0);
          const found = [Math.round(order.cost * 100), held - needed, order.count];
          expect(found).toEqual(bruteForce(needed, sizes, cents));
          expect(order.cost * 100).toBeCloseTo(Math.round(order.cost * 100), 9);
          expect(JSON.stringify([sizes, cents])).toBe(before);
        },
      ),
      seeded,
    );
  });

  test('more seeds never cost less, and a further offer never makes them dearer', () => {
    const pack = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 9999 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.array(pack, { minLength: 2, maxLength: 6 }),
        (needed, packs) => {
          const sizes = packs.map(([size]) => size);
          const prices = packs.map(([, price]) => price / 100);
          const { cost } = cheapestPacks(needed, sizes, prices);
          expect(cheapestPacks(needed + 1, sizes, prices).cost).toBeGreaterThanOrEqual(cost);
          const fewer = cheapestPacks(needed, sizes.slice(1), prices.slice(1));
          expect(fewer.cost).toBeGreaterThanOrEqual(cost);
        },
      ),
      { ...seeded, numRuns: 100 },
    );
  });

  test('the most seeds and the most packs are answered: a trial of all orders would never end', () => {
    const sizes = Array.from({ length: 20 }, (_, i) => 7 + 13 * i);
    const order = cheapestPacks(
      1_000_000,
      sizes,
      sizes.map((size) => (3 * size + (size % 5)) / 100),
    );
    // No seed is cheaper than 0.03, and 50,000 packs of 20 at 0.60 cost just that.
    expect(order.cost).toBeCloseTo(30_000, 9);
    const held = order.packs.reduce((sum, { size, count }) => sum + size * count, 0);
    expect(held).toBeGreaterThanOrEqual(1_000_000);
  });

  test('bounds of the seeds', () => {
    for (const bad of [0, -1, 1_000_001, NaN]) {
      expect(refusalOf(() => cheapestPacks(bad, [100], [3]))).toMatchObject({
        code: 'outOfRange',
        name: 'seeds',
        atLeast: 1,
        atMost: 1_000_000,
      });
    }
    expect(refusalOf(() => cheapestPacks(1.5, [100], [3]))).toMatchObject({
      code: 'notWhole',
      name: 'seeds',
    });
  });

  test('the working has the cost of each size and ends in that of the order', () => {
    const { value, steps } = recording((record) =>
      cheapestPacks(1200, [100, 500, 1000], [3.5, 12, 20], record),
    );
    expect(value).toEqual(cheapestPacks(1200, [100, 500, 1000], [3.5, 12, 20]));
    expect(steps.map(({ step, inputs, result }) => [step, inputs, result])).toEqual([
      ['packsOfSize', { pack_size: 100, packs: 2 }, 7],
      ['packsOfSize', { pack_size: 1000, packs: 1 }, 20],
      ['cheapestPacks', { seeds: 1200, packs: 3, seedsOver: 0 }, value.cost],
    ]);
  });
});
