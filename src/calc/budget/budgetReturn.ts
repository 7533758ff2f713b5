import { checkNumber } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * What is left of an income above costs.
 *
 * return = income - costs
 *
 * @param income [money], 0 or more
 * @param costs [money], 0 or more: variable costs for the return above those, all costs for the net return
 * @returns [money], negative for a loss
 * @throws outOfRange
 * Source: layout of enterprise budgets, such as Texas Agricultural Extension B-1241.
 * @example budgetReturn(1087.5, 1062.81) // 24.69
 */
export function budgetReturn(income: number, costs: number, record?: Recorder): number {
  checkNumber('income', income, 'none', { atLeast: 0 });
  checkNumber('costs', costs, 'none', { atLeast: 0 });
  const left = income - costs;
  record?.({ step: 'budgetReturn', inputs: { income, costs }, result: left, unit: 'none' });
  record?.({ remark: income === 0 ? 'noIncome' : 'aboveTheseCosts' });
  return left;
}
