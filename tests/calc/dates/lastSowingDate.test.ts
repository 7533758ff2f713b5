import { UTCDate } from '@date-fns/utc';
import { subDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstPickDate } from '../../../src/calc/dates/firstPickDate';
import { lastPickDate } from '../../../src/calc/dates/lastPickDate';
import { lastSowingDate } from '../../../src/calc/dates/lastSowingDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const firstFrost = dayNumber('2026-10-10');
const maturities = fc.integer({ min: 1, max: 364 });
const harvests = fc.integer({ min: 0, max: 365 });
const allowances = fc.integer({ min: 0, max: 90 });

describe('lastSowingDate', () => {
  test('Virginia Tech (quoted 2011): a 65-day crop needs 79 days in fall, 93 with the frost-tender factor', () => {
    expect(firstFrost - lastSowingDate(firstFrost, 65, 0, 14, 0)).toBe(79);
    expect(firstFrost - lastSowingDate(firstFrost, 65, 0, undefined, undefined)).toBe(93);
  });

  test('check values: 60 + 21 + 14 days and 115 + 14 days before 10 October (hand computed)', () => {
    expect(isoDate(lastSowingDate(firstFrost, 60, 21, 14, 0))).toBe('2026-07-07');
    expect(isoDate(lastSowingDate(firstFrost, 115, 0, 14, 0))).toBe('2026-06-03');
  });

  test('defaults are 21, 14 and 14: 60 + 49 = 109 days before (hand computed)', () => {
    expect(isoDate(lastSowingDate(firstFrost, 60, undefined, undefined, undefined))).toBe('2026-06-23');
  });

  test('agrees with date-fns 4.4.0 subDays, taken off one by one', () => {
    fc.assert(
      fc.property(
        anyDay,
        maturities,
        harvests,
        allowances,
        allowances,
        (frost, maturity, harvest, fall, margin) => {
          const date = [maturity, harvest, fall, margin].reduce<Date>(
            (day, days) => subDays(day, days),
            new UTCDate(`${isoDate(frost)}T00:00:00Z`),
          );
          expect(lastSowingDate(frost, maturity, harvest, fall, margin)).toBe(date.getTime() / 86400000);
        },
      ),
      seeded,
    );
  });

  test('a later frost never gives an earlier date, longer days to maturity never a later one', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.double({ min: 0.1, max: 364, noNaN: true }),
        harvests,
        (frost, maturity, harvest) => {
          const sowing = lastSowingDate(frost, maturity, harvest, 14, 14);
          expect(lastSowingDate(frost + 1, maturity, harvest, 14, 14)).toBeGreaterThanOrEqual(sowing);
          expect(lastSowingDate(frost, maturity + 1, harvest, 14, 14)).toBeLessThanOrEqual(sowing);
        },
      ),
      seeded,
    );
  });

  test('sown on the last day, the first pick comes harvest days and frost margin before the frost', () => {
    fc.assert(
      fc.property(
        anyDay,
        maturities,
        harvests,
        allowances,
        allowances,
        (frost, maturity, harvest, fall, margin) => {
          const sowing = lastSowingDate(frost, maturity, harvest, fall, margin);
          const pick = firstPickDate(sowing, maturity, 'seed', 'seed', undefined, fall);
          expect(frost - pick).toBe(harvest + margin);
        },
      ),
      seeded,
    );
  });

  test('sown on the last day with a margin, no harvest is cut short by the frost', () => {
    fc.assert(
      fc.property(
        anyDay,
        maturities,
        harvests,
        fc.integer({ min: 1, max: 90 }),
        (frost, maturity, harvest, margin) => {
          const pick = firstPickDate(
            lastSowingDate(frost, maturity, harvest, 14, margin),
            maturity,
            'seed',
            'seed',
            undefined,
            14,
          );
          expect(lastPickDate(pick, harvest, frost)).toBe(pick + harvest);
        },
      ),
      seeded,
    );
  });

  test.each([
    ['days_to_maturity', [0, 365.5, NaN], [0.5, 365]],
    ['harvest_days', [-0.5, 365.5, NaN], [0, 365]],
    ['fall_days', [-0.5, 90.5, NaN], [0, 90]],
    ['frost_margin', [-0.5, 90.5, NaN], [0, 90]],
  ] as const)('bounds of %s', (name, out, within) => {
    const names = ['days_to_maturity', 'harvest_days', 'fall_days', 'frost_margin'] as const;
    const calculate = (value: number): number => {
      const [maturity, harvest, fall, margin] = names.map((each) => (each === name ? value : 1));
      return lastSowingDate(firstFrost, maturity ?? 1, harvest, fall, margin);
    };
    for (const value of out)
      expect(refusalOf(() => calculate(value))).toMatchObject({ code: 'outOfRange', name, unit: 'days' });
    for (const value of within) expect(calculate(value)).toBe(Math.floor(firstFrost - 3 - value));
  });

  test('a frost that is no day is refused', () => {
    expect(refusalOf(() => lastSowingDate(NaN, 60, 21, 14, 14))).toEqual({
      code: 'notADate',
      name: 'first_frost',
      given: 'NaN',
    });
  });

  test('a fraction of a day rounds down, and the working says so', () => {
    const { value, steps } = recording((record) => lastSowingDate(firstFrost, 52.5, 21, 14, 14, record));
    expect(value).toBe(firstFrost - 102);
    expect(steps.at(-1)).toMatchObject({ step: 'lastSowing', result: value, rounded: 'down' });
  });

  test('the working ends in the returned day, names three assumptions and changes nothing', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      lastSowingDate(firstFrost, 60, undefined, undefined, undefined, record),
    );
    expect(value).toBe(lastSowingDate(firstFrost, 60, undefined, undefined, undefined));
    expect(steps.map(({ step, result }) => [step, result])).toEqual([
      ['daysBeforeFrost', 109],
      ['lastSowing', value],
    ]);
    expect(assumptions.map(({ assumed, value: assumedValue }) => [assumed, assumedValue])).toEqual([
      ['harvest_days', 21],
      ['fall_days', 14],
      ['frost_margin', 14],
    ]);
    expect(remarks).toContain('harvestIsForManyPicks');
    expect(recording((record) => lastSowingDate(firstFrost, 60, 0, 14, 14, record)).remarks).not.toContain(
      'harvestIsForManyPicks',
    );
  });
});
