import { checkFieldArea } from '../limits/checkFieldArea';
import { checkNumber, checkShare } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * Fertilizer that brings a rate of one nutrient onto a field.
 *
 * fertilizer = area / area of an acre or hectare x rate / grade
 *
 * @param area [sq ft or sq m], at least 10 sq ft or 1 sq m
 * @param rate of N, P2O5 or K2O [lb per acre or kg per hectare], 0 or more
 * @param grade share of that nutrient in the fertilizer, as the bag states it, above 0, at most 1
 * @returns fertilizer [lb or kg], unrounded
 * @throws outOfRange, areaInLandUnits, percentForShare
 * Source: proportion. North Carolina HIL-24: 1,000 lb of 5-10-10 an acre bring 50 lb N and 100 lb each of P2O5, K2O.
 * @example fertilizerForArea(43560, 50, 0.05, unitSystems.us) // 1000
 */
export function fertilizerForArea(
  area: number,
  rate: number,
  grade: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkFieldArea(area, units);
  checkNumber('rate', rate, units.nutrientRate, { atLeast: 0 });
  checkShare('grade', grade, { above: 0 });
  const { areaPerLand } = units;
  const nutrient = (area / areaPerLand) * rate;
  record?.({
    step: 'nutrientForArea',
    inputs: { area, areaPerLand, rate },
    result: nutrient,
    unit: units.mass,
  });
  const fertilizer = nutrient / grade;
  record?.({
    step: 'fertilizerForArea',
    inputs: { nutrientForArea: nutrient, grade },
    result: fertilizer,
    unit: units.mass,
  });
  record?.({ remark: 'gradeAsOnTheBag' });
  record?.({ remark: 'soilTestFirst' });
  return fertilizer;
}
