import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seedLifeLeft } from '../../../src/calc/seed/seedLifeLeft';
import { cropNames } from '../../../src/reference/crops';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

describe('seedLifeLeft', () => {
  test.each([
    ['cucumber', 2023, 2026, 2, '5 years in both lists'],
    ['greenhouse cucumber', 2026, 2026, 5, 'packed this year'],
    ['cantaloupe', 2020, 2026, 0, '5 years, a year too old'],
    ['watermelon', 2024, 2026, 2, '4 in the list and at Cornell, 5 in the manual: the shorter'],
    ['zucchini', 2024, 2026, 1, 'squash: 3 in the manual, 4 in the list: the shorter'],
    ['winter squash', 2023, 2026, 0, 'squash, just outlived'],
    ['pumpkin', 2023, 2026, 1, '4 in the list'],
  ])('%s of %d in %d: %d years left (old manual, list of 2023: %s)', (crop, packed, year, left) => {
    expect(seedLifeLeft(crop, packed, year)).toBe(left);
  });

  test('a year older is a year less, down to none', () => {
    const crop = fc.constantFrom(...cropNames.filter((name) => name !== 'gourd'));
    fc.assert(
      fc.property(
        crop,
        fc.integer({ min: 1900, max: 2200 }),
        fc.integer({ min: 0, max: 30 }),
        (name, packed, age) => {
          const left = seedLifeLeft(name, packed, packed + age);
          expect(seedLifeLeft(name, packed, packed + age + 1)).toBe(Math.max(0, left - 1));
          expect(seedLifeLeft(name, packed + 100, packed + 100 + age)).toBe(left);
        },
      ),
      seeded,
    );
  });

  test('bad input', () => {
    expect(refusalOf(() => seedLifeLeft('gourd', 2023, 2026))).toEqual({ code: 'noSeedLife', crop: 'gourd' });
    expect(refusalOf(() => seedLifeLeft('cucumbr', 2023, 2026))).toMatchObject({ code: 'unknownName' });
    expect(refusalOf(() => seedLifeLeft('cucumber', 2027, 2026))).toEqual({
      code: 'packedLater',
      packed: 2027,
      year: 2026,
    });
    // 26 for 2026, and a date for its year.
    for (const bad of [26, 1899, 46144, NaN]) {
      expect(refusalOf(() => seedLifeLeft('cucumber', bad, 2026))).toMatchObject({ name: 'year_packed' });
      expect(refusalOf(() => seedLifeLeft('cucumber', 2023, bad))).toMatchObject({ name: 'year' });
    }
    expect(refusalOf(() => seedLifeLeft('cucumber', 2023.5, 2026))).toMatchObject({ code: 'notWhole' });
  });

  test('the working ends in the years, and always says to test', () => {
    const { value, steps, remarks } = recording((record) => seedLifeLeft('zucchini', 2024, 2026, record));
    expect(value).toBe(seedLifeLeft('zucchini', 2024, 2026));
    expect(steps.map(({ step, result }) => [step, result])).toEqual([
      ['seedLife', 3],
      ['seedLifeLeft', value],
    ]);
    expect(remarks).toEqual(['testStoredSeed']);
    const old = recording((record) => seedLifeLeft('zucchini', 2020, 2026, record));
    expect(old.remarks).toEqual(['seedOutlived']);
  });
});
