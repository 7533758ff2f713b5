import { plantsForYield } from '../calc/plants/plantsForYield';
import { define } from './define';
import { number } from './parameters';
import { toCell } from './toCell';

export const forYield = define({
  id: 'PLANTS.FORYIELD',
  parameters: [number('wanted_yield'), number('yield_per_plant')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([wantedYield, yieldPerPlant], record) => plantsForYield(wantedYield, yieldPerPlant, record),
});

/**
 * Plants that bear a wanted yield.
 * @customfunction PLANTS.FORYIELD
 * @param wanted_yield Yield wanted, in any unit of weight or number of fruit, above 0
 * @param yield_per_plant What one plant bears in its season, in the same unit, above 0
 * @returns Whole plants
 */
export function plantsForYieldOf(wanted_yield: any, yield_per_plant: any): any {
  return toCell(forYield, [wanted_yield, yield_per_plant]);
}
