import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakEvenYield } from '../../../src/calc/budget/breakEvenYield';
import { budgetReturn } from '../../../src/calc/budget/budgetReturn';
import { returnTable } from '../../../src/calc/budget/returnTable';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('yields 100 and 200, prices 2 and 3, costs 250, harvest 0.50 a unit (hand computed)', () => {
  expect(returnTable([2, 3], [100, 200], 250, 0.5)).toEqual({
    prices: [2, 3],
    rows: [
      { totalYield: 100, returns: [-100, 0] },
      { totalYield: 200, returns: [50, 250] },
    ],
  });
});

test('blank cells are passed over, order and zeros stay', () => {
  expect(returnTable([null, 3, 2], [0, null, 100], 250, undefined)).toEqual({
    prices: [3, 2],
    rows: [
      { totalYield: 0, returns: [-250, -250] },
      { totalYield: 100, returns: [50, -50] },
    ],
  });
});

test('every cell is the return above its costs, and nothing at the yield that breaks even', () => {
  const figures = fc.array(fc.integer({ min: 1, max: 1e4 }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(figures, figures, fc.integer({ min: 1, max: 1e5 }), (prices, yields, costs) => {
      const harvest = 0.5;
      const table = returnTable(prices, yields, costs, harvest);
      table.rows.forEach(({ totalYield, returns }, i) => {
        expect(totalYield).toBe(yields[i]);
        returns.forEach((one, j) => {
          const price = prices[j] ?? NaN;
          expect(one).toBeCloseTo(budgetReturn(totalYield * price, costs + totalYield * harvest), 5);
          const even = breakEvenYield(costs, price, harvest);
          expect(returnTable([price], [even], costs, harvest).rows[0]?.returns[0]).toBeCloseTo(0, 5);
        });
      });
    }),
    { ...seeded, numRuns: 60 },
  );
});

test('refusals name the range or the figure in it', () => {
  expect(refusalOf(() => returnTable([null], [1], 0, 0))).toEqual({ code: 'missing', name: 'prices' });
  expect(refusalOf(() => returnTable([1], [], 0, 0))).toEqual({ code: 'missing', name: 'yields' });
  const many = Array.from({ length: 101 }, () => 1);
  expect(refusalOf(() => returnTable(many, [1], 0, 0))).toEqual({
    code: 'tooManyFigures',
    name: 'prices',
    count: 101,
    most: 100,
  });
  expect(refusalOf(() => returnTable([1], many, 0, 0))).toMatchObject({ name: 'yields' });
  expect(returnTable(many.slice(1), [1], 0, 0).prices).toHaveLength(100);
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => returnTable([bad], [1], 0, 0))).toMatchObject({ name: 'price' });
    expect(refusalOf(() => returnTable([1], [bad], 0, 0))).toMatchObject({ name: 'total_yield' });
    expect(refusalOf(() => returnTable([1], [1], bad, 0))).toMatchObject({ name: 'costs_not_tied_to_yield' });
    expect(refusalOf(() => returnTable([1], [1], 0, bad))).toMatchObject({ name: 'harvest_cost' });
  }
});

test('the working shows the first cell', () => {
  const { value, steps, remarks } = recording((record) => returnTable([2, 3], [100, 200], 250, 0.5, record));
  expect(steps).toMatchObject([{ step: 'returnAtYieldAndPrice', result: -100 }]);
  expect(steps[0]?.result).toBe(value.rows[0]?.returns[0]);
  expect(remarks).toEqual(['otherCellsLikewise']);
});
