import fc from 'fast-check';
import { dbeta, pbinom } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { chancesAroundTested } from '../../../src/calc/stand/chancesAroundTested';
import { leastSeeds } from '../../../src/calc/stand/leastSeeds';
import { leastSeedsOfTested } from '../../../src/calc/stand/leastSeedsOfTested';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

/**
 * The chance of a full stand, by the midpoint rule over the density of the germination, lib-r-math.js 2.0.3 for both
 * factors: Integral of dbeta(q, a, b) P(Binomial(n, q e) >= k), with q = sin^2 t, which takes away the pole at 1.
 */
function integratedChance(k: number, n: number, g: number, e: number, tested: number): number {
  const a = g * tested + 0.5;
  const b = (1 - g) * tested + 0.5;
  const pieces = 2000;
  const h = Math.PI / 2 / pieces;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const t = (i + 0.5) * h;
    const q = Math.sin(t) ** 2;
    const stands = n < k ? 0 : 1 - pbinom(k - 1, n, q * e);
    sum += dbeta(q, a, b) * Math.sin(2 * t) * stands;
  }
  return sum * h;
}

describe('leastSeedsOfTested', () => {
  test.each([
    [400, 1, 136],
    [50, 1, 147],
    [10, 1, 184],
    [400, 0.9, 153],
  ])(
    '100 plants at 80 %% of %d tested, emergence %d, 95 %%: %d (functions.md, computed twice there)',
    (tested, emergence, expected) => {
      expect(leastSeedsOfTested(100, 0.8, emergence, 0.95, tested)).toBe(expected);
    },
  );

  test('one plant, one seed tested and good (hand computed: Beta(3/2, 1/2), mean 3/4)', () => {
    expect(leastSeedsOfTested(1, 1, 1, 0.75, 1)).toBe(1);
    expect(leastSeedsOfTested(1, 1, 1, 0.751, 1)).toBe(2);
    // Two seeds: 1 - E[(1 - q)^2] = 1 - (1/2 x 3/2)/(2 x 3) = 7/8.
    expect(leastSeedsOfTested(1, 1, 1, 0.875, 1)).toBe(2);
    expect(leastSeedsOfTested(1, 1, 1, 0.876, 1)).toBe(3);
    // Half of what germinates stands: P = 1/2 x 3/4; two seeds: 1 - E[(1 - q/2)^2] = 3/4 - E[q^2]/4 = 19/32.
    expect(leastSeedsOfTested(1, 1, 0.5, 0.375, 1)).toBe(1);
    expect(leastSeedsOfTested(1, 1, 0.5, 0.59375, 1)).toBe(2);
    expect(leastSeedsOfTested(1, 1, 0.5, 0.594, 1)).toBe(3);
  });

  test('enough, and one fewer is not, by integration over the germination', () => {
    for (const wanted of [1, 3, 20, 60]) {
      for (const germination of [0.35, 0.8, 1]) {
        for (const emergence of [1, 0.9, 0.43]) {
          for (const tested of [10, 53, 400]) {
            for (const assurance of [0.31, 0.9, 0.953]) {
              const seeds = leastSeedsOfTested(wanted, germination, emergence, assurance, tested);
              const said = `${wanted} at ${germination} x ${emergence}, ${tested} tested, ${assurance}: ${seeds}`;
              const chance = (n: number): number =>
                integratedChance(wanted, n, germination, emergence, tested);
              expect(chance(seeds), said).toBeGreaterThanOrEqual(assurance - 1e-6);
              expect(chance(seeds - 1), said).toBeLessThan(assurance + 1e-6);
            }
          }
        }
      }
    }
  });

  test('a huge test is believed: as many seeds as without the doubt', () => {
    for (const [wanted, emergence] of [
      [100, 1],
      [100, 0.9],
      [1000, 0.5],
    ] as const) {
      expect(leastSeedsOfTested(wanted, 0.8, emergence, 0.95, 1e9)).toBe(
        leastSeeds(wanted, 0.8 * emergence, 0.95),
      );
    }
  });

  test('a larger test, better seed or a lower assurance never asks for more seed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        fc.double({ min: 0.6, max: 0.99, noNaN: true }),
        fc.integer({ min: 20, max: 500 }),
        (wanted, germination, emergence, assurance, tested) => {
          const seeds = leastSeedsOfTested(wanted, germination, emergence, assurance, tested);
          expect(seeds).toBeGreaterThanOrEqual(wanted);
          expect(leastSeedsOfTested(wanted + 1, germination, emergence, assurance, tested)).toBeGreaterThan(
            seeds,
          );
          expect(
            leastSeedsOfTested(wanted, germination * 0.9, emergence, assurance, tested),
          ).toBeGreaterThanOrEqual(seeds);
          expect(
            leastSeedsOfTested(wanted, germination, emergence * 0.9, assurance, tested),
          ).toBeGreaterThanOrEqual(seeds);
          expect(
            leastSeedsOfTested(wanted, germination, emergence, assurance - 0.1, tested),
          ).toBeLessThanOrEqual(seeds);
        },
      ),
      seeded,
    );
  });

  test('the most plants it takes are answered', () => {
    expect(leastSeedsOfTested(200_000, 0.8, 1, 0.95, 400)).toBeGreaterThan(250_000);
    expect(leastSeedsOfTested(200, 1, 0.001, 0.95, 400)).toBeGreaterThan(200_000);
  });

  test('over the limits: too many plants, an emergence next to nothing, a test that says too little', () => {
    expect(refusalOf(() => leastSeedsOfTested(200_001, 0.8, 1, 0.95, 400))).toEqual({
      code: 'tooManyForTested',
      plants: 200_001,
      most: 200_000,
    });
    expect(refusalOf(() => leastSeedsOfTested(10, 0.8, 0.0009, 0.95, 400))).toMatchObject({
      code: 'outOfRange',
      name: 'field_emergence',
      atLeast: 0.001,
    });
    expect(refusalOf(() => leastSeedsOfTested(1000, 0.01, 1, 0.99999, 1))).toEqual({
      code: 'tooFewTested',
      tested: 1,
      assurance: 0.99999,
    });
  });
});

test('the chances of so many seeds and of one fewer show that they are the fewest', () => {
  // By hand, as above: 3/4 of one seed, 7/8 of two; none of no seeds.
  expect(chancesAroundTested(1, 2, 1, 1, 1)).toEqual({
    chanceOfThese: expect.closeTo(7 / 8, 12),
    chanceOfOneFewer: expect.closeTo(3 / 4, 12),
  });
  expect(chancesAroundTested(1, 1, 1, 0.5, 1)).toEqual({
    chanceOfThese: expect.closeTo(3 / 8, 12),
    chanceOfOneFewer: 0,
  });
  expect(chancesAroundTested(100, 153, 0.8, 0.9, 400)).toEqual({
    chanceOfThese: expect.closeTo(integratedChance(100, 153, 0.8, 0.9, 400), 8),
    chanceOfOneFewer: expect.closeTo(integratedChance(100, 152, 0.8, 0.9, 400), 8),
  });
});
