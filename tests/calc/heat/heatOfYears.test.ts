import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatOfYears } from '../../../src/calc/heat/heatOfYears';
import { heatSum } from '../../../src/calc/heat/heatSum';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

/** By the calendar of JavaScript alone. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

/** Three years of days, 60 over 50 degrees in the first, 70 in the others: 5 and 10 degree days by the mean. */
const first = day('2023-01-01');
const dates = Array.from({ length: 3 * 365 + 1 }, (_, i) => first + i);
const highs = dates.map((each) => (each < day('2024-01-01') ? 60 : 70));
const lows = dates.map(() => 50);

describe('heatOfYears', () => {
  test('the same days in every year, leap years too (by hand)', () => {
    expect(heatOfYears(dates, highs, lows, day('2030-05-09'), 40, 50)).toEqual([
      { year: 2023, heat: 200 },
      { year: 2024, heat: 400 },
      { year: 2025, heat: 400 },
    ]);
    // From 31 December on into the next year; the last year has but one such day.
    expect(heatOfYears(dates, highs, lows, day('2030-12-31'), 2, 50)).toEqual([
      { year: 2023, heat: 15 },
      { year: 2024, heat: 20 },
      { year: 2025, heat: 'void' },
    ]);
  });

  test('a year is void with one of its days missing; days outside do not matter', () => {
    const gap = highs.map((high, i) => (dates[i] === day('2024-05-20') ? null : high));
    expect(heatOfYears(dates, gap, lows, day('2030-05-09'), 40, 50)[1]).toEqual({ year: 2024, heat: 'void' });
    expect(heatOfYears(dates, gap, lows, day('2030-05-21'), 40, 50)[1]).toEqual({ year: 2024, heat: 400 });
  });

  test('is the sum of those rows (any temperatures)', () => {
    const temperatures = fc.array(
      fc.tuple(fc.integer({ min: 40, max: 60 }), fc.integer({ max: 35, min: 0 })),
      {
        minLength: 30,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(temperatures, fc.integer({ min: 1, max: 30 }), (rows, count) => {
        const low = rows.map(([one]) => one);
        const high = rows.map(([one, more]) => one + more);
        const days = rows.map((_, i) => day('2026-05-01') + i);
        const [year] = heatOfYears(days, high, low, day('2000-05-01'), count, 50, 86, 'sine');
        const sum = heatSum(high.slice(0, count), low.slice(0, count), 50, 86, 'sine');
        expect(year?.heat).toBeCloseTo(sum, 9);
      }),
      seeded,
    );
  });

  test('bad input', () => {
    const refused = (days: number, base = 50) =>
      refusalOf(() => heatOfYears(dates, highs, lows, first, days, base));
    expect(refused(0)).toMatchObject({ code: 'outOfRange', name: 'days' });
    expect(refused(367)).toMatchObject({ code: 'outOfRange', name: 'days' });
    expect(refused(1.5)).toMatchObject({ code: 'notWhole', name: 'days' });
    expect(refusalOf(() => heatOfYears([null], [null], [null], first, 3, 50))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => heatOfYears([first, first], [60, 60], [50, 50], first, 3, 50))).toMatchObject({
      code: 'sameDayTwice',
    });
  });
});
