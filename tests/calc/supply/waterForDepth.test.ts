import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waterForDepth } from '../../../src/calc/supply/waterForDepth';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('an acre-inch is 27,154 gallons (a published note on irrigation: 27,154; exactly 27,154.29)', () => {
  expect(waterForDepth(43560, 1, us)).toBeCloseTo(27154.29, 2);
});

test('10,000 sq m at 25 mm: 250,000 litres (hand computed: 1 mm on 1 sq m is a litre)', () => {
  expect(waterForDepth(10_000, 25, metric)).toBe(250_000);
});

test('both systems give the same water: 3.785411784 litres a gallon (NIST Handbook 44)', () => {
  const depths = fc.double({ min: 0, max: 24, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 11, max: 1e7, noNaN: true }), depths, (area, inches) => {
      const litres = waterForDepth(area * 0.09290304, inches * 25.4, metric);
      expect(Math.abs(waterForDepth(area, inches, us) * 3.785411784 - litres)).toBeLessThanOrEqual(
        1e-9 * Math.max(1, litres),
      );
    }),
    seeded,
  );
});

test('bounds: no depth is no water; acres for square feet, a depth below 0', () => {
  expect(waterForDepth(43560, 0, us)).toBe(0);
  expect(refusalOf(() => waterForDepth(0.5, 1, us))).toMatchObject({ code: 'areaInLandUnits' });
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => waterForDepth(43560, bad, us))).toMatchObject({ name: 'depth', unit: 'in' });
    expect(refusalOf(() => waterForDepth(43560, bad, metric))).toMatchObject({ unit: 'mm' });
  }
});

test('the working has the one step and says what comes on top', () => {
  const { value, steps, remarks } = recording((record) => waterForDepth(1000, 1, us, record));
  expect(steps).toEqual([
    {
      step: 'waterForDepth',
      inputs: { area: 1000, depth: 1, waterPerAreaAndDepth: 144 / 231 },
      result: value,
      unit: 'gallon',
    },
  ]);
  expect(remarks).toEqual(['waterLostComesOnTop']);
});
