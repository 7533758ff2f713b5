import { checkPositive } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * The price at which a yield pays its cost.
 *
 * price = total cost / yield
 *
 * @param totalCost of growing, harvesting and selling that yield [money], above 0
 * @param totalYield that is sold [any unit], above 0
 * @returns price of a unit [money]
 * @throws outOfRange
 * Source: arithmetic; Texas Agricultural Extension B-1241.
 * @example breakEvenPrice(1209.47, 150) // 8.063
 */
export function breakEvenPrice(totalCost: number, totalYield: number, record?: Recorder): number {
  checkPositive('total_cost', totalCost, 'none');
  checkPositive('total_yield', totalYield, 'none');
  const price = totalCost / totalYield;
  record?.({
    step: 'breakEvenPrice',
    inputs: { total_cost: totalCost, total_yield: totalYield },
    result: price,
    unit: 'none',
  });
  record?.({ remark: 'whatIsSoldPays' });
  return price;
}
