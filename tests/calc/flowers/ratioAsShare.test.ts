import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratioAsShare } from '../../../src/calc/flowers/ratioAsShare';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

describe('ratioAsShare', () => {
  test.each([
    [1, 3, 0.25],
    [1, 4, 0.2],
    [1, 2, 1 / 3],
    [0, 5, 0],
    [2, 0, 1],
  ])(
    '%d to %d is %d (hand computed; the ratios are those of Delaware, Johnson)',
    (pollenizers, others, share) => {
      expect(ratioAsShare(pollenizers, others)).toBeCloseTo(share, 12);
    },
  );

  test('a fifth of the pollenizers lost turns 1:4 into 1:5 (Delaware, Johnson)', () => {
    expect(ratioAsShare(1 * 0.8, 4)).toBeCloseTo(ratioAsShare(1, 5), 12);
  });

  test('is below 1 and unchanged by doubling both', () => {
    const count = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(count, count, (pollenizers, others) => {
        const share = ratioAsShare(pollenizers, others);
        expect(share).toBeLessThan(1);
        expect(ratioAsShare(2 * pollenizers, 2 * others)).toBeCloseTo(share, 12);
        expect(ratioAsShare(others, pollenizers)).toBeCloseTo(1 - share, 12);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test('bounds: negative, NaN and 0 to 0 are refused', () => {
    expect(refusalOf(() => ratioAsShare(-1, 3))).toMatchObject({ code: 'outOfRange', name: 'pollenizers' });
    expect(refusalOf(() => ratioAsShare(1, -3))).toMatchObject({ code: 'outOfRange', name: 'others' });
    expect(refusalOf(() => ratioAsShare(0, 0))).toMatchObject({
      code: 'outOfRange',
      name: 'others',
      above: 0,
    });
    expect(refusalOf(() => ratioAsShare(NaN, 1))).toMatchObject({ code: 'outOfRange' });
  });

  test('working: the last step is the value, recording changes nothing', () => {
    const { value, steps } = recording((record) => ratioAsShare(1, 3, record));
    expect(steps.at(-1)?.result).toBe(value);
    expect(value).toBe(ratioAsShare(1, 3));
  });
});
