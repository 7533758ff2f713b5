import { rowForDemand } from '../calc/row/rowForDemand';
import { rowForPlants } from '../calc/row/rowForPlants';
import { rowInArea } from '../calc/row/rowInArea';
import { define } from './define';
import { number, units } from './parameters';
import { toCell } from './toCell';

export const forPlants = define({
  id: 'ROW.FORPLANTS',
  parameters: [number('plants'), number('plant_spacing'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([plants, plantSpacing, system], record) => rowForPlants(plants, plantSpacing, system, record),
});

/**
 * Length of row that a number of plants needs, half a spacing left at either end.
 * @customfunction ROW.FORPLANTS
 * @param plants Plants, whole, 1 or more
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Row length, ft (m)
 */
export function rowForPlantsOf(plants: any, plant_spacing: any, units?: any): any {
  return toCell(forPlants, [plants, plant_spacing, units]);
}

export const inArea = define({
  id: 'ROW.INAREA',
  parameters: [number('area'), number('row_spacing'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([area, rowSpacing, system], record) => rowInArea(area, rowSpacing, system, record),
});

/**
 * Length of row on an area, all rows together.
 * @customfunction ROW.INAREA
 * @param area Area, sq ft (sq m); AREA.FROM turns acres and other units into it
 * @param row_spacing Distance between rows, ft (m)
 * @param [units] "us" (default) or "metric"
 * @returns Row length, ft (m)
 */
export function rowInAreaOf(area: any, row_spacing: any, units?: any): any {
  return toCell(inArea, [area, row_spacing, units]);
}

export const forDemand = define({
  id: 'ROW.FORDEMAND',
  parameters: [number('wanted_per_week'), number('yield_per_100'), number('picking_weeks')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([wantedPerWeek, yieldPer100, pickingWeeks], record) =>
    rowForDemand(wantedPerWeek, yieldPer100, pickingWeeks, record),
});

/**
 * Length of row that carries a weekly demand over its picking season.
 * @customfunction ROW.FORDEMAND
 * @param wanted_per_week Wanted each week, in any unit of weight or number of fruit, above 0
 * @param yield_per_100 Yield of the whole picking season of 100 ft (100 m) of row, in the same unit
 * @param picking_weeks Weeks that the row is picked, above 0, up to 52
 * @returns Row length, ft (m), as the yield is for feet or metres
 */
export function rowForDemandOf(wanted_per_week: any, yield_per_100: any, picking_weeks: any): any {
  return toCell(forDemand, [wanted_per_week, yield_per_100, picking_weeks]);
}
