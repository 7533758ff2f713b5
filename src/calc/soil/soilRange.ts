import { cropFigure } from '../crops/cropFigure';
import { findCrop } from '../crops/findCrop';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

const soilTraits = [
  'soil minimum',
  'soil optimum low',
  'soil optimum high',
  'soil maximum',
  'soil at planting',
] as const;

/**
 * The soil temperatures of a crop: below the minimum nothing comes up, and the last is the one to wait for.
 *
 * @param cropName a crop's name or synonym
 * @param units say which scale
 * @returns minimum, both ends of the optimum, maximum, at planting [F or C]
 * @throws unknownName, noFigure
 * Source: reference/crops, which names the grounds of each.
 * @example soilRange('cucumber', unitSystems.us) // [60, 60, 95, 105, 64]
 */
export function soilRange(cropName: string, units: UnitSystem, record?: Recorder): number[] {
  const crop = findCrop(cropName);
  return soilTraits.map((trait) => cropFigure(crop, trait, 'mid', units, record));
}
