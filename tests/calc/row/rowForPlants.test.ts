import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plantsInRows } from '../../../src/calc/plants/plantsInRows';
import { rowForPlants } from '../../../src/calc/row/rowForPlants';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { measured, positions } from '../plants/placing';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('100 plants at 12 in: 100 ft; 40 at 18 in: 60 ft; 30 at 60 cm: 18 m (hand computed)', () => {
  expect(rowForPlants(100, 12, us)).toBe(100);
  expect(rowForPlants(40, 18, us)).toBe(60);
  expect(rowForPlants(30, 60, metric)).toBe(18);
});

test('that many plants set out one by one fill it, half a spacing inside, and are counted back', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), measured(3, 96), (plants, inches) => {
      const row = rowForPlants(plants, inches, us);
      const spacing = inches / 12;
      expect(positions(spacing / 2, row - spacing / 2, spacing)).toHaveLength(plants);
      expect(plantsInRows(row, 1, 1, inches, us)).toBe(plants);
    }),
    seeded,
  );
});

test('refusals name the argument', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => rowForPlants(bad, 12, us))).toMatchObject({ code: 'outOfRange', name: 'plants' });
    expect(refusalOf(() => rowForPlants(9, bad, metric))).toMatchObject({
      name: 'plant_spacing',
      unit: 'cm',
    });
  }
  expect(refusalOf(() => rowForPlants(9.5, 12, us))).toMatchObject({ code: 'notWhole' });
});

test('the working has the one step', () => {
  const { value, steps } = recording((record) => rowForPlants(40, 18, us, record));
  expect(steps).toEqual([
    {
      step: 'rowForPlants',
      inputs: { plants: 40, plant_spacing: 18, spacingPerLength: 12 },
      result: value,
      unit: 'ft',
    },
  ]);
});
