import { checkCount, checkNumber, checkPositive } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * The harvest that hangs on the plants, from fruit that was counted.
 *
 * harvest = fruit per plant x plants x fruit weight
 *
 * @param fruitPerPlant counted, a mean may have a fraction, 0 or more
 * @param plants that stand, whole, 1 or more
 * @param fruitWeight of one at picking size [any unit of weight; 1 counts fruit], above 0
 * @returns harvest [the unit of fruitWeight]
 * @throws outOfRange, notWhole
 * Source: proportion.
 * @example harvestForecast(9.84, 31606, 1) // 311,003 fruit
 */
export function harvestForecast(
  fruitPerPlant: number,
  plants: number,
  fruitWeight: number,
  record?: Recorder,
): number {
  checkNumber('fruit_per_plant', fruitPerPlant, 'none', { atLeast: 0 });
  const standing = checkCount('plants', plants, 'plants', { atLeast: 1 });
  checkPositive('fruit_weight', fruitWeight, 'none');
  const harvest = fruitPerPlant * standing * fruitWeight;
  record?.({
    step: 'harvestForecast',
    inputs: { fruit_per_plant: fruitPerPlant, plants: standing, fruit_weight: fruitWeight },
    result: harvest,
    unit: 'none',
  });
  record?.({ remark: 'countedFruitOnly' });
  return harvest;
}
