import { UTCDate } from '@date-fns/utc';
import { subWeeks } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { transplantStartDate } from '../../../src/calc/dates/transplantStartDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const setOut = dayNumber('2026-05-16');

describe('transplantStartDate', () => {
  test('Virginia Cooperative Extension, Starting Vegetable Transplants: cucurbits 3 weeks (hand computed date)', () => {
    expect(isoDate(transplantStartDate(setOut, undefined))).toBe('2026-04-25');
    expect(isoDate(transplantStartDate(setOut, 4))).toBe('2026-04-18');
  });

  test('counts back over 29 February and over New Year (calendar)', () => {
    expect(isoDate(transplantStartDate(dayNumber('2028-03-07'), 1))).toBe('2028-02-29');
    expect(isoDate(transplantStartDate(dayNumber('2027-01-03'), 1))).toBe('2026-12-27');
  });

  test('agrees with date-fns 4.4.0 subWeeks on any date', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 26 }), (day, weeks) => {
        const expected = subWeeks(new UTCDate(`${isoDate(day)}T00:00:00Z`), weeks);
        expect(transplantStartDate(day, weeks)).toBe(expected.getTime() / 86400000);
      }),
      seeded,
    );
  });

  test('a later setting out never gives an earlier start, more time never a later one', () => {
    fc.assert(
      fc.property(anyDay, fc.double({ min: 0, max: 25, noNaN: true }), (day, weeks) => {
        expect(transplantStartDate(day + 1, weeks)).toBeGreaterThanOrEqual(transplantStartDate(day, weeks));
        expect(transplantStartDate(day, weeks + 1)).toBeLessThanOrEqual(transplantStartDate(day, weeks));
      }),
      seeded,
    );
  });

  test('bounds: 0 and 26 are in, a little beyond is out, and so is NaN', () => {
    expect(transplantStartDate(setOut, 0)).toBe(setOut);
    expect(transplantStartDate(setOut, 26)).toBe(setOut - 182);
    for (const weeks of [-0.1, 26.1, NaN, Infinity]) {
      expect(refusalOf(() => transplantStartDate(setOut, weeks))).toMatchObject({
        code: 'outOfRange',
        name: 'weeks',
        unit: 'weeks',
        atLeast: 0,
        atMost: 26,
      });
    }
    expect(refusalOf(() => transplantStartDate(NaN, 3))).toEqual({
      code: 'notADate',
      name: 'set_out',
      given: 'NaN',
    });
  });

  test('a fraction of a day rounds up, and the working says so (hand computed)', () => {
    const { value, steps, assumptions } = recording((record) => transplantStartDate(setOut, 3.5, record));
    expect(isoDate(value)).toBe('2026-04-22');
    expect(steps.at(-1)).toMatchObject({ result: value, rounded: 'up' });
    expect(assumptions).toEqual([]);
  });

  test('the working ends in the returned day and changes nothing', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      transplantStartDate(setOut, undefined, record),
    );
    expect(value).toBe(transplantStartDate(setOut, undefined));
    expect(steps.at(-1)).toEqual({
      step: 'transplantStart',
      inputs: { set_out: setOut, weeks: 3, daysPerWeek: 7 },
      result: value,
      unit: 'date',
    });
    expect(assumptions).toEqual([expect.objectContaining({ assumed: 'weeks', value: 3, unit: 'weeks' })]);
    expect(remarks).toEqual(['transplantWeeksDiffer']);
  });
});
