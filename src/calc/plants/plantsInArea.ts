import { refuse } from '../errors';
import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { areaPerPlant } from './areaPerPlant';

/**
 * The most plants that an area of any shape can hold.
 *
 * plants = area / (row spacing x plant spacing), rounded down
 *
 * @param area [sq ft or sq m], above 0
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @returns whole plants, at most; edges and corners lose some
 * @throws outOfRange, noPlantInArea
 * Source: plane geometry.
 * @example plantsInArea(660, 5, 12, unitSystems.us) // 132
 */
export function plantsInArea(
  area: number,
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkPositive('area', area, units.area);
  const perPlant = areaPerPlant(rowSpacing, plantSpacing, units, record);
  const exact = area / perPlant;
  const plants = floorWhole(exact);
  if (plants < 1) {
    const { area: unit, land: landUnit, areaPerLand } = units;
    refuse({ code: 'noPlantInArea', area, areaPerPlant: perPlant, unit, landUnit, areaPerLand });
  }
  record?.({
    step: 'plantsInArea',
    inputs: { area, areaPerPlant: perPlant },
    result: plants,
    unit: 'plants',
    ...roundingOf(exact, plants),
  });
  record?.({ remark: 'edgesLoseSome' });
  return plants;
}
