import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seedWeight } from '../../../src/calc/seed/seedWeight';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

describe('seedWeight', () => {
  test('16,000 cucumber seeds at 1,000 an ounce: a pound (NC State AG-552: 16,000 to the pound)', () => {
    expect(seedWeight(16_000, 1000, us)).toBe(16);
  });

  test.each([
    [500, 1000, us, 0.5],
    [300, 904, us, 300 / 904],
    [0, 1000, us, 0],
    [353, 35.3, metric, 10],
  ])('%d seeds (hand computed)', (seeds, perUnit, units, expected) => {
    expect(seedWeight(seeds, perUnit, units)).toBeCloseTo(expected, 12);
  });

  test('ounces and grams agree: 28.3495 g an ounce (NIST Handbook 44, appendix C)', () => {
    expect(seedWeight(500, 1000 / 28.349523125, metric) / seedWeight(500, 1000, us)).toBeCloseTo(28.3495, 4);
  });

  test('weights add up, and give the seeds back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 1, max: 3000 }),
        (some, more, perUnit) => {
          const both = seedWeight(some + more, perUnit, us);
          expect(both).toBeCloseTo(seedWeight(some, perUnit, us) + seedWeight(more, perUnit, us), 6);
          expect(both * perUnit).toBeCloseTo(some + more, 6);
        },
      ),
      seeded,
    );
  });

  test('bounds name the argument and its unit', () => {
    for (const bad of [-1, NaN, Infinity]) {
      expect(refusalOf(() => seedWeight(bad, 1000, us))).toMatchObject({
        code: 'outOfRange',
        name: 'seeds',
        atLeast: 0,
      });
    }
    for (const bad of [0, -1, NaN, Infinity]) {
      expect(refusalOf(() => seedWeight(500, bad, metric))).toMatchObject({
        code: 'outOfRange',
        name: 'seeds_per_unit',
        unit: 'seedsPerG',
        above: 0,
      });
    }
  });

  test('the working ends in the returned weight', () => {
    const { value, steps, remarks } = recording((record) => seedWeight(500, 1000, us, record));
    expect(value).toBe(seedWeight(500, 1000, us));
    expect(steps).toEqual([
      { step: 'seedWeight', inputs: { seeds: 500, seeds_per_unit: 1000 }, result: 0.5, unit: 'oz' },
    ]);
    expect(remarks).toEqual(['lotsDiffer']);
  });
});
