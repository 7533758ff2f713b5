import fc from 'fast-check';
import { choose, beta } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { betaBinomialDensity } from '../../../src/calc/stand/betaBinomialDensity';
import { seeded } from '../dates/calendar';

describe('betaBinomialDensity', () => {
  test('with a flat prior all counts are as likely (hand computed: 1/(n + 1))', () => {
    for (let x = 0; x <= 9; x++) expect(betaBinomialDensity(x, 9, 1, 1)).toBeCloseTo(0.1, 14);
  });

  test('agrees with choose(n, x) B(x + a, n - x + b)/B(a, b) by lib-r-math.js 2.0.3', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 120 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        (n, part, a, b) => {
          const x = Math.round(n * part);
          const expected = (choose(n, x) * beta(x + a, n - x + b)) / beta(a, b);
          expect(betaBinomialDensity(x, n, a, b) / expected).toBeCloseTo(1, 8);
        },
      ),
      seeded,
    );
  });

  test('the chances of all counts add up to 1, a million trials included', () => {
    for (const [n, a, b] of [
      [147, 40.5, 10.5],
      [1_000_000, 0.51, 1.49],
    ] as const) {
      let sum = 0;
      for (let x = 0; x <= n; x++) sum += betaBinomialDensity(x, n, a, b);
      expect(sum).toBeCloseTo(1, 11);
    }
  });

  test('a large test of the seed leaves the plain binomial (limit, to 1e-5)', () => {
    // C(10, 8) 0.8^8 0.2^2, hand computed.
    expect(betaBinomialDensity(8, 10, 8e6, 2e6)).toBeCloseTo(0.301989888, 5);
  });
});
