import { describe, expect, test } from 'vitest';
import { seedsPerHill } from '../../../src/calc/seed/seedsPerHill';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { exactShortfall } from '../stand/oracles';

describe('seedsPerHill', () => {
  test.each([
    [3, 0.8, undefined, 0.95, 6, '6 seeds: 0.98304, 5: 0.94208'],
    [3, 0.8, undefined, undefined, 5, '5 seeds: 0.94208, 4: 0.8192'],
    [2, 0.8, undefined, undefined, 4, '4 seeds: 0.9728, 3: 0.896'],
    [2, 0.8, undefined, 0.8, 3, '3 seeds: 0.896, 2: 0.64'],
    [1, 1, undefined, 0.99, 1, 'one sure seed'],
    [3, 0.8, 0.5, 0.9, 12, '12 seeds at 0.4: 0.9166, 11: 0.8811'],
  ] as const)(
    '%d plants at %d, %s, %s: %d (hand computed: %s)',
    (plants, g, e, assurance, expected, _why) => {
      expect(seedsPerHill(plants, g, e, assurance)).toBe(expected);
    },
  );

  test('the customary 4 to 5 seeds for 3 plants (Illinois Vegetable Garden Guide) at 80 %', () => {
    expect(1 - exactShortfall(3, 4, 80, 100)).toBeCloseTo(0.8192, 12);
    expect(1 - exactShortfall(3, 5, 80, 100)).toBeCloseTo(0.94208, 12);
    expect(seedsPerHill(3, 0.8, undefined, 0.8192)).toBe(4);
    expect(seedsPerHill(3, 0.8, undefined, 0.8193)).toBe(5);
  });

  test('enough, and one fewer is not, by exact sums in whole numbers', () => {
    for (const plants of [1, 2, 3, 4, 8]) {
      for (const percent of [20, 55, 71, 88, 99]) {
        for (const assurance of [0.5, 0.9, 0.97]) {
          const seeds = seedsPerHill(plants, percent / 100, undefined, assurance);
          expect(exactShortfall(plants, seeds, percent, 100)).toBeLessThanOrEqual(1 - assurance + 1e-12);
          expect(exactShortfall(plants, seeds - 1, percent, 100)).toBeGreaterThan(1 - assurance);
        }
      }
    }
  });

  test('bounds name the argument of this function', () => {
    expect(refusalOf(() => seedsPerHill(0, 0.8))).toMatchObject({
      code: 'outOfRange',
      name: 'plants_per_hill',
    });
    expect(refusalOf(() => seedsPerHill(NaN, 0.8))).toMatchObject({
      code: 'outOfRange',
      name: 'plants_per_hill',
    });
    expect(refusalOf(() => seedsPerHill(2.5, 0.8))).toMatchObject({
      code: 'notWhole',
      name: 'plants_per_hill',
    });
    expect(refusalOf(() => seedsPerHill(3, 0))).toMatchObject({ code: 'outOfRange', name: 'germination' });
    expect(refusalOf(() => seedsPerHill(3, 0.8, 90))).toMatchObject({
      code: 'percentForShare',
      name: 'field_emergence',
    });
    expect(refusalOf(() => seedsPerHill(3, 0.8, 0.9, 1))).toEqual({ code: 'assuranceOfOne' });
  });

  test('the working ends in the returned seeds and names both defaults', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      seedsPerHill(3, 0.8, undefined, undefined, record),
    );
    expect(value).toBe(seedsPerHill(3, 0.8));
    expect(steps.map(({ step, result }) => [step, result])).toEqual([
      ['standChance', 0.8],
      ['seedsPerHill', value],
    ]);
    // Hand computed, as in the table above.
    expect(steps.at(-1)?.inputs).toMatchObject({
      chanceOfThese: expect.closeTo(0.94208, 12),
      chanceOfOneFewer: expect.closeTo(0.8192, 12),
    });
    expect(assumptions.map(({ assumed, value: given, ground }) => [assumed, given, ground])).toEqual([
      ['field_emergence', 1, 'judgement'],
      ['assurance', 0.9, 'judgement'],
    ]);
    expect(remarks).toEqual(['noFieldLossAssumed']);
  });
});
