import { UTCDate } from '@date-fns/utc';
import { addDays } from 'date-fns';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { harvestAfterManure } from '../../../src/calc/dates/harvestAfterManure';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const spread = dayNumber('2026-03-02');

test('7 CFR 205.203(c)(1): 120 days where the fruit touches soil, 90 where it does not', () => {
  expect(isoDate(harvestAfterManure(spread, true))).toBe('2026-06-30');
  expect(isoDate(harvestAfterManure(spread, false))).toBe('2026-05-31');
});

test('agrees with date-fns 4.4.0 addDays on any date, over leap years and New Year', () => {
  fc.assert(
    fc.property(anyDay, fc.boolean(), (day, touches) => {
      const expected = addDays(new UTCDate(`${isoDate(day)}T00:00:00Z`), touches ? 120 : 90);
      expect(harvestAfterManure(day, touches)).toBe(expected.getTime() / 86400000);
    }),
    seeded,
  );
});

test('what is no day is refused', () => {
  for (const bad of [NaN, 0.5, Infinity]) {
    expect(refusalOf(() => harvestAfterManure(bad, true))).toMatchObject({
      code: 'notADate',
      name: 'manure_date',
    });
  }
});

test('working: the wait, the day, and that other rules may ask for more', () => {
  const { value, steps, remarks } = recording((record) => harvestAfterManure(spread, true, record));
  expect(steps).toMatchObject([
    { step: 'manureWait', result: 120, unit: 'days' },
    { step: 'harvestAfterManure', result: value, unit: 'date' },
  ]);
  expect(remarks).toEqual(['vinesLieOnSoil', 'manureRules']);
});
