import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inMetric } from '../../../src/calc/units/inMetric';

const seeded = { seed: 20261125, numRuns: 300 };

describe('inMetric', () => {
  test.each([
    [1, 'ft', 0.3048, 'm'],
    [12, 'in', 30.48, 'cm'],
    [1, 'sqFt', 0.09290304, 'sqM'],
  ] as const)('%d %s is %d %s exactly (NIST Handbook 44, appendix C)', (value, unit, metric, metricUnit) => {
    expect(inMetric(value, unit)).toEqual({ value: metric, unit: metricUnit });
  });

  test.each([
    [-40, -40],
    [32, 0],
    [212, 100],
  ])('%d F is %d C (fixed points of the scales)', (fahrenheit, celsius) => {
    expect(inMetric(fahrenheit, 'F')).toEqual({ value: celsius, unit: 'C' });
  });

  test('1,000 seeds an ounce are 35.27 a gram (hand computed: 1,000 / 28.349523125)', () => {
    expect(inMetric(1000, 'seedsPerOz').value).toBeCloseTo(35.27396, 5);
  });

  test('1 lb per 100 ft is 1.48816 kg per 100 m (hand computed: 0.45359237 / 30.48 x 100)', () => {
    expect(inMetric(1, 'lbPer100Ft').value).toBeCloseTo(1.488164, 6);
    expect(inMetric(1, 'lbPer100Ft').unit).toBe('kgPer100M');
  });

  test('1 an acre is 2.4710538 a hectare (NIST Handbook 44: an acre of 43,560 sq ft is 0.40468564224 ha)', () => {
    expect(inMetric(1, 'perAcre').value).toBeCloseTo(1 / 0.40468564224, 12);
    expect(inMetric(1, 'perAcre').unit).toBe('perHectare');
  });

  test.each([
    // A foot of 0.3048 m, a pound of 0.45359237 kg, a gallon of 231 cu in, an acre of 0.40468564224 ha.
    [0.3048, 'perFt', 1, 'perM'],
    [28.316846592, 'perCuFt', 1, 'perLitre'],
    [3.785411784, 'perThousandGallons', 1, 'perCuM'],
    [1, 'inOfWater', 25.4, 'mm'],
    [1, 'cuIn', 16.387064, 'ml'],
    [0.40468564224, 'lbPerAcre', 0.45359237, 'kgPerHectare'],
  ] as const)(
    '%d %s are %d %s (hand computed from NIST Handbook 44, appendix C)',
    (value, unit, metric, metricUnit) => {
      expect(inMetric(value, unit).value).toBeCloseTo(metric, 12);
      expect(inMetric(value, unit).unit).toBe(metricUnit);
    },
  );

  test('zero and NaN pass through', () => {
    expect(inMetric(0, 'ft').value).toBe(0);
    expect(inMetric(NaN, 'ft').value).toBeNaN();
  });

  test('units that both systems share stay as they are; larger stays larger', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.constantFrom('ft', 'in', 'sqFt', 'F', 'seedsPerOz', 'lbPer100Ft', 'perAcre'),
        (value, more, unit) => {
          expect(inMetric(value + more, unit).value).toBeGreaterThan(inMetric(value, unit).value);
          expect(inMetric(value, 'days')).toEqual({ value, unit: 'days' });
        },
      ),
      seeded,
    );
  });
});
