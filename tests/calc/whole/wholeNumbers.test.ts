import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asWhole, ceilWhole, floorWhole } from '../../../src/calc/whole/wholeNumbers';
import { seeded } from '../dates/calendar';

describe('whole numbers without the traps of binary fractions', () => {
  test.each([
    [0.6 / 0.2, 3, '2.9999999999999996'],
    [(1.2 * 100) / 20, 6, '6'],
    [1.2 / 0.2, 6, '5.999999999999999'],
    [21 / 0.7, 30, '30.000000000000004'],
    [56 / (0.7 * 0.8), 100, '100.00000000000001'],
    [0.1 + 0.2 + 0.7, 1, '1'],
    [0, 0, '0'],
    [-0.3 / 0.1, -3, '-2.9999999999999996'],
  ])('%d is %d', (value, whole) => {
    expect(floorWhole(value)).toBe(whole);
    expect(ceilWhole(value)).toBe(whole);
    expect(asWhole(value)).toBe(whole);
  });

  test('near is 1e-9 relative, absolute under 1', () => {
    expect([floorWhole(5 - 4e-9), floorWhole(5 - 6e-9)]).toEqual([5, 4]);
    expect([ceilWhole(5 + 4e-9), ceilWhole(5 + 6e-9)]).toEqual([5, 6]);
    expect([ceilWhole(0.9e-9), ceilWhole(1.1e-9)]).toEqual([0, 1]);
    expect([floorWhole(1e6 - 5e-4), floorWhole(1e6 - 2e-3)]).toEqual([1e6, 1e6 - 1]);
    expect([asWhole(2.5), asWhole(3 + 1e-6)]).toEqual([null, null]);
  });

  test('NaN and infinity pass through, so that they are seen', () => {
    expect(floorWhole(NaN)).toBeNaN();
    expect(ceilWhole(NaN)).toBeNaN();
    expect(asWhole(NaN)).toBeNull();
    expect(asWhole(Infinity)).toBeNull();
    expect(floorWhole(Infinity)).toBe(Infinity);
  });

  test('a quotient of decimals is floored and ceiled as in whole hundredths', () => {
    const hundredths = fc.integer({ min: 1, max: 100_000 });
    fc.assert(
      fc.property(hundredths, hundredths, (a, b) => {
        const quotient = a / 100 / (b / 100);
        // Whole hundredths divide without error where they divide at all.
        expect(floorWhole(quotient)).toBe((a - (a % b)) / b);
        expect(ceilWhole(quotient)).toBe((a - (a % b)) / b + (a % b === 0 ? 0 : 1));
      }),
      seeded,
    );
  });
});
