import { harvestForecast } from '../calc/harvest/harvestForecast';
import { picksInHarvest } from '../calc/harvest/picksInHarvest';
import { rowYield } from '../calc/harvest/rowYield';
import { define } from './define';
import { day, number, optionalNumber } from './parameters';
import { toCell } from './toCell';

export const yieldOfRow = define({
  id: 'HARVEST.YIELD',
  parameters: [number('row_length'), number('yield_per_100'), optionalNumber('marketable')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([rowLength, yieldPer100, marketable], record) =>
    rowYield(rowLength, yieldPer100, marketable, record),
});

/**
 * Yield of a length of row, from the yield of 100 ft (or 100 m) of row.
 * @customfunction HARVEST.YIELD
 * @param row_length Length of all rows together, ft (m)
 * @param yield_per_100 Yield of 100 ft (100 m) of row, any unit
 * @param [marketable] Share that can be sold, 0 to 1 (default 1: published yields are marketable already)
 * @returns Yield, in the unit of yield_per_100
 */
export function harvestYield(row_length: any, yield_per_100: any, marketable?: any): any {
  return toCell(yieldOfRow, [row_length, yield_per_100, marketable]);
}

export const picks = define({
  id: 'HARVEST.PICKS',
  // A pick at any hour of a day is of that day.
  parameters: [day('first_pick', 'fall'), day('last_pick', 'fall'), number('every_days')],
  result: 'plain',
  calculate: ([firstPick, lastPick, everyDays], record) =>
    picksInHarvest(firstPick, lastPick, everyDays, record),
});

/**
 * Times that a planting is picked, the first pick counted.
 * @customfunction HARVEST.PICKS
 * @param first_pick Day of the first pick
 * @param last_pick Day of the last pick, not before the first
 * @param every_days Days from one pick to the next, 0.5 to 366
 * @returns Whole picks
 */
export function harvestPicks(first_pick: any, last_pick: any, every_days: any): any {
  return toCell(picks, [first_pick, last_pick, every_days]);
}

export const forecast = define({
  id: 'HARVEST.FORECAST',
  parameters: [number('fruit_per_plant'), number('plants'), number('fruit_weight')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([fruitPerPlant, plants, fruitWeight], record) =>
    harvestForecast(fruitPerPlant, plants, fruitWeight, record),
});

/**
 * Harvest that hangs on the plants, from fruit counted on some of them.
 * @customfunction HARVEST.FORECAST
 * @param fruit_per_plant Fruit counted on a plant, on average, 0 or more
 * @param plants Plants that stand, whole, 1 or more
 * @param fruit_weight Weight of one fruit at picking size, any unit
 * @returns Harvest, in the unit of fruit_weight
 */
export function harvestForecastOfCount(fruit_per_plant: any, plants: any, fruit_weight: any): any {
  return toCell(forecast, [fruit_per_plant, plants, fruit_weight]);
}
