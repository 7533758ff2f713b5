import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatMethods } from '../../../src/calc/heat/heatFormula';
import { heatOfDay } from '../../../src/calc/heat/heatOfDay';
import { heatSum } from '../../../src/calc/heat/heatSum';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { dailyRecord } from './records';

describe('heatSum', () => {
  test('2.5 and 20 over 50 (Michigan State’s worked example, and one by hand)', () => {
    expect(heatSum([65, 80], [40, 60], 50)).toBe(22.5);
  });

  test('is the sum of its days in any method, and is cut in two anywhere', () => {
    fc.assert(
      fc.property(dailyRecord, fc.constantFrom(...heatMethods), fc.nat(), ({ highs, lows }, method, cut) => {
        const sum = heatSum(highs, lows, 50, 86, method);
        const days = highs.map((high, i) => heatOfDay(high, lows[i] ?? NaN, 50, 86, method));
        expect(sum).toBeCloseTo(
          days.reduce((total, one) => total + one, 0),
          8,
        );
        const at = 1 + (cut % (highs.length - 1));
        const parts =
          heatSum(highs.slice(0, at), lows.slice(0, at), 50, 86, method) +
          heatSum(highs.slice(at), lows.slice(at), 50, 86, method);
        expect(sum).toBeCloseTo(parts, 8);
      }),
      seeded,
    );
  });

  test('never falls as the record goes on', () => {
    fc.assert(
      fc.property(dailyRecord, fc.constantFrom(...heatMethods), ({ highs, lows }, method) => {
        const sums = highs.map((_, i) =>
          heatSum(highs.slice(0, i + 1), lows.slice(0, i + 1), 50, 86, method),
        );
        sums.slice(1).forEach((sum, i) => expect(sum).toBeGreaterThanOrEqual((sums[i] ?? NaN) - 1e-9));
      }),
      { ...seeded, numRuns: 50 },
    );
  });

  test('empty rows below the record are no gap; any other is named', () => {
    expect(heatSum([65, 80, null, null], [40, 60, null, null], 50)).toBe(22.5);
    expect(refusalOf(() => heatSum([65, null, 80], [40, null, 60], 50))).toEqual({
      code: 'dayMissingInRow',
      row: 2,
    });
    expect(refusalOf(() => heatSum([null, 80], [40, 60], 50))).toEqual({ code: 'dayMissingInRow', row: 1 });
    expect(refusalOf(() => heatSum([65, 80], [40, null], 50))).toEqual({ code: 'dayMissingInRow', row: 2 });
  });

  test('bad input', () => {
    expect(refusalOf(() => heatSum([], [], 50))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => heatSum([null], [null], 50))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => heatSum([65], [40, 60], 50))).toMatchObject({ code: 'unequalLists', count: 1 });
    expect(refusalOf(() => heatSum([65, 40], [40, 65], 50))).toEqual({
      code: 'lowAboveHighInRow',
      row: 2,
      high: 40,
      low: 65,
    });
    expect(refusalOf(() => heatSum([650], [40], 50))).toMatchObject({
      code: 'notATemperature',
      name: 'highs',
    });
  });

  test('the working is one line, however long the record', () => {
    const { value, steps } = recording((record) => heatSum([65, 80], [40, 60], 50, 86, 'mean', record));
    expect(steps).toEqual([
      {
        step: 'heatSum',
        inputs: { days: 2, base: 50, ceiling: 86, method: 'mean', heatOfDays: '2.5 + 20' },
        result: value,
        unit: 'degreeDays',
      },
    ]);
    // Eight days of 70 and 50 over 50, 10 each: the first seven.
    const long = recording((record) =>
      heatSum(Array(8).fill(70), Array(8).fill(50), 50, undefined, 'mean', record),
    );
    expect(long.steps[0]?.inputs).toMatchObject({ heatOfDays: '10 + 10 + 10 + 10 + 10 + 10 + 10 + …' });
  });
});
