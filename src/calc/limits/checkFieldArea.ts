import { refuse } from '../errors';
import type { UnitSystem } from '../units/units';
import { checkPositive } from './limits';

/** Nobody hires bees, waters or fertilizes less: a figure under it was meant as acres or hectares. */
const leastArea = { us: 10, metric: 1 };

/**
 * The check of a field's area, which catches acres typed for square feet.
 *
 * @param area [sq ft or sq m], at least 10 sq ft or 1 sq m
 * @throws outOfRange, areaInLandUnits
 * Source: project convention; 10 sq ft and 1 sq m: judgement.
 */
export function checkFieldArea(area: number, units: UnitSystem): void {
  checkPositive('area', area, units.area);
  if (area < leastArea[units.name]) {
    const { area: unit, land: landUnit, areaPerLand } = units;
    refuse({ code: 'areaInLandUnits', area, unit, landUnit, areaPerLand });
  }
}
