import { UTCDate } from '@date-fns/utc';
import { addDays, differenceInCalendarDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seasonSpare } from '../../../src/calc/season/seasonSpare';
import { anyDay, dayNumber, isoDate, seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const lastFrost = dayNumber('2026-05-02');
const firstFrost = dayNumber('2026-10-10');

describe('seasonSpare', () => {
  test('161 days less 95, 161 and 170 (hand computed)', () => {
    expect(seasonSpare(lastFrost, firstFrost, 95)).toBe(66);
    expect(seasonSpare(lastFrost, firstFrost, 161)).toBe(0);
    expect(seasonSpare(lastFrost, firstFrost, 170)).toBe(-9);
  });

  test('is what date-fns 4.4.0 counts from the end of the need to the first frost', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.integer({ min: 1, max: 366 }),
        fc.integer({ min: 0, max: 730 }),
        (last, days, needed) => {
          const date = (day: number): Date => new UTCDate(`${isoDate(day)}T00:00:00Z`);
          const end = addDays(date(last), needed);
          expect(seasonSpare(last, last + days, needed)).toBe(
            differenceInCalendarDays(date(last + days), end),
          );
        },
      ),
      seeded,
    );
  });

  test('more days needed never leave more to spare', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.integer({ min: 1, max: 366 }),
        fc.double({ min: 0, max: 729, noNaN: true }),
        (last, days, needed) => {
          expect(seasonSpare(last, last + days, needed + 1)).toBeLessThanOrEqual(
            seasonSpare(last, last + days, needed),
          );
        },
      ),
      seeded,
    );
  });

  test('bounds of the days needed; frost dates the wrong way round or years apart', () => {
    expect(seasonSpare(lastFrost, firstFrost, 0)).toBe(161);
    expect(seasonSpare(lastFrost, firstFrost, 730)).toBe(-569);
    for (const needed of [-0.5, 730.5, NaN, 46200]) {
      expect(refusalOf(() => seasonSpare(lastFrost, firstFrost, needed))).toMatchObject({
        code: 'outOfRange',
        name: 'days_needed',
      });
    }
    expect(refusalOf(() => seasonSpare(firstFrost, lastFrost, 95))).toMatchObject({
      code: 'frostDatesReversed',
    });
    expect(refusalOf(() => seasonSpare(lastFrost, firstFrost + 365, 95))).toMatchObject({
      code: 'frostYearsApart',
    });
  });

  test('a fraction of a day rounds down', () => {
    const { value, steps } = recording((record) => seasonSpare(lastFrost, firstFrost, 94.5, record));
    expect(value).toBe(66);
    expect(steps.at(-1)).toMatchObject({ result: 66, rounded: 'down' });
  });

  test('the working shows the season first, ends in the returned days and says when they are short', () => {
    const short = recording((record) => seasonSpare(lastFrost, firstFrost, 170, record));
    expect(short.value).toBe(seasonSpare(lastFrost, firstFrost, 170));
    expect(short.steps.map(({ step, result }) => [step, result])).toEqual([
      ['seasonDays', 161],
      ['seasonSpare', -9],
    ]);
    expect(short.remarks).toEqual(['seasonTooShort']);
    expect(recording((record) => seasonSpare(lastFrost, firstFrost, 161, record)).remarks).toEqual([]);
  });
});
