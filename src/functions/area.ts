import { areaForPlants } from '../calc/area/areaForPlants';
import { areaFrom } from '../calc/area/areaFrom';
import { define } from './define';
import { number, text, units } from './parameters';
import { toCell } from './toCell';

export const forPlants = define({
  id: 'AREA.FORPLANTS',
  parameters: [number('plants'), number('row_spacing'), number('plant_spacing'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([plants, rowSpacing, plantSpacing, system], record) =>
    areaForPlants(plants, rowSpacing, plantSpacing, system, record),
});

/**
 * Area that a number of plants needs; edges and corners take more.
 * @customfunction AREA.FORPLANTS
 * @param plants Plants, whole, 1 or more
 * @param row_spacing Distance between rows, ft (m)
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Area, sq ft (sq m)
 */
export function areaForPlantsOf(plants: any, row_spacing: any, plant_spacing: any, units?: any): any {
  return toCell(forPlants, [plants, row_spacing, plant_spacing, units]);
}

export const from = define({
  id: 'AREA.FROM',
  parameters: [number('value'), text('unit'), units],
  result: 'plain',
  grounds: ['units'],
  calculate: ([value, unit, system], record) => areaFrom(value, unit, system, record),
});

/**
 * An area in acres, hectares or another unit, as the other functions take it: sq ft (sq m).
 * @customfunction AREA.FROM
 * @param value Area in that unit, above 0
 * @param unit "sq in", "sq ft", "sq yd", "acre", "sq mi", "sq m", "are", "hectare" or "sq km"
 * @param [units] What it becomes: "us" (default) sq ft, or "metric" sq m
 * @returns Area, sq ft (sq m)
 */
export function areaFromUnit(value: any, unit: any, units?: any): any {
  return toCell(from, [value, unit, units]);
}
