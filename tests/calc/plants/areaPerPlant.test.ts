import { expect, test } from 'vitest';
import { areaPerPlant } from '../../../src/calc/plants/areaPerPlant';
import { unitSystems } from '../../../src/calc/units/units';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('2 ft x 36 in is 6 sq ft, 1.5 m x 60 cm is 0.9 sq m (hand computed)', () => {
  expect(areaPerPlant(2, 36, us)).toBe(6);
  expect(areaPerPlant(1.5, 60, metric)).toBeCloseTo(0.9, 12);
});

test('zero, a negative, NaN and infinity name the argument and its unit', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    const refused = { code: 'outOfRange', value: bad, above: 0 };
    expect(refusalOf(() => areaPerPlant(bad, 12, us))).toEqual({
      ...refused,
      name: 'row_spacing',
      unit: 'ft',
    });
    expect(refusalOf(() => areaPerPlant(2, bad, metric))).toEqual({
      ...refused,
      name: 'plant_spacing',
      unit: 'cm',
    });
  }
});

test('the working has the one step', () => {
  const { value, steps } = recording((record) => areaPerPlant(2, 36, us, record));
  expect(steps).toEqual([
    {
      step: 'areaPerPlant',
      inputs: { row_spacing: 2, plant_spacing: 36, spacingPerLength: 12 },
      result: value,
      unit: 'sqFt',
    },
  ]);
});
