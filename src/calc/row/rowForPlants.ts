import { checkCount, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * The length of row that plants need, each owning its spacing: half a spacing is left at either end.
 *
 * row length = plants x plant spacing
 *
 * @param plants whole, 1 or more
 * @param plantSpacing in the row [in or cm], above 0
 * @returns row length [ft or m]
 * @throws outOfRange, notWhole
 * Source: the inverse of plantsInRows with its edge inset.
 * @example rowForPlants(100, 12, unitSystems.us) // 100
 */
export function rowForPlants(
  plants: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const wanted = checkCount('plants', plants, 'plants', { atLeast: 1 });
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const row = (wanted * plantSpacing) / units.spacingPerLength;
  record?.({
    step: 'rowForPlants',
    inputs: { plants: wanted, plant_spacing: plantSpacing, spacingPerLength: units.spacingPerLength },
    result: row,
    unit: units.length,
  });
  return row;
}
