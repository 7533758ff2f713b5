import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaFrom } from '../../../src/calc/area/areaFrom';
import { areaUnits, unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

// NIST Handbook 44, appendix C, tables of equivalents: from memory, check. The exact ones follow from the
// international foot of 0.3048 m.
describe('published equivalents', () => {
  test.each([
    ['acre', 43_560],
    ['sq yd', 9],
    ['sq mi', 640 * 43_560],
    ['sq ft', 1],
  ])('1 %s is exactly %d sq ft', (unit, squareFeet) => {
    expect(areaFrom(1, unit, us)).toBe(squareFeet);
  });

  test('144 sq in are a sq ft, 12 sq in a twelfth of one', () => {
    expect(areaFrom(144, 'sq in', us)).toBe(1);
    expect(areaFrom(12, 'sq in', us)).toBeCloseTo(1 / 12, 15);
  });

  test.each([
    ['are', 100],
    ['hectare', 10_000],
    ['sq km', 1_000_000],
    ['sq m', 1],
    ['sq ft', 0.09290304],
    ['sq yd', 0.83612736],
    ['sq in', 0.00064516],
    ['acre', 4046.8564224],
    ['sq mi', 2_589_988.110336],
  ])('1 %s is exactly %d sq m', (unit, squareMetres) => {
    expect(areaFrom(1, unit, metric) / squareMetres).toBeCloseTo(1, 14);
  });

  test.each([
    ['hectare', 2.471 * 43_560, 3],
    ['are', 119.599 * 9, 5],
    ['sq m', 10.764, 4],
    ['sq km', 247.105 * 43_560, 5],
  ])('1 %s is about %d sq ft', (unit, squareFeet, digits) => {
    expect(areaFrom(1, unit, us) / squareFeet).toBeCloseTo(1, digits);
  });
});

test('twice the value, twice the area; metric and us tell the same ground', () => {
  const units = fc.constantFrom(...Object.keys(areaUnits));
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), units, (hundredths, unit) => {
      const value = hundredths / 100;
      expect(areaFrom(2 * value, unit, us)).toBe(2 * areaFrom(value, unit, us));
      expect(areaFrom(value, unit, metric) / areaFrom(value, unit, us)).toBeCloseTo(0.3048 ** 2, 14);
    }),
    seeded,
  );
});

test('an unknown unit is refused with the units there are, and so is no area', () => {
  expect(refusalOf(() => areaFrom(1, 'rod', us))).toEqual({
    code: 'notAChoice',
    name: 'unit',
    given: 'rod',
    choices: Object.keys(areaUnits),
  });
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => areaFrom(bad, 'acre', us))).toMatchObject({ code: 'outOfRange', name: 'value' });
  }
});

test('the working shows the factor', () => {
  const { steps } = recording((record) => areaFrom(0.5, 'Acres', us, record));
  expect(steps).toEqual([
    {
      step: 'areaFrom',
      inputs: { value: 0.5, unit: 'acre', areaOfUnit: 43_560 },
      result: 21_780,
      unit: 'sqFt',
    },
  ]);
});
