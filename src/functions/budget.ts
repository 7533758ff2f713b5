import { breakEvenPrice } from '../calc/budget/breakEvenPrice';
import { breakEvenYield } from '../calc/budget/breakEvenYield';
import { budgetReturn } from '../calc/budget/budgetReturn';
import { pickingHours } from '../calc/budget/pickingHours';
import { returnTable } from '../calc/budget/returnTable';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { number, numbers, optionalNumber } from './parameters';
import { toCell, toCells } from './toCell';

export const returnAbove = define({
  id: 'BUDGET.RETURN',
  parameters: [number('income'), number('costs')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([income, costs], record) => budgetReturn(income, costs, record),
});

/**
 * Return above costs: variable costs, or all of them.
 * @customfunction BUDGET.RETURN
 * @param income Income, 0 or more
 * @param costs Costs together, 0 or more
 * @returns Money, negative for a loss
 */
export function budgetReturnAbove(income: any, costs: any): any {
  return toCell(returnAbove, [income, costs]);
}

export const priceToBreakEven = define({
  id: 'BUDGET.BREAKEVENPRICE',
  parameters: [number('total_cost'), number('total_yield')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([totalCost, totalYield], record) => breakEvenPrice(totalCost, totalYield, record),
});

/**
 * Price at which a yield pays its cost.
 * @customfunction BUDGET.BREAKEVENPRICE
 * @param total_cost Cost of growing, harvesting and selling that yield, above 0
 * @param total_yield Yield that is sold, above 0
 * @returns Price of a unit of the yield
 */
export function budgetBreakEvenPrice(total_cost: any, total_yield: any): any {
  return toCell(priceToBreakEven, [total_cost, total_yield]);
}

export const yieldToBreakEven = define({
  id: 'BUDGET.BREAKEVENYIELD',
  parameters: [number('costs_not_tied_to_yield'), number('price'), optionalNumber('harvest_cost')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([costs, price, harvestCost], record) => breakEvenYield(costs, price, harvestCost, record),
});

/**
 * Yield that pays the costs, when each unit costs something to harvest and sell.
 * @customfunction BUDGET.BREAKEVENYIELD
 * @param costs_not_tied_to_yield Costs that come whatever the yield, above 0
 * @param price Price of a unit, above 0
 * @param [harvest_cost] Cost of picking, packing and selling a unit, default 0
 * @returns Yield; #N/A when harvest costs the price or more
 */
export function budgetBreakEvenYield(costs_not_tied_to_yield: any, price: any, harvest_cost?: any): any {
  return toCell(yieldToBreakEven, [costs_not_tied_to_yield, price, harvest_cost]);
}

export const sensitivity = define({
  id: 'BUDGET.SENSITIVITY',
  parameters: [
    numbers('prices'),
    numbers('yields'),
    number('costs_not_tied_to_yield'),
    optionalNumber('harvest_cost'),
  ],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([prices, yields, costs, harvestCost], record) => {
    const table = returnTable(prices, yields, costs, harvestCost, record);
    return [
      [catalogue.budgets.corner, ...table.prices],
      ...table.rows.map(({ totalYield, returns }) => [totalYield, ...returns]),
    ];
  },
});

/**
 * Return at each yield, down, and price, across; both stand as headings.
 * @customfunction BUDGET.SENSITIVITY
 * @param prices Range of prices of a unit, at most 100
 * @param yields Range of yields, at most 100
 * @param costs_not_tied_to_yield Costs that come whatever the yield, 0 or more
 * @param [harvest_cost] Cost of picking, packing and selling a unit, default 0
 * @returns A table of returns with its headings
 */
export function budgetSensitivity(
  prices: any[][],
  yields: any[][],
  costs_not_tied_to_yield: any,
  harvest_cost?: any,
): any[][] {
  return toCells(sensitivity, [prices, yields, costs_not_tied_to_yield, harvest_cost]);
}

export const pickHours = define({
  id: 'BUDGET.PICKHOURS',
  parameters: [number('row_length'), number('picks'), number('rate')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([rowLength, picks, rate], record) => pickingHours(rowLength, picks, rate, record),
});

/**
 * Hours of one person for picking rows again and again.
 * @customfunction BUDGET.PICKHOURS
 * @param row_length Length of all rows together, ft (m)
 * @param picks Times they are picked, whole, as HARVEST.PICKS gives them
 * @param rate Row that one person picks in an hour, ft (m)
 * @returns Hours
 */
export function budgetPickHours(row_length: any, picks: any, rate: any): any {
  return toCell(pickHours, [row_length, picks, rate]);
}
