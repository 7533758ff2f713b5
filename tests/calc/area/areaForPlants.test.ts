import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areaForPlants } from '../../../src/calc/area/areaForPlants';
import { plantsInArea } from '../../../src/calc/plants/plantsInArea';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { measured } from '../plants/placing';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test.each([
  [17_424, 12],
  [8712, 24],
  [5808, 36],
])(
  '%d plants at 30 in x %d in: an acre (Commercial Gardening, vol. 3, plants in 1 acre)',
  (plants, inches) => {
    expect(areaForPlants(plants, 2.5, inches, us)).toBe(43_560);
  },
);

test('132 plants at 5 ft x 12 in: 660 sq ft; 10 at 1.5 m x 60 cm: 9 sq m (hand computed)', () => {
  expect(areaForPlants(132, 5, 12, us)).toBe(660);
  expect(areaForPlants(10, 1.5, 60, metric)).toBeCloseTo(9, 12);
});

test('that many plants fit in it, and no more', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e5 }), measured(1, 12), measured(6, 96), (plants, row, plant) => {
      expect(plantsInArea(areaForPlants(plants, row, plant, us), row, plant, us)).toBe(plants);
    }),
    seeded,
  );
});

test('refusals name the argument', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => areaForPlants(bad, 5, 12, us))).toMatchObject({
      code: 'outOfRange',
      name: 'plants',
    });
    expect(refusalOf(() => areaForPlants(9, bad, 12, us))).toMatchObject({ name: 'row_spacing' });
    expect(refusalOf(() => areaForPlants(9, 5, bad, us))).toMatchObject({ name: 'plant_spacing' });
  }
  expect(refusalOf(() => areaForPlants(9.5, 5, 12, us))).toMatchObject({ code: 'notWhole', name: 'plants' });
});

test('the working ends in the area and says that edges take more', () => {
  const { value, steps, remarks } = recording((record) => areaForPlants(132, 5, 12, us, record));
  expect(steps.map(({ step, result, unit }) => [step, result, unit])).toEqual([
    ['areaPerPlant', 5, 'sqFt'],
    ['areaForPlants', value, 'sqFt'],
  ]);
  expect(remarks).toEqual(['edgesTakeMore']);
});
