import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakEvenPrice } from '../../../src/calc/budget/breakEvenPrice';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { watermelon1999 } from './publishedBudget';

test('Texas B-1241, watermelon: 7.085 a hundredweight over variable, 8.063 over all costs (hand divided)', () => {
  const { printed, yieldCwt } = watermelon1999;
  expect(breakEvenPrice(printed.variable, yieldCwt)).toBeCloseTo(7.0854, 4);
  expect(breakEvenPrice(printed.all, yieldCwt)).toBeCloseTo(8.0631, 4);
});

test('the price times the yield is the cost; twice the yield halves it', () => {
  const amounts = fc.double({ min: 0.01, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(amounts, amounts, (cost, sold) => {
      const price = breakEvenPrice(cost, sold);
      expect((price * sold) / cost).toBeCloseTo(1, 12);
      expect(breakEvenPrice(cost, 2 * sold)).toBe(price / 2);
    }),
    seeded,
  );
});

test('a yield of 0 has no price, and no cost is no budget', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => breakEvenPrice(100, bad))).toMatchObject({ name: 'total_yield', above: 0 });
    expect(refusalOf(() => breakEvenPrice(bad, 100))).toMatchObject({ name: 'total_cost', above: 0 });
  }
});

test('the working has the one step and says what counts as yield', () => {
  const { value, steps, remarks } = recording((record) => breakEvenPrice(100, 40, record));
  expect(steps).toMatchObject([{ step: 'breakEvenPrice', result: value }]);
  expect(remarks).toEqual(['whatIsSoldPays']);
});
