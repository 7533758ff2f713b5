import { UTCDate } from '@date-fns/utc';
import { addDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstSowingDate } from '../../../src/calc/dates/firstSowingDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const lastFrost = dayNumber('2026-05-02');
const waits = fc.integer({ min: -60, max: 120 });

describe('firstSowingDate', () => {
  test('Cornell Home Gardening, watermelon: sow 1 to 2 weeks after the mean last frost', () => {
    expect(isoDate(firstSowingDate(lastFrost, undefined))).toBe('2026-05-09');
    expect(isoDate(firstSowingDate(lastFrost, 14))).toBe('2026-05-16');
  });

  test('February 29 is a day (calendar: 2028 is a leap year, 2027 is none)', () => {
    expect(isoDate(firstSowingDate(dayNumber('2028-02-22'), 7))).toBe('2028-02-29');
    expect(isoDate(firstSowingDate(dayNumber('2027-02-22'), 7))).toBe('2027-03-01');
  });

  test('over New Year (hand computed: 7 days after 27 December)', () => {
    expect(isoDate(firstSowingDate(dayNumber('2026-12-27'), 7))).toBe('2027-01-03');
  });

  test('agrees with date-fns 4.4.0 addDays on any date', () => {
    fc.assert(
      fc.property(anyDay, waits, (frost, wait) => {
        const expected = addDays(new UTCDate(`${isoDate(frost)}T00:00:00Z`), wait);
        expect(firstSowingDate(frost, wait)).toBe(expected.getTime() / 86400000);
      }),
      seeded,
    );
  });

  test('a later frost or a longer wait never gives an earlier date', () => {
    fc.assert(
      fc.property(anyDay, fc.double({ min: -60, max: 119, noNaN: true }), (frost, wait) => {
        expect(firstSowingDate(frost + 1, wait)).toBeGreaterThanOrEqual(firstSowingDate(frost, wait));
        expect(firstSowingDate(frost, wait + 1)).toBeGreaterThanOrEqual(firstSowingDate(frost, wait));
      }),
      seeded,
    );
  });

  test('bounds: -60 and 120 are in, a little beyond is out, and so is NaN', () => {
    expect(firstSowingDate(lastFrost, -60)).toBe(lastFrost - 60);
    expect(firstSowingDate(lastFrost, 0)).toBe(lastFrost);
    expect(firstSowingDate(lastFrost, 120)).toBe(lastFrost + 120);
    for (const wait of [-60.5, 120.5, NaN, Infinity]) {
      expect(refusalOf(() => firstSowingDate(lastFrost, wait))).toMatchObject({
        code: 'outOfRange',
        name: 'days_after',
        atLeast: -60,
        atMost: 120,
      });
    }
    expect(refusalOf(() => firstSowingDate(NaN, 7))).toEqual({
      code: 'notADate',
      name: 'last_frost',
      given: 'NaN',
    });
  });

  test('a fraction of a day rounds up, and the working says so', () => {
    const { value, steps } = recording((record) => firstSowingDate(lastFrost, 6.25, record));
    expect(value).toBe(lastFrost + 7);
    expect(steps.at(-1)).toMatchObject({ step: 'firstSowing', result: value, unit: 'date', rounded: 'up' });
  });

  test('the working ends in the returned day and changes nothing', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      firstSowingDate(lastFrost, undefined, record),
    );
    expect(value).toBe(firstSowingDate(lastFrost, undefined));
    expect(steps.at(-1)).toEqual({
      step: 'firstSowing',
      inputs: { last_frost: lastFrost, days_after: 7 },
      result: value,
      unit: 'date',
    });
    expect(assumptions).toEqual([
      expect.objectContaining({
        assumed: 'days_after',
        value: 7,
        unit: 'days',
        ground: 'common practice, no source',
      }),
    ]);
    expect(remarks).toEqual(['waitBelongsToMean', 'soilDecides']);
  });

  test('a day before the last frost carries the remark about covers', () => {
    expect(recording((record) => firstSowingDate(lastFrost, -1, record)).remarks).toContain(
      'beforeLastFrost',
    );
    expect(recording((record) => firstSowingDate(lastFrost, 0, record)).remarks).not.toContain(
      'beforeLastFrost',
    );
  });
});
