import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breakEvenPrice } from '../../../src/calc/budget/breakEvenPrice';
import { budgetReturn } from '../../../src/calc/budget/budgetReturn';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { cents, watermelon1999 } from './publishedBudget';

describe('Texas Agricultural Extension B-1241, watermelon, South Texas, 1999, line by line', () => {
  const { yieldCwt, price, beforeHarvest, harvest, interest, adjustment, fixed, printed } = watermelon1999;
  const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0);
  const lines = beforeHarvest.map(([, quantity, each]) => cents(quantity * each) / 100);
  const variable = sum(lines) + harvest + interest + adjustment;

  test('income: 150 hundredweight at 7.25', () => {
    expect(cents(yieldCwt * price)).toBe(cents(printed.income));
  });

  test('costs before harvest: the lines sum to a cent under the printed total', () => {
    expect(cents(sum(lines))).toBe(52495);
    expect(cents(printed.beforeHarvest) - cents(sum(lines))).toBe(1);
  });

  test('variable costs: the lines with the printed adjustment give 1,062.81', () => {
    expect(cents(variable)).toBe(cents(printed.variable));
  });

  test('fixed and all costs', () => {
    expect(cents(sum(fixed))).toBe(cents(printed.fixed));
    expect(cents(variable + sum(fixed))).toBe(cents(printed.all));
  });

  test('return above variable costs 24.69 as printed; above all costs -121.97', () => {
    expect(cents(budgetReturn(yieldCwt * price, variable))).toBe(cents(printed.aboveVariable));
    expect(cents(budgetReturn(yieldCwt * price, variable + sum(fixed)))).toBe(-12197);
  });

  test('at the price that breaks even the return is nothing', () => {
    for (const costs of [variable, variable + sum(fixed)]) {
      expect(budgetReturn(yieldCwt * breakEvenPrice(costs, yieldCwt), costs)).toBeCloseTo(0, 9);
    }
  });
});

test('the return and the costs make the income again', () => {
  const money = fc.integer({ min: 0, max: 1e8 }).map((part) => part / 100);
  fc.assert(
    fc.property(money, money, (income, costs) => {
      expect(cents(budgetReturn(income, costs) + costs)).toBe(cents(income));
    }),
    seeded,
  );
});

test('no income is a loss of the costs, and is said; below 0 is refused', () => {
  const without = recording((record) => budgetReturn(0, 100, record));
  expect(without.value).toBe(-100);
  expect(without.remarks).toEqual(['noIncome']);
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => budgetReturn(bad, 1))).toMatchObject({ code: 'outOfRange', name: 'income' });
    expect(refusalOf(() => budgetReturn(1, bad))).toMatchObject({ code: 'outOfRange', name: 'costs' });
  }
});

test('the working has the one step and says what is not among the costs', () => {
  const { value, steps, remarks } = recording((record) => budgetReturn(150, 100, record));
  expect(steps).toEqual([
    { step: 'budgetReturn', inputs: { income: 150, costs: 100 }, result: value, unit: 'none' },
  ]);
  expect(remarks).toEqual(['aboveTheseCosts']);
});
