import fc from 'fast-check';
import { jStat } from 'jstat';
import { qbeta } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { testedGermination } from '../../../src/calc/seed/testedGermination';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { exactShortfall } from '../stand/oracles';

describe('testedGermination', () => {
  test.each([
    [320, 400, 0.7574, 0.8381],
    [80, 100, 0.7082, 0.8733],
    [40, 50, 0.6628, 0.8997],
    [8, 10, 0.4439, 0.9748],
  ])(
    '%d of %d: %d to %d (computed with other software for the reference, to 4 places)',
    (x, n, low, high) => {
      const shown = testedGermination(x, n);
      expect(shown.estimate).toBe(0.8);
      expect(shown.low).toBeCloseTo(low, 4);
      expect(shown.high).toBeCloseTo(high, 4);
    },
  );

  test('none and all of n: 1 - (a/2)^(1/n) and its mirror image (hand computed), the open end at 0 and 1', () => {
    for (const n of [1, 10, 400, 1_000_000]) {
      const edge = -Math.expm1(Math.log(0.025) / n);
      const none = testedGermination(0, n);
      expect([none.estimate, none.low]).toEqual([0, 0]);
      expect(none.high / edge).toBeCloseTo(1, 9);
      const all = testedGermination(n, n);
      expect([all.estimate, all.high]).toEqual([1, 1]);
      expect((1 - all.low) / edge).toBeCloseTo(1, 9);
    }
  });

  test('qbeta of lib-r-math.js 2.0.3 and the quantile of jstat 1.9.6, as far as their own sums are good', () => {
    for (const n of [1, 7, 50, 400]) {
      for (const x of [1, Math.ceil(n / 3), n - 1].filter((count) => count > 0 && count < n)) {
        for (const confidence of [0.5, 0.9, 0.95, 0.999]) {
          const { low, high } = testedGermination(x, n, confidence);
          const tail = (1 - confidence) / 2;
          expect(low).toBeCloseTo(qbeta(tail, x, n - x + 1) as number, 7);
          expect(high).toBeCloseTo(qbeta(1 - tail, x + 1, n - x) as number, 7);
          expect(low).toBeCloseTo(jStat.beta.inv(tail, x, n - x + 1), 6);
          expect(high).toBeCloseTo(jStat.beta.inv(1 - tail, x + 1, n - x), 6);
        }
      }
    }
  });

  test('at each end the count seen is just as unlikely as allowed (sum in whole numbers)', () => {
    const parts = 1e15;
    for (const [x, n] of [
      [32, 40],
      [1, 3],
      [320, 400],
      [399, 400],
    ] as const) {
      const { low, high } = testedGermination(x, n, 0.9);
      expect(1 - exactShortfall(x, n, Math.round(low * parts), parts)).toBeCloseTo(0.05, 11);
      expect(exactShortfall(x + 1, n, Math.round(high * parts), parts)).toBeCloseTo(0.05, 11);
    }
  });

  test('the ends hold the estimate, mirror each other, and widen with confidence', () => {
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 2000 })
          .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n))),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        ([x, n], one, other) => {
          const { estimate, low, high } = testedGermination(x, n, one);
          expect(low).toBeLessThanOrEqual(estimate);
          expect(high).toBeGreaterThanOrEqual(estimate);
          const mirrored = testedGermination(n - x, n, one);
          expect(mirrored.high).toBeCloseTo(1 - low, 9);
          const wider = testedGermination(x, n, Math.max(one, other));
          expect(wider.low).toBeLessThanOrEqual(low + 1e-12);
          expect(wider.high).toBeGreaterThanOrEqual(high - 1e-12);
        },
      ),
      seeded,
    );
  });

  test('bounds, just in and just out', () => {
    expect(refusalOf(() => testedGermination(11, 10))).toEqual({
      code: 'outOfRange',
      name: 'germinated',
      value: 11,
      unit: 'seeds',
      atLeast: 0,
      atMost: 10,
    });
    expect(refusalOf(() => testedGermination(-1, 10))).toMatchObject({ name: 'germinated' });
    expect(refusalOf(() => testedGermination(1.5, 10))).toMatchObject({ code: 'notWhole' });
    expect(refusalOf(() => testedGermination(0, 0))).toMatchObject({ name: 'tested', atLeast: 1 });
    expect(refusalOf(() => testedGermination(0, 1_000_001))).toMatchObject({ atMost: 1_000_000 });
    expect(refusalOf(() => testedGermination(NaN, 10))).toMatchObject({ code: 'outOfRange' });
    expect(refusalOf(() => testedGermination(8, 10, 95))).toMatchObject({ code: 'percentForShare' });
    for (const bad of [0, 1, NaN]) {
      expect(refusalOf(() => testedGermination(8, 10, bad))).toMatchObject({ above: 0, below: 1 });
    }
  });

  test('the working holds all three results; the default confidence has its ground', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      testedGermination(320, 400, undefined, record),
    );
    expect(value).toEqual(testedGermination(320, 400));
    expect(steps.map(({ result }) => result)).toEqual([value.estimate, value.low, value.high]);
    expect(assumptions).toEqual([
      { assumed: 'confidence', value: 0.95, unit: 'share', ground: 'common practice, no source' },
    ]);
    expect(remarks).toEqual(['testIsOneSample']);
  });
});
