import { hivesNeeded } from '../calc/flowers/hivesNeeded';
import { define } from './define';
import { number, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const hives = define({
  id: 'FLOWER.HIVES',
  parameters: [number('area'), optionalNumber('hives_per_acre'), units],
  result: 'plain',
  calculate: ([area, perLand, system], record) => hivesNeeded(area, perLand, system, record),
});

/**
 * Hives of honey bees for a field; give 0 an acre for parthenocarpic cucumber, more for triploid watermelon.
 * @customfunction FLOWER.HIVES
 * @param area Area in sq ft (sq m); an acre is 43,560 sq ft
 * @param [hives_per_acre] Hives per acre (per hectare), 0 or more, default 1 (2.47)
 * @param [units] "us" (default) or "metric"
 * @returns Whole hives
 */
export function flowerHives(area: any, hives_per_acre?: any, units?: any): any {
  return toCell(hives, [area, hives_per_acre, units]);
}
