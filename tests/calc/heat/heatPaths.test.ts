import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatDate } from '../../../src/calc/heat/heatDate';
import { heatPaths } from '../../../src/calc/heat/heatPaths';
import { heatSum } from '../../../src/calc/heat/heatSum';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';
import { dailyRecord } from './records';

describe('heatPaths', () => {
  const dates = [100, 101, 102, 103, 104];
  const highs = [80, 80, 60, 80, 80];
  const lows = [60, 60, 50, 60, 60];

  test('20, 20, 5, 20, 20 a day over 50 (by hand)', () => {
    expect(heatPaths(dates, highs, lows, [100, 102, 104], 45, 50)).toEqual([
      { sowing: 100, sums: [20, 40, 45], reached: 102 },
      { sowing: 102, sums: [5, 25, 45], reached: 104 },
      { sowing: 104, sums: [20], reached: null },
    ]);
  });

  test('ends before a gap, and after a year without the target', () => {
    const gap: (number | null)[] = [80, 80, null, 80, 80];
    expect(heatPaths(dates, gap, lows, [100, 102], 45, 50)).toEqual([
      { sowing: 100, sums: [20, 40], reached: null },
      { sowing: 102, sums: [], reached: null },
    ]);
    const days = Array.from({ length: 800 }, (_, i) => i);
    const tens = days.map(() => 10);
    expect(heatPaths(days, tens, tens, [0], 45, 50)[0]?.sums).toHaveLength(366);
  });

  test('each sum is HEAT.SUM of its days, the end is HEAT.DATE', () => {
    fc.assert(
      fc.property(dailyRecord, fc.integer({ min: 1, max: 300 }), fc.nat(60), (record, target, after) => {
        const sowing = (record.dates[0] ?? NaN) + Math.min(after, record.dates.length - 1);
        const [path] = heatPaths(record.dates, record.highs, record.lows, [sowing], target, 50, 86, 'sine');
        const at = record.dates.indexOf(sowing);
        path?.sums.forEach((sum, i) =>
          expect(sum).toBeCloseTo(
            heatSum(record.highs.slice(at, at + i + 1), record.lows.slice(at, at + i + 1), 50, 86, 'sine'),
            9,
          ),
        );
        const date = (): number =>
          heatDate(record.dates, record.highs, record.lows, sowing, target, 50, 86, 'sine');
        if (path?.reached === null) expect(refusalOf(date)).toMatchObject({ code: 'recordEnds' });
        else expect(path?.reached).toBe(date());
      }),
      seeded,
    );
  });

  test('what is wrong in a row that is asked for is still said', () => {
    expect(refusalOf(() => heatPaths(dates, highs, [90, ...lows.slice(1)], [100], 45, 50))).toMatchObject({
      code: 'lowAboveHighInRow',
      row: 1,
    });
    expect(refusalOf(() => heatPaths(dates, highs, lows, [100], 0, 50))).toMatchObject({
      code: 'outOfRange',
    });
  });
});
