import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convertTyped } from '../../../src/calc/units/convertTyped';
import type { Unit } from '../../../src/calc/units/units';

const seeded = { seed: 20261126, numRuns: 2000 };
const units: readonly Unit[] = [
  'ft',
  'in',
  'F',
  'oz',
  'lb',
  'perLb',
  'seedsPerOz',
  'lbPer100Ft',
  'perAcre',
  'perFt',
  'perCuFt',
  'perThousandGallons',
  'inOfWater',
  'cuIn',
  'lbPerAcre',
  'days',
];

describe('convertTyped', () => {
  test.each([
    [24, 'ft', 7.3152],
    [12, 'in', 30.48],
    [2.5, 'ft', 0.762],
  ] as const)(
    '%d %s are %d exactly (foot of 0.3048 m, inch of 2.54 cm: NIST Handbook 44, appendix C)',
    (us, unit, metric) => {
      expect(convertTyped(us, unit, 'metric')).toBe(metric);
      expect(convertTyped(metric, unit, 'us')).toBe(us);
    },
  );

  test.each([
    // 130 x 0.45359237 / 0.3048 = 193.4613...
    [130, 'lbPer100Ft', 193.46],
    // 1.1 / 0.45359237 = 2.425084...
    [1.1, 'perLb', 2.4251],
    // (60 - 32) / 1.8 = 15.5555...: five digits come back as 60.001.
    [60, 'F', 15.5556],
  ] as const)('%d %s are %d (hand computed, in as many digits as bring it back)', (us, unit, metric) => {
    expect(convertTyped(us, unit, 'metric')).toBe(metric);
  });

  test('leaves what both systems count alike', () => {
    expect(convertTyped(60, 'days', 'metric')).toBe(60);
    expect(convertTyped(0.123456789, 'share', 'us')).toBe(0.123456789);
  });

  test('a number of up to five significant digits comes back as it was typed, from either system', () => {
    const typed = fc
      .tuple(fc.integer({ min: 0, max: 99999 }), fc.integer({ min: -4, max: 3 }))
      .map(([digits, power]) => Number(`${digits}e${power}`));
    fc.assert(
      fc.property(typed, fc.constantFrom(...units), (value, unit) => {
        expect(convertTyped(convertTyped(value, unit, 'metric'), unit, 'us')).toBe(value);
        expect(convertTyped(convertTyped(value, unit, 'us'), unit, 'metric')).toBe(value);
      }),
      seeded,
    );
  });

  test('does not stray from the exact conversion by more than half of the fifth digit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 100000, noNaN: true }), (feet) => {
        const exact = feet * 0.3048;
        expect(Math.abs(convertTyped(feet, 'ft', 'metric') - exact)).toBeLessThanOrEqual(exact * 0.5e-4);
      }),
      seeded,
    );
  });
});
