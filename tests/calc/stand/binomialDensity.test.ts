import fc from 'fast-check';
import { dbinom } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { binomialDensity } from '../../../src/calc/stand/binomialDensity';
import { seeded } from '../dates/calendar';

describe('binomialDensity', () => {
  test.each([
    [3, 5, 0.8, 0.2048, '10 x 0.8^3 x 0.2^2'],
    [0, 4, 0.5, 0.0625, '0.5^4'],
    [4, 4, 0.5, 0.0625, '0.5^4'],
    [0, 0, 0.3, 1, 'no trial'],
    [0.5, 1, 0.5, 2 / Math.PI, 'Gamma(2)/Gamma(3/2)^2 x 1/2 = 4/pi x 1/2'],
  ])('%d of %d at %d is %d (hand computed: %s)', (x, n, p, expected) => {
    expect(binomialDensity(x, n, p)).toBeCloseTo(expected, 14);
  });

  test('agrees with lib-r-math.js 2.0.3 dbinom to 1e-12 relative', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (n, part, p) => {
          const x = Math.round(n * part);
          const other = dbinom(x, n, p);
          if (other > 1e-280) expect(binomialDensity(x, n, p) / other).toBeCloseTo(1, 11);
        },
      ),
      seeded,
    );
  });

  test('the chances of all counts add up to 1', () => {
    for (const [n, p] of [
      [7, 0.8],
      [500, 0.02],
      [100_000, 0.5],
    ] as const) {
      let sum = 0;
      for (let x = 0; x <= n; x++) sum += binomialDensity(x, n, p);
      expect(sum).toBeCloseTo(1, 11);
    }
  });

  test('the two branches of the deviance meet', () => {
    // n p = 0.1 (x + n p) apart from x at p = 0.9/1.1 x/n; 1e-9 to each side.
    const at = ((0.9 / 1.1) * 500) / 1000;
    expect(
      binomialDensity(500, 1000, at * (1 + 1e-9)) / binomialDensity(500, 1000, at * (1 - 1e-9)),
    ).toBeCloseTo(1, 6);
  });
});
