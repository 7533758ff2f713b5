import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { areaPerPlant } from './areaPerPlant';

/**
 * Plants on an acre or hectare that is planted to its margin.
 *
 * plants = land area / (row spacing x plant spacing), unrounded
 *
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @returns plants per acre or per hectare, a fraction included
 * @throws outOfRange
 * Source: plane geometry; Farm and Garden Rule-Book: 43,560 / (2 x 3) = 7,260. Some tables cut the fraction off.
 * @example plantsPerLand(2, 36, unitSystems.us) // 7260
 */
export function plantsPerLand(
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const perPlant = areaPerPlant(rowSpacing, plantSpacing, units, record);
  const plants = units.areaPerLand / perPlant;
  record?.({
    step: 'plantsPerLand',
    inputs: { areaPerLand: units.areaPerLand, areaPerPlant: perPlant },
    result: plants,
    unit: units.density,
  });
  return plants;
}
