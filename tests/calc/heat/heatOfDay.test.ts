import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatMethods } from '../../../src/calc/heat/heatFormula';
import { heatOfDay } from '../../../src/calc/heat/heatOfDay';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

/** The mean over a day of what a sine through low and high has between base and ceiling: by the midpoint rule. */
function integrated(high: number, low: number, base: number, ceiling = Infinity): number {
  const parts = 20_000;
  let sum = 0;
  for (let i = 0; i < parts; i++) {
    const warmth = (high + low) / 2 + ((high - low) / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / parts);
    sum += Math.max(0, Math.min(warmth, ceiling) - base);
  }
  return sum / parts;
}

const warmth = fc.integer({ min: -400, max: 1200 }).map((tenths) => tenths / 10);
const day = fc.tuple(warmth, warmth).map(([a, b]) => ({ high: Math.max(a, b), low: Math.min(a, b) }));
const limits = fc
  .tuple(fc.integer({ min: 30, max: 60 }), fc.integer({ min: 1, max: 50 }))
  .map(([base, above]) => ({ base, ceiling: base + above }));

describe('heatOfDay', () => {
  test('65 and 40 over 50: 2.5 (worked example, Nugent, Michigan State, Calculating Growing Degree Days)', () => {
    expect(heatOfDay(65, 40, 50)).toBe(2.5);
    expect(heatOfDay(65, 40, 50, undefined, 'mean')).toBe(2.5);
  });

  test('modified 50/86: the low counts as 50, the high as 86 (hand computed by McMaster and Wilhelm 1997)', () => {
    expect(heatOfDay(65, 40, 50, 86, 'modified')).toBe(7.5);
    expect(heatOfDay(95, 60, 50, 86, 'modified')).toBe(23);
    expect(heatOfDay(40, 30, 50, 86, 'modified')).toBe(0);
  });

  test('reduced 60/90: 95 counts as 85, 120 as 60 (Perry and Wehner 1996; hand computed)', () => {
    expect(heatOfDay(95, 60, 60, 90, 'reduced')).toBe(25);
    expect(heatOfDay(65, 40, 60, 90, 'reduced')).toBe(5);
    expect(heatOfDay(90, 40, 60, 90, 'reduced')).toBe(30);
    expect(heatOfDay(120, 40, 60, 90, 'reduced')).toBe(0);
    expect(heatOfDay(130, 40, 60, 90, 'reduced')).toBe(0);
  });

  test('sine: 5.309 and 25.509 (computed for the reference with other software, three places)', () => {
    expect(heatOfDay(65, 40, 50, undefined, 'sine')).toBeCloseTo(5.309, 3);
    expect(heatOfDay(95, 60, 50, 86, 'sine')).toBeCloseTo(25.509, 3);
    expect(heatOfDay(80, 60, 50, 86, 'sine')).toBe(20);
  });

  test('sine is the integral of a sine, with a cutoff and without', () => {
    fc.assert(
      fc.property(day, limits, ({ high, low }, { base, ceiling }) => {
        // The midpoint rule errs by less than the half range over the number of parts.
        expect(heatOfDay(high, low, base, undefined, 'sine')).toBeCloseTo(integrated(high, low, base), 2);
        expect(heatOfDay(high, low, base, ceiling, 'sine')).toBeCloseTo(
          integrated(high, low, base, ceiling),
          2,
        );
      }),
      { ...seeded, numRuns: 60 },
    );
  });

  test('is never negative, never over ceiling - base, and a C-day is 1.8 F-days, whatever the method', () => {
    const toC = (f: number): number => (f - 32) / 1.8;
    fc.assert(
      fc.property(
        day,
        limits,
        fc.constantFrom(...heatMethods),
        ({ high, low }, { base, ceiling }, method) => {
          const heat = heatOfDay(high, low, base, ceiling, method);
          expect(heat).toBeGreaterThanOrEqual(-1e-9);
          expect(heat).toBeLessThanOrEqual(ceiling - base + 1e-9);
          const inC = heatOfDay(toC(high), toC(low), toC(base), toC(ceiling), method);
          expect(inC * 1.8).toBeCloseTo(heat, 8);
        },
      ),
      seeded,
    );
  });

  // Over its ceiling the reduced method takes warmth for harm, and it does not look at the low.
  test('a warmer day has no less heat, be it by its high or its low, but for the reduced method', () => {
    fc.assert(
      fc.property(
        day,
        limits,
        fc.constantFrom('mean', 'modified', 'sine'),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 0, max: 20 }),
        ({ high, low }, { base, ceiling }, method, warmerHigh, warmerLow) => {
          const heat = heatOfDay(high, low, base, ceiling, method);
          const warmer = heatOfDay(
            high + warmerHigh,
            Math.min(low + warmerLow, high + warmerHigh),
            base,
            ceiling,
            method,
          );
          expect(warmer).toBeGreaterThanOrEqual(heat - 1e-9);
        },
      ),
      seeded,
    );
  });

  test('bad input', () => {
    expect(refusalOf(() => heatOfDay(40, 65, 50))).toEqual({ code: 'lowAboveHigh', high: 40, low: 65 });
    expect(refusalOf(() => heatOfDay(65, 40, 50, 50))).toMatchObject({ code: 'ceilingUnderBase' });
    expect(refusalOf(() => heatOfDay(65, 40, 50, undefined, 'reduced'))).toEqual({ code: 'ceilingWanted' });
    for (const silly of [NaN, Infinity, 151, -151, 46000]) {
      expect(refusalOf(() => heatOfDay(silly, 40, 50))).toMatchObject({ code: 'outOfRange', name: 'high' });
      expect(refusalOf(() => heatOfDay(65, 40, silly))).toMatchObject({ code: 'outOfRange', name: 'base' });
    }
  });

  test('the working names the method it assumed and ends in the heat', () => {
    const { value, steps, assumptions } = recording((record) =>
      heatOfDay(65, 40, 50, undefined, undefined, record),
    );
    expect(assumptions).toMatchObject([{ assumed: 'method', value: 'mean' }]);
    expect(steps).toEqual([
      { step: 'heatByMean', inputs: { high: 65, low: 40, base: 50 }, result: value, unit: 'degreeDays' },
    ]);
  });
});
