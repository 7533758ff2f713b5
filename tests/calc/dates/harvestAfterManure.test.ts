import { differenceInCalendarDays } from 'date-fns';
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

test('not a day less on any date, over leap years and New Year (date-fns 4.4.0 differenceInCalendarDays)', () => {
  fc.assert(
    fc.property(anyDay, fc.boolean(), (day, touches) => {
      const harvest = isoDate(harvestAfterManure(day, touches));
      const waited = differenceInCalendarDays(
        new Date(`${harvest}T12:00`),
        new Date(`${isoDate(day)}T12:00`),
      );
      expect(waited).toBe(touches ? 120 : 90);
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
