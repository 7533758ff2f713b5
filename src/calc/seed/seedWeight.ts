import { checkNumber, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * Weight of a number of seeds.
 *
 * weight = seeds / seeds per unit of weight
 *
 * @param seeds 0 or more
 * @param seedsPerUnit [seeds per oz or per g], above 0, from the packet: lots of one crop differ by a third
 * @returns weight [oz or g], unrounded
 * @throws outOfRange
 * Source: definition. The spread of lots: Wehner and Horton, Cucurbit Genetics Cooperative Report 12, 1989
 * (904 to 1,291 seeds per oz in nine lines of cucumber).
 * @example seedWeight(500, 1000, unitSystems.us) // 0.5 oz
 */
export function seedWeight(
  seeds: number,
  seedsPerUnit: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkNumber('seeds', seeds, 'seeds', { atLeast: 0 });
  checkPositive('seeds_per_unit', seedsPerUnit, units.seedCount);
  const weight = seeds / seedsPerUnit;
  record?.({
    step: 'seedWeight',
    inputs: { seeds, seeds_per_unit: seedsPerUnit },
    result: weight,
    unit: units.seedMass,
  });
  record?.({ remark: 'lotsDiffer' });
  record?.({ source: 'cgc-12-16' });
  return weight;
}
