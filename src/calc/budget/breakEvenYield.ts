import { refuse } from '../errors';
import { checkNumber, checkPositive } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

/**
 * The yield that pays the costs, where harvest and marketing cost so much a unit.
 *
 * yield = costs not tied to yield / (price - harvest cost)
 *
 * @param fixedByYield costs that come whatever the yield [money], above 0
 * @param price of a unit [money], above 0
 * @param harvestCost of picking, packing and selling a unit [money], 0 or more; 0 when undefined
 * @returns yield [the unit of the price]
 * @throws outOfRange, noYieldBreaksEven when harvest costs the price or more
 * Source: arithmetic. Cost / price alone would be too low where harvest cost moves with yield.
 * @example breakEvenYield(1144, 9.77, 4.05) // 200
 */
export function breakEvenYield(
  fixedByYield: number,
  price: number,
  harvestCost: number | undefined,
  record?: Recorder,
): number {
  checkPositive('costs_not_tied_to_yield', fixedByYield, 'none');
  checkPositive('price', price, 'none');
  const harvest = orAssume(harvestCost, 0, 'harvest_cost', 'none', 'judgement', record);
  checkNumber('harvest_cost', harvest, 'none', { atLeast: 0 });
  if (price <= harvest) refuse({ code: 'noYieldBreaksEven', price, harvestCost: harvest });
  const left = price - harvest;
  record?.({
    step: 'leftOfPrice',
    inputs: { price, harvest_cost: harvest },
    result: left,
    unit: 'none',
  });
  const yielded = fixedByYield / left;
  record?.({
    step: 'breakEvenYield',
    inputs: { costs_not_tied_to_yield: fixedByYield, leftOfPrice: left },
    result: yielded,
    unit: 'none',
  });
  if (harvestCost === undefined) record?.({ remark: 'harvestCostLeftOut' });
  return yielded;
}
