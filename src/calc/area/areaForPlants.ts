import { checkCount } from '../limits/limits';
import { areaPerPlant } from '../plants/areaPerPlant';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * The area that plants need.
 *
 * area = plants x row spacing x plant spacing
 *
 * @param plants whole, 1 or more
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @returns area [sq ft or sq m], the least: edges and corners take more
 * @throws outOfRange, notWhole
 * Source: plane geometry.
 * @example areaForPlants(132, 5, 12, unitSystems.us) // 660
 */
export function areaForPlants(
  plants: number,
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const wanted = checkCount('plants', plants, 'plants', { atLeast: 1 });
  const perPlant = areaPerPlant(rowSpacing, plantSpacing, units, record);
  const area = wanted * perPlant;
  record?.({
    step: 'areaForPlants',
    inputs: { plants: wanted, areaPerPlant: perPlant },
    result: area,
    unit: units.area,
  });
  record?.({ remark: 'edgesTakeMore' });
  return area;
}
