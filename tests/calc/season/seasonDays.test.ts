import { UTCDate } from '@date-fns/utc';
import { differenceInCalendarDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seasonDays } from '../../../src/calc/season/seasonDays';
import { anyDay, dayNumber, isoDate, seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

describe('seasonDays', () => {
  test.each([
    ['2026-05-02', '2026-10-10', 161, 'a northern season'],
    ['2026-10-05', '2027-04-10', 187, 'a southern season over New Year'],
    ['2027-10-05', '2028-04-10', 188, 'the same with 29 February 2028 in it'],
    ['2028-02-28', '2028-03-01', 2, 'a leap year'],
    ['2027-02-28', '2027-03-01', 1, 'a common year'],
  ])('%s to %s: %i days, %s (hand computed)', (last, first, days) => {
    expect(seasonDays(dayNumber(last), dayNumber(first))).toBe(days);
  });

  test('agrees with date-fns 4.4.0 differenceInCalendarDays', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 366 }), (last, days) => {
        const date = (day: number): Date => new UTCDate(`${isoDate(day)}T00:00:00Z`);
        expect(seasonDays(last, last + days)).toBe(differenceInCalendarDays(date(last + days), date(last)));
      }),
      seeded,
    );
  });

  test('a day later of the last frost is a day less, of the first frost a day more', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 2, max: 365 }), (last, days) => {
        expect(seasonDays(last + 1, last + days)).toBe(seasonDays(last, last + days) - 1);
        expect(seasonDays(last, last + days + 1)).toBe(seasonDays(last, last + days) + 1);
      }),
      seeded,
    );
  });

  test('equal and reversed dates are refused with both', () => {
    const frost = dayNumber('2026-10-05');
    expect(refusalOf(() => seasonDays(frost, frost))).toEqual({
      code: 'frostDatesReversed',
      lastFrost: frost,
      firstFrost: frost,
    });
    expect(refusalOf(() => seasonDays(frost, dayNumber('2026-04-10')))).toMatchObject({
      code: 'frostDatesReversed',
    });
    expect(seasonDays(frost, frost + 1)).toBe(1);
  });

  test('more than a leap year is a wrong year', () => {
    const frost = dayNumber('2026-05-02');
    expect(seasonDays(frost, frost + 366)).toBe(366);
    expect(refusalOf(() => seasonDays(frost, frost + 367))).toEqual({
      code: 'frostYearsApart',
      lastFrost: frost,
      firstFrost: frost + 367,
      days: 367,
    });
  });

  test('NaN is no date', () => {
    expect(refusalOf(() => seasonDays(NaN, 20736))).toMatchObject({ code: 'notADate', name: 'last_frost' });
    expect(refusalOf(() => seasonDays(20575, NaN))).toMatchObject({ code: 'notADate', name: 'first_frost' });
  });

  test('the working ends in the returned days and changes nothing', () => {
    const { value, steps } = recording((record) => seasonDays(20575, 20736, record));
    expect(value).toBe(seasonDays(20575, 20736));
    expect(steps).toEqual([
      { step: 'seasonDays', inputs: { first_frost: 20736, last_frost: 20575 }, result: 161, unit: 'days' },
    ]);
  });
});
