import { plantsPerLand } from '../calc/plants/plantsPerLand';
import { define } from './define';
import { number, units } from './parameters';
import { toCell } from './toCell';

export const density = define({
  id: 'PLANTS.DENSITY',
  parameters: [number('row_spacing'), number('plant_spacing'), units],
  result: 'plain',
  calculate: ([rowSpacing, plantSpacing, system], record) =>
    plantsPerLand(rowSpacing, plantSpacing, system, record),
});

/**
 * Plants per acre (or hectare) at a row spacing and a spacing in the row, fractions kept.
 * @customfunction PLANTS.DENSITY
 * @param row_spacing Distance between rows, ft (m)
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Plants per acre or hectare
 */
export function plantsDensity(row_spacing: any, plant_spacing: any, units?: any): any {
  return toCell(density, [row_spacing, plant_spacing, units]);
}
