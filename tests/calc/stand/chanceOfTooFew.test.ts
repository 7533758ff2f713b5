import { pbinom } from 'lib-r-math.js';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceOfTooFew, mostSeedsSummed } from '../../../src/calc/stand/chanceOfTooFew';
import { exactShortfall, ratioShortfall } from './oracles';

describe('chanceOfTooFew', () => {
  test('fewer than 3 of 5 at 0.8: 0.05792 (hand computed: 0.2^5 + 5 0.8 0.2^4 + 10 0.8^2 0.2^3)', () => {
    expect(chanceOfTooFew(3, 5, 0.8)).toBeCloseTo(0.05792, 14);
  });

  test('exact sums in whole numbers, small tails to their own digits', () => {
    for (const [wanted, seeds, percent] of [
      [3, 5, 80],
      [100, 135, 80],
      [10, 60, 72],
      [1, 20, 93],
      [200, 400, 35],
    ] as const) {
      const exact = exactShortfall(wanted, seeds, percent, 100);
      expect(chanceOfTooFew(wanted, seeds, percent / 100) / exact).toBeCloseTo(1, 10);
    }
  });

  test('lib-r-math.js 2.0.3 for small stands; jstat 1.9.6, whose fraction stops at 3e-7, up to thousands', () => {
    for (const p of [0.11, 0.52, 0.72, 0.93]) {
      for (const [wanted, seeds] of [
        [1, 3],
        [3, 6],
        [20, 29],
      ] as const) {
        expect(chanceOfTooFew(wanted, seeds, p)).toBeCloseTo(pbinom(wanted - 1, seeds, p) as number, 12);
      }
      const mean = Math.round(5000 * p);
      expect(1 - chanceOfTooFew(mean, 5000, p)).toBeCloseTo(jStat.ibeta(p, mean, 5001 - mean), 6);
    }
  });

  test('ratios of terms up to the most seeds that are summed', () => {
    for (const seeds of [1e5, 1e6, mostSeedsSummed]) {
      for (const z of [-3, 0, 2]) {
        const wanted = Math.round(seeds * 0.8 + z * Math.sqrt(seeds * 0.16));
        const expected = ratioShortfall(wanted, seeds, 0.8);
        expect(Math.abs(chanceOfTooFew(wanted, seeds, 0.8) / expected - 1)).toBeLessThan(2e-8);
      }
    }
  });

  test('bounds: none wanted, more wanted than sown, none or all sure to stand', () => {
    expect(chanceOfTooFew(0, 5, 0.8)).toBe(0);
    expect(chanceOfTooFew(6, 5, 0.8)).toBe(1);
    expect(chanceOfTooFew(5, 5, 1)).toBe(0);
    expect(chanceOfTooFew(1, 5, 0)).toBe(1);
    expect(() => chanceOfTooFew(1, 5, NaN)).toThrow('tooLarge');
  });
});
