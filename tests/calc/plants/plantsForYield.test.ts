import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plantsForYield } from '../../../src/calc/plants/plantsForYield';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// Fruit an acre (printed in thousands) and fruit a plant, of three ways of picking tried on one planting: so the
// plants come out nearly alike.
test.each([
  [311_000, 9.84, 31_606],
  [197_000, 6.25, 31_520],
  [113_000, 3.6, 31_389],
])(
  '%d fruit at %d a plant: %d (North Carolina AG-552, harvest, table 11; the quotient hand computed)',
  (fruit, perPlant, plants) => {
    expect(plantsForYield(fruit, perPlant)).toBe(plants);
  },
);

test('whole but for binary fractions: 2.1 at 0.7 is 3 plants (exact quotient)', () => {
  expect(plantsForYield(2.1, 0.7)).toBe(3);
  expect(plantsForYield(100, 2.5)).toBe(40);
  expect(plantsForYield(0.1, 20)).toBe(1);
});

test('the least number that bears it', () => {
  const amounts = fc.integer({ min: 1, max: 1e7 });
  fc.assert(
    fc.property(amounts, amounts, (wanted, perPlant) => {
      // In whole numbers there is no rounding error: q plants bear it, q - 1 do not.
      const plants = plantsForYield(wanted / 100, perPlant / 100);
      expect(plants * perPlant).toBeGreaterThanOrEqual(wanted);
      expect((plants - 1) * perPlant).toBeLessThan(wanted);
    }),
    seeded,
  );
});

test('zero, a negative, NaN and infinity are refused', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => plantsForYield(bad, 2))).toMatchObject({
      code: 'outOfRange',
      name: 'wanted_yield',
    });
    expect(refusalOf(() => plantsForYield(100, bad))).toMatchObject({ name: 'yield_per_plant', above: 0 });
  }
});

test('the working ends in the plants', () => {
  const { value, steps, remarks } = recording((record) => plantsForYield(101, 2.5, record));
  expect(steps).toEqual([
    {
      step: 'plantsForYield',
      inputs: { wanted_yield: 101, yield_per_plant: 2.5 },
      result: value,
      unit: 'plants',
      rounded: 'up',
    },
  ]);
  expect(remarks).toEqual(['lossesComeOnTop']);
});
