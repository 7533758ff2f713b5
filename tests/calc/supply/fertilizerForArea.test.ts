import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fertilizerForArea } from '../../../src/calc/supply/fertilizerForArea';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test.each([
  [50, 0.05],
  [100, 0.1],
])('North Carolina HIL-24: %d lb an acre of a nutrient at %d are 1,000 lb of 5-10-10', (rate, grade) => {
  expect(fertilizerForArea(43560, rate, grade, us)).toBeCloseTo(1000, 9);
});

test('1,000 sq ft at 50 lb an acre of 5 %: 22.96 lb; a hectare at 60 kg of 15 %: 400 kg (hand computed)', () => {
  expect(fertilizerForArea(1000, 50, 0.05, us)).toBeCloseTo(22.957, 3);
  expect(fertilizerForArea(10_000, 60, 0.15, metric)).toBeCloseTo(400, 9);
});

test('both systems bring the same on the same field: 0.45359237 kg a lb, 0.40468564224 ha an acre (NIST)', () => {
  const rates = fc.double({ min: 0, max: 300, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 11, max: 1e7, noNaN: true }), rates, (area, rate) => {
      const pounds = fertilizerForArea(area, rate, 0.1, us);
      const kg = fertilizerForArea(area * 0.09290304, (rate * 0.45359237) / 0.40468564224, 0.1, metric);
      expect(Math.abs(kg - pounds * 0.45359237)).toBeLessThanOrEqual(1e-9 * Math.max(1, kg));
    }),
    seeded,
  );
});

test('bounds and refusals', () => {
  expect(fertilizerForArea(43560, 0, 0.05, us)).toBe(0);
  expect(fertilizerForArea(43560, 50, 1, us)).toBe(50);
  expect(refusalOf(() => fertilizerForArea(1, 50, 0.05, us))).toMatchObject({ code: 'areaInLandUnits' });
  expect(refusalOf(() => fertilizerForArea(43560, 50, 5, us))).toEqual({
    code: 'percentForShare',
    name: 'grade',
    value: 5,
  });
  for (const bad of [0, -0.1, NaN, Infinity]) {
    expect(refusalOf(() => fertilizerForArea(43560, 50, bad, us))).toMatchObject({
      code: 'outOfRange',
      name: 'grade',
    });
  }
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => fertilizerForArea(43560, bad, 0.05, metric))).toMatchObject({
      code: 'outOfRange',
      name: 'rate',
      unit: 'kgPerHectare',
    });
  }
});

test('working: the nutrient, then the bag; test the soil first', () => {
  const { value, steps, remarks } = recording((record) => fertilizerForArea(43560, 50, 0.05, us, record));
  expect(steps).toMatchObject([
    { step: 'nutrientForArea', result: 50, unit: 'lb' },
    { step: 'fertilizerForArea', result: value, unit: 'lb' },
  ]);
  expect(remarks).toEqual(['gradeAsOnTheBag', 'soilTestFirst']);
});
