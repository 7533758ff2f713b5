import { plantsInArea } from '../calc/plants/plantsInArea';
import { define } from './define';
import { number, units } from './parameters';
import { toCell } from './toCell';

export const inArea = define({
  id: 'PLANTS.INAREA',
  parameters: [number('area'), number('row_spacing'), number('plant_spacing'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([area, rowSpacing, plantSpacing, system], record) =>
    plantsInArea(area, rowSpacing, plantSpacing, system, record),
});

/**
 * Plants that an area of any shape can hold at most; edges and corners lose some.
 * @customfunction PLANTS.INAREA
 * @param area Area, sq ft (sq m); AREA.FROM turns acres and other units into it
 * @param row_spacing Distance between rows, ft (m)
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Whole plants
 */
export function plantsInAreaOf(area: any, row_spacing: any, plant_spacing: any, units?: any): any {
  return toCell(inArea, [area, row_spacing, plant_spacing, units]);
}
