import { refuse } from '../errors';
import { checkNumber } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

/** More than anybody reads in one table. */
const mostFigures = 100;

export interface ReturnTable {
  readonly prices: readonly number[];
  /** One for each yield, in it a return for each price. */
  readonly rows: readonly { readonly totalYield: number; readonly returns: readonly number[] }[];
}

/**
 * The return at each yield and price.
 *
 * return = yield x (price - harvest cost) - costs not tied to yield
 *
 * @param prices of a unit [money], each 0 or more; null is no price; at most 100
 * @param yields [the unit of the prices], each 0 or more; null is no yield; at most 100
 * @param fixedByYield costs that come whatever the yield [money], 0 or more
 * @param harvestCost of picking, packing and selling a unit [money], 0 or more; 0 when undefined
 * @returns the prices and the rows of the yields in their order [money]
 * @throws missing, tooManyFigures, outOfRange
 * Source: arithmetic, as budgetReturn and breakEvenYield.
 * @example returnTable([9.77], [600], 1144, 4.05).rows // [{ totalYield: 600, returns: [2288] }]
 */
export function returnTable(
  prices: readonly (number | null)[],
  yields: readonly (number | null)[],
  fixedByYield: number,
  harvestCost: number | undefined,
  record?: Recorder,
): ReturnTable {
  const across = given('prices', 'price', prices);
  const down = given('yields', 'total_yield', yields);
  checkNumber('costs_not_tied_to_yield', fixedByYield, 'none', { atLeast: 0 });
  const harvest = orAssume(harvestCost, 0, 'harvest_cost', 'none', 'judgement', record);
  checkNumber('harvest_cost', harvest, 'none', { atLeast: 0 });
  const rows = down.map((totalYield) => ({
    totalYield,
    returns: across.map((price) => totalYield * (price - harvest) - fixedByYield),
  }));
  record?.({
    step: 'returnAtYieldAndPrice',
    inputs: {
      total_yield: down[0] ?? 0,
      price: across[0] ?? 0,
      harvest_cost: harvest,
      costs_not_tied_to_yield: fixedByYield,
    },
    result: rows[0]?.returns[0] ?? 0,
    unit: 'none',
  });
  record?.({ remark: 'otherCellsLikewise' });
  if (harvestCost === undefined) record?.({ remark: 'harvestCostLeftOut' });
  return { prices: across, rows };
}

function given(name: string, nameOfOne: string, list: readonly (number | null)[]): number[] {
  const figures = list.filter((one) => one !== null);
  if (figures.length === 0) refuse({ code: 'missing', name });
  if (figures.length > mostFigures) {
    refuse({ code: 'tooManyFigures', name, count: figures.length, most: mostFigures });
  }
  for (const one of figures) checkNumber(nameOfOne, one, 'none', { atLeast: 0 });
  return figures;
}
