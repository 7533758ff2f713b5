import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asWhole, ceilWhole, floorWhole } from '../../../src/calc/whole/wholeNumbers';

describe('whole numbers', () => {
  // The traps of binary fractions, hand computed: 0.6/0.2, 1.2/0.2, 21/0.7 and 56/(0.7 x 0.8) are whole.
  test.each([
    [0.6 / 0.2, 3],
    [1.2 / 0.2, 6],
    [21 / 0.7, 30],
    [56 / (0.7 * 0.8), 100],
    [-0.6 / 0.2, -3],
  ])('%d is %d, rounded up or down', (value, whole) => {
    expect([floorWhole(value), ceilWhole(value), asWhole(value)]).toEqual([whole, whole, whole]);
  });

  test('a value a little further off is none', () => {
    expect([floorWhole(2.99999), ceilWhole(3.00001), asWhole(2.99999)]).toEqual([2, 4, null]);
  });

  test('zero stays zero', () => {
    expect([floorWhole(0), ceilWhole(0), asWhole(0)]).toEqual([0, 0, 0]);
  });

  test('an integer divided and multiplied back is itself', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 1000 }),
        (whole, divisor) => {
          const nearly = (whole / divisor) * divisor;
          expect([floorWhole(nearly), ceilWhole(nearly)]).toEqual([whole, whole]);
        },
      ),
      { seed: 20261125 },
    );
  });

  test('rounds as Math does away from the integers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -100000, max: 100000 }),
        fc.integer({ min: 1, max: 99 }),
        (whole, hundredths) => {
          const value = whole + hundredths / 100;
          expect([floorWhole(value), ceilWhole(value)]).toEqual([whole, whole + 1]);
        },
      ),
      { seed: 20261125 },
    );
  });
});
