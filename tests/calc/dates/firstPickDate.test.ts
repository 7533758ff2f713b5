import { UTCDate } from '@date-fns/utc';
import { addDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstPickDate, startMethods } from '../../../src/calc/dates/firstPickDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const start = dayNumber('2026-05-16');
const maturities = fc.integer({ min: 61, max: 364 });
const methods = fc.constantFrom(...startMethods);

describe('firstPickDate', () => {
  test.each([
    ['seed', 'seed', '2026-07-15'],
    ['transplant', 'seed', '2026-07-05'],
    ['transplant', 'transplant', '2026-07-15'],
    ['seed', 'transplant', '2026-07-25'],
  ] as const)(
    '60 days from 16 May, a %s with a packet that counts from %s: %s (hand computed)',
    (method, basis, expected) => {
      expect(isoDate(firstPickDate(start, 60, method, basis, undefined, undefined))).toBe(expected);
    },
  );

  test('60 + 14 days from 7 July (hand computed); seed and seed unless said otherwise', () => {
    const sowing = dayNumber('2026-07-07');
    expect(isoDate(firstPickDate(sowing, 60, 'seed', 'seed', undefined, 14))).toBe('2026-09-19');
    expect(isoDate(firstPickDate(sowing, 60, undefined, undefined, undefined, undefined))).toBe('2026-09-05');
  });

  test('agrees with date-fns 4.4.0 addDays', () => {
    fc.assert(
      fc.property(anyDay, maturities, fc.integer({ min: 0, max: 90 }), (day, maturity, fall) => {
        const expected = addDays(addDays(new UTCDate(`${isoDate(day)}T00:00:00Z`), maturity), fall);
        expect(firstPickDate(day, maturity, 'seed', 'seed', undefined, fall)).toBe(
          expected.getTime() / 86400000,
        );
      }),
      seeded,
    );
  });

  test('a transplant is as far ahead of seed under either basis, and the gain is all of it', () => {
    fc.assert(
      fc.property(
        anyDay,
        maturities,
        methods,
        fc.integer({ min: 0, max: 60 }),
        (day, maturity, basis, gain) => {
          const fromSeed = firstPickDate(day, maturity, 'seed', basis, gain, 0);
          expect(fromSeed - firstPickDate(day, maturity, 'transplant', basis, gain, 0)).toBe(gain);
        },
      ),
      seeded,
    );
  });

  test('a later start, more days or more fall days never give an earlier pick', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.double({ min: 61, max: 364, noNaN: true }),
        methods,
        methods,
        (day, maturity, method, basis) => {
          const pick = firstPickDate(day, maturity, method, basis, 10, 0);
          expect(firstPickDate(day + 1, maturity, method, basis, 10, 0)).toBeGreaterThanOrEqual(pick);
          expect(firstPickDate(day, maturity + 1, method, basis, 10, 0)).toBeGreaterThanOrEqual(pick);
          expect(firstPickDate(day, maturity, method, basis, 10, 1)).toBeGreaterThanOrEqual(pick);
          expect(pick).toBeGreaterThan(day);
        },
      ),
      seeded,
    );
  });

  test('bounds just in and just out, zero and NaN', () => {
    expect(firstPickDate(start, 365, 'seed', 'seed', undefined, 90)).toBe(start + 455);
    for (const days of [0, 365.5, -1, NaN]) {
      expect(refusalOf(() => firstPickDate(start, days, 'seed', 'seed', 10, 0))).toMatchObject({
        code: 'outOfRange',
        name: 'days_to_maturity',
        above: 0,
        atMost: 365,
      });
    }
    for (const fall of [-1, 90.5, NaN]) {
      expect(refusalOf(() => firstPickDate(start, 60, 'seed', 'seed', 10, fall))).toMatchObject({
        code: 'outOfRange',
        name: 'fall_days',
      });
    }
    for (const gain of [-1, 60.5, NaN]) {
      for (const method of startMethods) {
        expect(refusalOf(() => firstPickDate(start, 365, method, 'seed', gain, 0))).toMatchObject({
          code: 'outOfRange',
          name: 'transplant_gain',
        });
      }
    }
    expect(refusalOf(() => firstPickDate(NaN, 60, 'seed', 'seed', 10, 0))).toEqual({
      code: 'notADate',
      name: 'start',
      given: 'NaN',
    });
  });

  test('a gain that eats all the days to maturity is refused, where it is taken off', () => {
    expect(refusalOf(() => firstPickDate(start, 10, 'transplant', 'seed', undefined, 0))).toEqual({
      code: 'outOfRange',
      name: 'transplant_gain',
      value: 10,
      unit: 'days',
      atLeast: 0,
      below: 10,
    });
    expect(firstPickDate(start, 10.5, 'transplant', 'seed', 10, 0)).toBe(start + 1);
    expect(firstPickDate(start, 10, 'seed', 'seed', 10, 0)).toBe(start + 10);
  });

  test('a fraction of a day rounds up (hand computed: 52.5 days from 16 May)', () => {
    const { value, steps } = recording((record) =>
      firstPickDate(start, 52.5, 'seed', 'seed', undefined, 0, record),
    );
    expect(isoDate(value)).toBe('2026-07-08');
    expect(steps.at(-1)).toMatchObject({ result: value, rounded: 'up' });
  });

  test('the working ends in the returned day and assumes only what it used', () => {
    const all = recording((record) =>
      firstPickDate(start, 60, undefined, undefined, undefined, undefined, record),
    );
    expect(all.value).toBe(firstPickDate(start, 60, undefined, undefined, undefined, undefined));
    expect(all.steps.map(({ step, result }) => [step, result])).toEqual([['firstPick', all.value]]);
    expect(all.assumptions.map(({ assumed }) => assumed)).toEqual(['method', 'basis', 'fall_days']);

    const gained = recording((record) =>
      firstPickDate(start, 60, 'transplant', 'seed', undefined, 0, record),
    );
    expect(gained.steps.map(({ step, result }) => [step, result])).toEqual([
      ['daysFromSettingOut', 50],
      ['firstPick', gained.value],
    ]);
    expect(gained.assumptions.map(({ assumed, value }) => [assumed, value])).toEqual([
      ['transplant_gain', 10],
    ]);

    const lost = recording((record) => firstPickDate(start, 60, 'seed', 'transplant', 10, 0, record));
    expect(lost.steps.map(({ step, result }) => [step, result])).toEqual([
      ['daysFromSowing', 70],
      ['firstPick', lost.value],
    ]);
  });
});
