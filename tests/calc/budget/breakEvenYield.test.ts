import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakEvenYield } from '../../../src/calc/budget/breakEvenYield';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// Texas B-1241 (C12), cantaloupe, Rio Grande Valley, projected for 2006: 9.77 a carton; harvest 1.25, pack 2.30 and
// sales 0.50 a carton, 2,430 for 600 cartons. Its costs before harvest were not seen whole: 1,144 is ours.
const harvestCost = 1.25 + 2.3 + 0.5;

test('B-1241, cantaloupe: 600 cartons cost 2,430 to harvest, pack and sell', () => {
  expect(600 * harvestCost).toBeCloseTo(2430, 9);
});

test('costs of 1,144 take 200 cartons at those prices, not 117 (hand computed: 1,144 / 5.72 and / 9.77)', () => {
  expect(breakEvenYield(1144, 9.77, harvestCost)).toBeCloseTo(200, 9);
  expect(breakEvenYield(1144, 9.77, undefined)).toBeCloseTo(117.093, 3);
});

test('at that yield income and all costs are alike, and a dearer harvest takes more', () => {
  const money = fc.double({ min: 0.01, max: 1000, noNaN: true });
  fc.assert(
    fc.property(money, money, money, (costs, harvest, left) => {
      const price = harvest + left;
      const yielded = breakEvenYield(costs, price, harvest);
      expect((yielded * price) / (costs + yielded * harvest)).toBeCloseTo(1, 6);
      expect(breakEvenYield(costs, price, harvest / 2)).toBeLessThan(yielded);
    }),
    seeded,
  );
});

test('a harvest that costs the price or more: no yield breaks even', () => {
  for (const harvest of [4, 4.01, 100]) {
    expect(refusalOf(() => breakEvenYield(1000, 4, harvest))).toEqual({
      code: 'noYieldBreaksEven',
      price: 4,
      harvestCost: harvest,
    });
  }
});

test('refusals', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => breakEvenYield(bad, 4, 1))).toMatchObject({ name: 'costs_not_tied_to_yield' });
    expect(refusalOf(() => breakEvenYield(1000, bad, 1))).toMatchObject({ name: 'price', above: 0 });
  }
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => breakEvenYield(1000, 4, bad))).toMatchObject({ name: 'harvest_cost', atLeast: 0 });
  }
});

test('working: what is left of the price, then the yield; a harvest cost left out is told', () => {
  const { value, steps, assumptions, remarks } = recording((record) =>
    breakEvenYield(1000, 4, undefined, record),
  );
  expect(steps).toMatchObject([
    { step: 'leftOfPrice', result: 4 },
    { step: 'breakEvenYield', result: value },
  ]);
  expect(assumptions).toMatchObject([{ assumed: 'harvest_cost', value: 0 }]);
  expect(remarks).toEqual(['harvestCostLeftOut']);
  expect(recording((record) => breakEvenYield(1000, 4, 0, record)).remarks).toEqual([]);
});
