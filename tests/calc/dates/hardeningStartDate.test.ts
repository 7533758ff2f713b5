import { UTCDate } from '@date-fns/utc';
import { subDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hardeningStartDate } from '../../../src/calc/dates/hardeningStartDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const setOut = dayNumber('2026-05-16');

describe('hardeningStartDate', () => {
  test('7 days before setting out (common practice, no source; hand computed date)', () => {
    expect(isoDate(hardeningStartDate(setOut, undefined))).toBe('2026-05-09');
    expect(isoDate(hardeningStartDate(setOut, 10))).toBe('2026-05-06');
  });

  test('counts back over 29 February and over New Year (calendar)', () => {
    expect(isoDate(hardeningStartDate(dayNumber('2028-03-07'), 7))).toBe('2028-02-29');
    expect(isoDate(hardeningStartDate(dayNumber('2027-01-03'), 7))).toBe('2026-12-27');
  });

  test('agrees with date-fns 4.4.0 subDays on any date', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 60 }), (day, days) => {
        const expected = subDays(new UTCDate(`${isoDate(day)}T00:00:00Z`), days);
        expect(hardeningStartDate(day, days)).toBe(expected.getTime() / 86400000);
      }),
      seeded,
    );
  });

  test('a later setting out never gives an earlier start, more time never a later one', () => {
    fc.assert(
      fc.property(anyDay, fc.double({ min: 0, max: 59, noNaN: true }), (day, days) => {
        expect(hardeningStartDate(day + 1, days)).toBeGreaterThanOrEqual(hardeningStartDate(day, days));
        expect(hardeningStartDate(day, days + 1)).toBeLessThanOrEqual(hardeningStartDate(day, days));
      }),
      seeded,
    );
  });

  test('bounds: 0 and 60 are in, a little beyond is out, and so is NaN', () => {
    expect(hardeningStartDate(setOut, 0)).toBe(setOut);
    expect(hardeningStartDate(setOut, 60)).toBe(setOut - 60);
    for (const days of [-0.1, 60.1, NaN, Infinity]) {
      expect(refusalOf(() => hardeningStartDate(setOut, days))).toMatchObject({
        code: 'outOfRange',
        name: 'days',
        unit: 'days',
        atLeast: 0,
        atMost: 60,
      });
    }
    expect(refusalOf(() => hardeningStartDate(NaN, 3))).toEqual({
      code: 'notADate',
      name: 'set_out',
      given: 'NaN',
    });
  });

  test('a fraction of a day rounds up, and the working says so (hand computed)', () => {
    const { value, steps, assumptions } = recording((record) => hardeningStartDate(setOut, 7.5, record));
    expect(isoDate(value)).toBe('2026-05-09');
    expect(steps.at(-1)).toMatchObject({ result: value, rounded: 'up' });
    expect(assumptions).toEqual([]);
  });

  test('the working ends in the returned day and changes nothing', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      hardeningStartDate(setOut, undefined, record),
    );
    expect(value).toBe(hardeningStartDate(setOut, undefined));
    expect(steps.at(-1)).toEqual({
      step: 'hardeningStart',
      inputs: { set_out: setOut, days: 7 },
      result: value,
      unit: 'date',
    });
    expect(assumptions).toEqual([expect.objectContaining({ assumed: 'days', value: 7, unit: 'days' })]);
    expect(remarks).toEqual(['hardenNotCold']);
  });
});
