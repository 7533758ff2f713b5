import fc from 'fast-check';
import { jStat } from 'jstat';
import { qnbinom } from 'lib-r-math.js';
import { describe, expect, test, vi } from 'vitest';
import { chanceOfTooFew } from '../../../src/calc/stand/chanceOfTooFew';
import { leastSeeds } from '../../../src/calc/stand/leastSeeds';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';
import { exactShortfall, ratioShortfall } from './oracles';

vi.mock(import('../../../src/calc/stand/chanceOfTooFew'), { spy: true });

const assurances = [0.05, 0.5, 0.8, 0.9, 0.95, 0.99, 0.999, 0.999999];

describe('leastSeeds', () => {
  test.each([
    [1, 0.5, 0.5, 1, '1 - 0.5'],
    [1, 0.5, 0.75, 2, '1 - 0.5^2, exactly enough'],
    [1, 0.7, 0.91, 2, '1 - 0.3^2, exactly enough where binary fractions say 0.9099999999999999'],
    [1, 0.9, 0.99, 2, '1 - 0.1^2, exactly enough'],
    [1, 0.1, 0.95, 29, '0.9^28 = 0.0523, 0.9^29 = 0.0471'],
    [2, 0.5, 0.5, 3, '(3 + 1)/8, exactly enough'],
    [3, 0.8, 0.94, 5, '0.94208 of five'],
    [7, 1, 0.999999, 7, 'no seed fails'],
  ])('%d standing at %d with %d: %d (hand computed: %s)', (wanted, chance, assurance, expected) => {
    expect(leastSeeds(wanted, chance, assurance)).toBe(expected);
  });

  test('enough, and one fewer is not, by exact sums in whole numbers', () => {
    for (const wanted of [1, 2, 3, 10, 50, 150]) {
      for (const percent of [7, 35, 50, 72, 80, 95]) {
        for (const assurance of assurances) {
          const seeds = leastSeeds(wanted, percent / 100, assurance);
          const allowed = Number((1 - assurance).toFixed(12));
          expect(exactShortfall(wanted, seeds, percent, 100)).toBeLessThanOrEqual(allowed);
          expect(exactShortfall(wanted, seeds - 1, percent, 100)).toBeGreaterThan(allowed);
        }
      }
    }
  });

  test('enough, and one fewer is not, up to a million plants, by ratios of terms', () => {
    for (const wanted of [500, 12_345, 100_000, 1_000_000]) {
      for (const chance of [0.3, 0.5, 0.72, 0.9, 0.999]) {
        for (const assurance of [...assurances, 1 - 1e-9, 1 - 1e-12]) {
          const seeds = leastSeeds(wanted, chance, assurance);
          expect(ratioShortfall(wanted, seeds, chance)).toBeLessThanOrEqual(
            (1 - assurance) * (1 + 1e-8) + 1e-15,
          );
          if (seeds > wanted) {
            expect(ratioShortfall(wanted, seeds - 1, chance)).toBeGreaterThan(1 - assurance);
          }
        }
      }
    }
  });

  test('the quantile of the negative binomial by lib-r-math.js 2.0.3, where that is exact', () => {
    for (const wanted of [2, 3, 5, 10, 20, 50]) {
      for (const chance of [0.11, 0.31, 0.52, 0.71, 0.82, 0.93, 0.99]) {
        for (const assurance of assurances) {
          expect(leastSeeds(wanted, chance, assurance)).toBe(wanted + qnbinom(assurance, wanted, chance));
        }
      }
    }
  });

  test('the incomplete beta function of jstat 1.9.6 agrees up to 10,000 plants', () => {
    for (const wanted of [2, 3, 10, 100, 1000, 10_000]) {
      for (const chance of [0.11, 0.31, 0.52, 0.71, 0.93]) {
        for (const assurance of assurances) {
          const seeds = leastSeeds(wanted, chance, assurance);
          expect(jStat.ibeta(chance, wanted, seeds - wanted + 1)).toBeGreaterThanOrEqual(assurance);
          if (seeds > wanted) expect(jStat.ibeta(chance, wanted, seeds - wanted)).toBeLessThan(assurance);
        }
      }
    }
  });

  test('never fewer than wanted; more for more plants, for a surer stand and for poorer seed', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        share,
        share,
        share,
        (wanted, chance, assurance, other) => {
          const seeds = leastSeeds(wanted, chance, assurance);
          expect(seeds).toBeGreaterThanOrEqual(wanted);
          expect(leastSeeds(wanted + 1, chance, assurance)).toBeGreaterThan(seeds);
          expect(leastSeeds(wanted, chance, Math.max(assurance, other))).toBeGreaterThanOrEqual(seeds);
          expect(leastSeeds(wanted, Math.min(chance, other), assurance)).toBeGreaterThanOrEqual(seeds);
        },
      ),
      seeded,
    );
  });

  test('a million plants take some twenty sums: the search starts near its end', () => {
    vi.mocked(chanceOfTooFew).mockClear();
    for (let i = 0; i < 20; i++) leastSeeds(1_000_000 + i, 0.8, 0.95);
    expect(vi.mocked(chanceOfTooFew).mock.calls.length / 20).toBeLessThan(30);
  });

  test('more than the library sums are refused with the limit, and nothing is ever NaN', () => {
    const limit = { code: 'tooManyForAssurance', most: 1e8 };
    expect(refusalOf(() => leastSeeds(1, 1e-300, 0.95))).toEqual(limit);
    expect(refusalOf(() => leastSeeds(1e15, 1e-3, 0.95))).toEqual(limit);
    expect(refusalOf(() => leastSeeds(1e8, 0.999_999, 0.95))).toEqual(limit);
    expect(() => leastSeeds(1, NaN, 0.95)).toThrow('tooLarge');
  });
});
