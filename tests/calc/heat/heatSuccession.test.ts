import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatSuccession } from '../../../src/calc/heat/heatSuccession';
import { heatSum } from '../../../src/calc/heat/heatSum';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { dailyRecord } from './records';

describe('heatSuccession', () => {
  const dates = Array.from({ length: 12 }, (_, i) => 100 + i);
  const highs = dates.map(() => 80);
  const lows = dates.map(() => 60);

  test('20 a day, 60 between: every third day, none after the last (by hand)', () => {
    expect(heatSuccession(dates, highs, lows, 100, 109, 60, 50)).toEqual([100, 103, 106, 109]);
    expect(heatSuccession(dates, highs, lows, 100, 108, 60, 50)).toEqual([100, 103, 106]);
    expect(heatSuccession(dates, highs, lows, 100, 108, 50, 50)).toEqual([100, 103, 106]);
    expect(heatSuccession(dates, highs, lows, 100, 100, 60, 50)).toEqual([100]);
  });

  test('between two sowings the heat is there, and a day less would not do', () => {
    fc.assert(
      fc.property(dailyRecord, fc.integer({ min: 1, max: 200 }), (record, between) => {
        const first = record.dates[0] ?? NaN;
        const last = record.dates[record.dates.length - 1] ?? NaN;
        const sowings = heatSuccession(record.dates, record.highs, record.lows, first, last, between, 50);
        const heat = (from: number, to: number): number =>
          from === to
            ? 0
            : heatSum(
                record.highs.slice(from - first, to - first),
                record.lows.slice(from - first, to - first),
                50,
              );
        sowings.slice(1).forEach((next, i) => {
          const before = sowings[i] ?? NaN;
          expect(heat(before, next)).toBeGreaterThanOrEqual(between);
          expect(heat(before, next - 1)).toBeLessThan(between);
        });
        expect(sowings[0]).toBe(first);
        expect(heat(sowings[sowings.length - 1] ?? NaN, last)).toBeLessThan(between);
      }),
      seeded,
    );
  });

  test('a gap or the record’s end before the last day is named', () => {
    expect(refusalOf(() => heatSuccession(dates, highs, lows, 100, 120, 60, 50))).toEqual({
      code: 'recordEnds',
      lastDay: 111,
    });
    // The heat of the last day itself leads to no sowing.
    expect(heatSuccession(dates, highs, lows, 110, 112, 20, 50)).toEqual([110, 111, 112]);
    const gap = highs.map((high, i) => (i === 4 ? null : high));
    expect(refusalOf(() => heatSuccession(dates, gap, lows, 100, 109, 60, 50))).toEqual({
      code: 'dayMissing',
      day: 104,
    });
  });

  test('bad input', () => {
    expect(refusalOf(() => heatSuccession(dates, highs, lows, 105, 100, 60, 50))).toEqual({
      code: 'lastBeforeFirst',
      firstDay: 105,
      lastDay: 100,
    });
    expect(refusalOf(() => heatSuccession(dates, highs, lows, 100, 105, 0, 50))).toMatchObject({
      code: 'outOfRange',
      name: 'heat_between',
    });
  });

  test('the working has a line a sowing', () => {
    const { value, steps } = recording((record) =>
      heatSuccession(dates, highs, lows, 100, 109, 60, 50, undefined, 'mean', record),
    );
    expect(steps.map(({ result }) => result)).toEqual(value.slice(1));
  });
});
