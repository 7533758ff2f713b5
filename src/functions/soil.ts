import { daysToEmergence } from '../calc/soil/daysToEmergence';
import { normalSeedlings } from '../calc/soil/normalSeedlings';
import { soilRange } from '../calc/soil/soilRange';
import { define } from './define';
import { number, text, units } from './parameters';
import { toCell, toCells } from './toCell';

const inSoil = [text('crop'), number('soil_temperature'), units] as const;

export const emergenceDays = define({
  id: 'EMERGENCE.DAYS',
  parameters: inSoil,
  result: 'plain',
  calculate: ([crop, temperature, system], record) => daysToEmergence(crop, temperature, system, record),
});

/**
 * Days from sowing to emergence in soil of a steady temperature.
 * @customfunction EMERGENCE.DAYS
 * @param crop Cucumber, muskmelon or watermelon, or a trade name of one
 * @param soil_temperature Temperature at the depth of the seed
 * @param [units] "us" (F, default) or "metric" (C)
 * @returns Days; #N/A outside the table of Harrington and Minges and for other crops
 */
export function emergenceDaysOf(crop: any, soil_temperature: any, units?: any): any {
  return toCell(emergenceDays, [crop, soil_temperature, units]);
}

export const emergencePercent = define({
  id: 'EMERGENCE.PERCENT',
  parameters: inSoil,
  result: 'plain',
  calculate: ([crop, temperature, system], record) => normalSeedlings(crop, temperature, system, record),
});

/**
 * Share of seed that makes normal seedlings in soil of a steady temperature.
 * @customfunction EMERGENCE.PERCENT
 * @param crop Cucumber, muskmelon or watermelon, or a trade name of one
 * @param soil_temperature Temperature at the depth of the seed
 * @param [units] "us" (F, default) or "metric" (C)
 * @returns A share; #N/A outside the table of Harrington and Minges and for other crops
 */
export function emergencePercentOf(crop: any, soil_temperature: any, units?: any): any {
  return toCell(emergencePercent, [crop, soil_temperature, units]);
}

export const range = define({
  id: 'SOIL.RANGE',
  parameters: [text('crop'), units],
  result: 'plain',
  calculate: ([crop, system], record) => [soilRange(crop, system, record)],
});

/**
 * Soil temperatures of a crop in a row: minimum, both ends of the optimum, maximum, and the one to plant at.
 * @customfunction SOIL.RANGE
 * @param crop Crop or trade name, such as "cantaloupe"
 * @param [units] "us" (F, default) or "metric" (C)
 * @returns Five temperatures in a row
 */
export function soilRangeOf(crop: any, units?: any): any[][] {
  return toCells(range, [crop, units]);
}
