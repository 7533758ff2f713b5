import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysToEmergence } from '../../../src/calc/soil/daysToEmergence';
import { normalSeedlings } from '../../../src/calc/soil/normalSeedlings';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

/** Harrington and Minges 1954, days; of muskmelon and watermelon only what was tested. */
const published: readonly [string, number, number][] = [
  ['cucumber', 59, 13],
  ['cucumber', 68, 6],
  ['cucumber', 77, 4],
  ['cucumber', 86, 3],
  ['cucumber', 95, 3],
  ['muskmelon', 68, 8],
  ['muskmelon', 77, 4],
  ['muskmelon', 86, 3],
  ['watermelon', 68, 12],
  ['watermelon', 77, 5],
  ['watermelon', 86, 4],
  ['watermelon', 95, 3],
];

describe('daysToEmergence', () => {
  test.each(published)(
    '%s at %d F: %d (Harrington and Minges 1954, in Knott’s Handbook 1997)',
    (crop, f, days) => {
      expect(daysToEmergence(crop, f, us)).toBeCloseTo(days, 9);
      expect(daysToEmergence(crop, ((f - 32) * 5) / 9, metric)).toBeCloseTo(days, 9);
    },
  );

  test('between knots in a line of rates: cucumber at 64 F 7.89 (computed for the reference, by hand here)', () => {
    // 17.78 C is 5/9 of the way from 13 to 6 days.
    expect(daysToEmergence('cucumber', 64, us)).toBeCloseTo(1 / ((4 / 9) * (1 / 13) + (5 / 9) * (1 / 6)), 9);
    expect(daysToEmergence('cucumber', 64, us)).toBeCloseTo(7.89, 2);
    const { steps } = recording((record) => daysToEmergence('cucumber', 64, us, record));
    expect(steps[0]?.inputs).toMatchObject({
      soil_temperature: 64,
      coolerAt: expect.closeTo(59, 9),
      warmerAt: expect.closeTo(68, 9),
      coolerDays: 13,
      warmerDays: 6,
      part: expect.closeTo(5 / 9, 9),
    });
  });

  test('the extension’s field rule lies in it: 9 to 16 days just above 60 F, 5 to 6 at 70 F (NC State)', () => {
    const above60 = daysToEmergence('cucumber', 60.5, us);
    expect(above60).toBeGreaterThan(9);
    expect(above60).toBeLessThan(16);
    expect(Math.round(daysToEmergence('cucumber', 70, us))).toBeOneOf([5, 6]);
  });

  test('warmer soil is never slower, and synonyms are understood', () => {
    const warmth = fc.integer({ min: 590, max: 950 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(warmth, warmth, (one, other) => {
        const [cool, warm] = [Math.min(one, other), Math.max(one, other)];
        expect(daysToEmergence('slicing cucumber', warm, us)).toBeLessThanOrEqual(
          daysToEmergence('cucumber', cool, us) + 1e-9,
        );
      }),
      seeded,
    );
    expect(daysToEmergence('cantaloupe', 77, us)).toBe(daysToEmergence('muskmelon', 77, us));
  });

  test('outside the table, and crops without one', () => {
    expect(refusalOf(() => daysToEmergence('cucumber', 58, us))).toMatchObject({
      code: 'outsideEmergence',
      from: expect.closeTo(59, 9) as unknown,
      to: expect.closeTo(95, 9) as unknown,
      unit: 'F',
    });
    expect(refusalOf(() => daysToEmergence('cucumber', 36, metric))).toMatchObject({
      from: 15,
      to: 35,
      unit: 'C',
    });
    for (const crop of ['pumpkin', 'zucchini', 'gourd']) {
      expect(refusalOf(() => daysToEmergence(crop, 70, us))).toMatchObject({ code: 'noEmergence' });
    }
    expect(refusalOf(() => daysToEmergence('cucumbr', 70, us))).toMatchObject({ code: 'unknownName' });
    expect(refusalOf(() => daysToEmergence('cucumber', 700, us))).toMatchObject({ code: 'outOfRange' });
  });

  test('warns where fewer than three in four come up normal: muskmelon at 68 F, 38 %', () => {
    const remarks = (crop: string, f: number) =>
      recording((record) => daysToEmergence(crop, f, us, record)).remarks;
    expect(remarks('muskmelon', 68)).toEqual(['fewNormalSeedlings']);
    expect(remarks('cucumber', 68)).toEqual([]);
  });
});

describe('normalSeedlings', () => {
  test.each([
    ['cucumber', 59, 0.95],
    ['cucumber', 104, 0.49],
    ['muskmelon', 68, 0.38],
    ['watermelon', 59, 0.17],
    ['watermelon', 95, 0.96],
  ])('%s at %d F: %d (the table’s shares)', (crop, f, share) => {
    expect(normalSeedlings(crop, f, us)).toBeCloseTo(share, 9);
  });

  test('half-way between two temperatures, half-way between their shares (by hand)', () => {
    expect(normalSeedlings('watermelon', 17.5, metric)).toBeCloseTo((0.17 + 0.94) / 2, 9);
    expect(recording((record) => normalSeedlings('watermelon', 17.5, metric, record)).steps).toMatchObject([
      {
        step: 'normalSeedlings',
        inputs: {
          soil_temperature: 17.5,
          coolerAt: 15,
          warmerAt: 20,
          cooler: 0.17,
          warmer: 0.94,
          part: 0.5,
        },
      },
    ]);
  });

  test('outside the table', () => {
    expect(refusalOf(() => normalSeedlings('cucumber', 41, metric))).toMatchObject({
      code: 'outsideEmergence',
    });
    expect(refusalOf(() => normalSeedlings('gourd', 70, us))).toMatchObject({ code: 'noEmergence' });
  });
});
