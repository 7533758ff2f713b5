import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plantsInArea } from '../../../src/calc/plants/plantsInArea';
import { plantsInRows } from '../../../src/calc/plants/plantsInRows';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured } from './placing';

const { us, metric } = unitSystems;

test.each([
  [12, 17_424],
  [18, 11_616],
  [24, 8712],
  [30, 6969],
  [36, 5808],
  [42, 4978],
])(
  'an acre at 30 in x %d in: %d (Commercial Gardening, vol. 3, table of plants in 1 acre)',
  (inches, plants) => {
    expect(plantsInArea(43_560, 2.5, inches, us)).toBe(plants);
  },
);

test('660 sq ft at 5 ft x 12 in: 132; whole but for binary fractions: 0.6 sq m at 1 m x 20 cm: 3', () => {
  expect(plantsInArea(660, 5, 12, us)).toBe(132);
  expect(plantsInArea(0.6, 1, 20, metric)).toBe(3);
});

test('never fewer than stand in rows in a rectangle of that area, and its ground is never more than there is', () => {
  fc.assert(
    fc.property(
      measured(10, 200),
      measured(10, 200),
      measured(1, 10),
      measured(6, 72),
      (l, w, row, plant) => {
        const plants = plantsInArea(l * w, row, plant, us);
        expect(plants).toBeGreaterThanOrEqual(plantsInRows(l, w, row, plant, us));
        expect(plants * row * (plant / 12)).toBeLessThanOrEqual(l * w * (1 + 1e-8));
        expect((plants + 1) * row * (plant / 12)).toBeGreaterThan(l * w * (1 - 1e-8));
      },
    ),
    seeded,
  );
});

test('too small an area asks whether acres or hectares were meant', () => {
  expect(refusalOf(() => plantsInArea(2, 5, 12, us))).toEqual({
    code: 'noPlantInArea',
    area: 2,
    areaPerPlant: 5,
    unit: 'sqFt',
    landUnit: 'acre',
    areaPerLand: 43_560,
  });
  expect(refusalOf(() => plantsInArea(0.5, 2, 50, metric))).toMatchObject({
    unit: 'sqM',
    landUnit: 'hectare',
    areaPerLand: 10_000,
  });
  expect(plantsInArea(5, 5, 12, us)).toBe(1);
  for (const area of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => plantsInArea(area, 5, 12, us))).toMatchObject({
      code: 'outOfRange',
      name: 'area',
    });
  }
  expect(refusalOf(() => plantsInArea(660, 0, 12, us))).toMatchObject({ name: 'row_spacing' });
});

test('the working ends in the plants, says the rounding and that edges lose some', () => {
  const { value, steps, remarks } = recording((record) => plantsInArea(662, 5, 12, us, record));
  expect(value).toBe(132);
  expect(steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
    ['areaPerPlant', 5, undefined],
    ['plantsInArea', 132, 'down'],
  ]);
  expect(remarks).toEqual(['edgesLoseSome']);
});
