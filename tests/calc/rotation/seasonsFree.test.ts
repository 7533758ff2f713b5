import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seasonsFree } from '../../../src/calc/rotation/seasonsFree';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('2026 after 2023: 2024 and 2025 are free (counted out); the latest year counts, in any order', () => {
  expect(seasonsFree(2026, [2023])).toBe(2);
  expect(seasonsFree(2026, [2023, null, 2019, 2021])).toBe(2);
  expect(seasonsFree(2026, [2025])).toBe(0);
});

test('nothing on record is not a number of years', () => {
  expect(seasonsFree(2026, [])).toBeNull();
  expect(seasonsFree(2026, [null, null])).toBeNull();
});

test('agrees with counting the years in between', () => {
  const years = fc.array(fc.integer({ min: 1950, max: 2099 }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(years, fc.integer({ min: 2100, max: 2150 }), (past, year) => {
      let free = 0;
      while (!past.includes(year - 1 - free)) free++;
      expect(seasonsFree(year, past)).toBe(free);
    }),
    seeded,
  );
});

test('refusals: a past year that is none, a date for a year', () => {
  for (const late of [2026, 2030]) {
    expect(refusalOf(() => seasonsFree(2026, [2020, late]))).toEqual({
      code: 'pastYearNotPast',
      pastYear: late,
      year: 2026,
    });
  }
  expect(refusalOf(() => seasonsFree(46144, [2020]))).toMatchObject({ code: 'outOfRange', name: 'year' });
  expect(refusalOf(() => seasonsFree(2026, [46144]))).toMatchObject({
    code: 'outOfRange',
    name: 'past_year',
  });
  expect(refusalOf(() => seasonsFree(2026, [2020.5]))).toMatchObject({ code: 'notWhole' });
  expect(refusalOf(() => seasonsFree(NaN, []))).toMatchObject({ name: 'year' });
});

test('working: the last year, and the rests that are advised; none on record still has those', () => {
  const { value, steps, remarks } = recording((record) => seasonsFree(2026, [2019, 2023], record));
  expect(steps).toEqual([
    { step: 'seasonsFree', inputs: { year: 2026, lastYear: 2023 }, result: value, unit: 'none' },
  ]);
  expect(remarks).toEqual(['restsAdvised']);
  expect(recording((record) => seasonsFree(2026, [], record))).toMatchObject({
    steps: [],
    remarks: ['restsAdvised'],
  });
});
