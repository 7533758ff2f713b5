import { checkPositive } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/**
 * Plants that bear a wanted yield.
 *
 * plants = wanted yield / yield per plant, rounded up
 *
 * @param wantedYield [any unit of weight or count], above 0
 * @param yieldPerPlant [the same unit], above 0
 * @returns whole plants that live to bear: losses are not in it
 * @throws outOfRange
 * Source: proportion.
 * @example plantsForYield(100, 2.5) // 40
 */
export function plantsForYield(wantedYield: number, yieldPerPlant: number, record?: Recorder): number {
  checkPositive('wanted_yield', wantedYield, 'none');
  checkPositive('yield_per_plant', yieldPerPlant, 'none');
  const exact = wantedYield / yieldPerPlant;
  const plants = ceilWhole(exact);
  record?.({
    step: 'plantsForYield',
    inputs: { wanted_yield: wantedYield, yield_per_plant: yieldPerPlant },
    result: plants,
    unit: 'plants',
    ...roundingOf(exact, plants),
  });
  record?.({ remark: 'lossesComeOnTop' });
  return plants;
}
