import { describe, expect, test } from 'vitest';
import { heatDate } from '../../../src/calc/heat/heatDate';
import { heatDates } from '../../../src/calc/heat/heatDates';
import { refusalOf } from '../refusal';

/** By the calendar of JavaScript alone. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

/** Three years of days, 60 over 50 degrees in the first, 70 in the others: 5 and 10 degree days by the mean. */
const first = day('2023-01-01');
const dates = Array.from({ length: 3 * 365 + 1 }, (_, i) => first + i);
const highs = dates.map((each) => (each < day('2024-01-01') ? 60 : 70));
const lows = dates.map(() => 50);

describe('heatDates', () => {
  test('the day and the days to it (by hand)', () => {
    // 5 degree days a day: the 40th day, the start the first of them; then 10.
    expect(heatDates(dates, highs, lows, day('2030-05-09'), 200, 50)).toEqual([
      { year: 2023, date: day('2023-06-17'), days: 39 },
      { year: 2024, date: day('2024-05-28'), days: 19 },
      { year: 2025, date: day('2025-05-28'), days: 19 },
    ]);
  });

  test('"none" where a year is too cold, "void" where a day is missing or the record ends', () => {
    expect(heatDates(dates, highs, lows, day('2030-05-09'), 200, 65).map(({ date }) => date)).toEqual([
      'none',
      'none',
      'void',
    ]);
    const gap = highs.map((high, i) => (dates[i] === day('2024-05-20') ? null : high));
    expect(heatDates(dates, gap, lows, day('2030-05-09'), 200, 50)[1]).toEqual({
      year: 2024,
      date: 'void',
      days: 'void',
    });
  });

  test('a low above its high is named wherever it stands: typed by hand it can hide a frost', () => {
    const winter = dates.indexOf(day('2024-12-20'));
    const slipped = lows.map((low, i) => (i === winter ? 99 : low));
    expect(refusalOf(() => heatDates(dates, highs, slipped, day('2030-05-09'), 200, 50))).toEqual({
      code: 'lowAboveHighInRow',
      row: winter + 1,
      high: 70,
      low: 99,
    });
  });

  test('is what heatDate gives from that day', () => {
    for (const { date } of heatDates(dates, highs, lows, day('2030-05-09'), 333, 51.5, 86, 'sine')) {
      const start = day(`${new Date(Number(date) * 86_400_000).getUTCFullYear()}-05-09`);
      expect(date).toBe(heatDate(dates, highs, lows, start, 333, 51.5, 86, 'sine'));
    }
  });

  test('bad input', () => {
    expect(refusalOf(() => heatDates(dates, highs, lows, first, 0, 50))).toMatchObject({
      code: 'outOfRange',
      name: 'target',
    });
    expect(refusalOf(() => heatDates(dates, highs, lows, first + 0.5, 9, 50))).toMatchObject({
      code: 'notADate',
    });
  });
});
