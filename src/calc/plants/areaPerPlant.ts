import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * The ground that one plant owns.
 *
 * area per plant = row spacing x plant spacing
 *
 * @param rowSpacing between rows [ft or m], above 0
 * @param plantSpacing in the row [in or cm], above 0
 * @returns area [sq ft or sq m]
 * @throws outOfRange
 * Source: plane geometry.
 * @example areaPerPlant(2, 36, unitSystems.us) // 6
 */
export function areaPerPlant(
  rowSpacing: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkPositive('row_spacing', rowSpacing, units.length);
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const area = (rowSpacing * plantSpacing) / units.spacingPerLength;
  record?.({
    step: 'areaPerPlant',
    inputs: {
      row_spacing: rowSpacing,
      plant_spacing: plantSpacing,
      spacingPerLength: units.spacingPerLength,
    },
    result: area,
    unit: units.area,
  });
  return area;
}
