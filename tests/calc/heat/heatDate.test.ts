import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatDate } from '../../../src/calc/heat/heatDate';
import { heatSum } from '../../../src/calc/heat/heatSum';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { dailyRecord } from './records';

describe('heatDate', () => {
  const dates = [100, 101, 102, 103];
  const highs = [65, 80, 80, 80];
  const lows = [40, 60, 60, 60];

  test('2.5, then 20 a day: the start’s own heat counts (by hand)', () => {
    expect(heatDate(dates, highs, lows, 100, 2.5, 50)).toBe(100);
    expect(heatDate(dates, highs, lows, 100, 2.6, 50)).toBe(101);
    expect(heatDate(dates, highs, lows, 100, 22.5, 50)).toBe(101);
    expect(heatDate(dates, highs, lows, 101, 40, 50)).toBe(102);
  });

  test('thirty days of 0.1 make 3, whatever binary fractions make of it', () => {
    const month = Array.from({ length: 30 }, (_, i) => i);
    const steady = month.map(() => 50.1);
    expect(heatDate(month, steady, steady, 0, 3, 50)).toBe(29);
  });

  test('is the first day on which the sum is there, in any order of the rows', () => {
    fc.assert(
      fc.property(dailyRecord, fc.integer({ min: 1, max: 3000 }), (record, tenths) => {
        const target = tenths / 10;
        const upTo = (count: number): number =>
          heatSum(record.highs.slice(0, count), record.lows.slice(0, count), 50);
        const start = record.dates[0] ?? NaN;
        if (upTo(record.dates.length) < target) {
          expect(
            refusalOf(() => heatDate(record.dates, record.highs, record.lows, start, target, 50)),
          ).toEqual({
            code: 'recordEnds',
            lastDay: record.dates[record.dates.length - 1],
          });
          return;
        }
        const date = heatDate(record.dates, record.highs, record.lows, start, target, 50);
        expect(upTo(date - start + 1)).toBeGreaterThanOrEqual(target - 1e-9);
        if (date > start) expect(upTo(date - start)).toBeLessThan(target);
        const back = <T>(list: readonly T[]): T[] => [...list].reverse();
        expect(heatDate(back(record.dates), back(record.highs), back(record.lows), start, target, 50)).toBe(
          date,
        );
      }),
      seeded,
    );
  });

  test('what the record lacks is named, but only on the way', () => {
    const gap = [65, 80, null, 80];
    expect(heatDate(dates, gap, lows, 100, 22.5, 50)).toBe(101);
    expect(refusalOf(() => heatDate(dates, gap, lows, 100, 30, 50))).toEqual({
      code: 'dayMissing',
      day: 102,
    });
    expect(refusalOf(() => heatDate([100, 101, 103], [65, 80, 80], [40, 60, 60], 100, 30, 50))).toEqual({
      code: 'dayMissing',
      day: 102,
    });
    expect(refusalOf(() => heatDate(dates, highs, lows, 99, 30, 50))).toEqual({
      code: 'dayMissing',
      day: 99,
    });
    expect(refusalOf(() => heatDate(dates, highs, lows, 100, 1000, 50))).toEqual({
      code: 'recordEnds',
      lastDay: 103,
    });
  });

  test('bad input', () => {
    expect(refusalOf(() => heatDate([100, 100], [65, 80], [40, 60], 100, 5, 50))).toEqual({
      code: 'sameDayTwice',
      day: 100,
      row: 2,
    });
    expect(refusalOf(() => heatDate([100, null], [65, 80], [40, 60], 100, 5, 50))).toEqual({
      code: 'dateMissing',
      row: 2,
    });
    expect(heatDate([100, null], [65, null], [40, null], 100, 2.5, 50)).toBe(100);
    expect(refusalOf(() => heatDate([null], [null], [null], 100, 5, 50))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => heatDate(dates, highs, [1], 100, 5, 50))).toMatchObject({ code: 'unequalLists' });
    expect(refusalOf(() => heatDate(dates, highs, lows, 100, 0, 50))).toMatchObject({
      code: 'outOfRange',
      name: 'target',
    });
    expect(refusalOf(() => heatDate(dates, highs, lows, 100.5, 5, 50))).toMatchObject({ code: 'notADate' });
  });

  test('the working tells the days and the sum', () => {
    const { value, steps } = recording((record) =>
      heatDate(dates, highs, lows, 100, 22.5, 50, undefined, 'mean', record),
    );
    expect(steps).toMatchObject([
      {
        step: 'heatReached',
        inputs: { days: 2, target: 22.5, heatOfDays: '2.5 + 20' },
        result: 22.5,
        unit: 'degreeDays',
      },
      { step: 'heatDate', result: value, unit: 'date' },
    ]);
  });
});
