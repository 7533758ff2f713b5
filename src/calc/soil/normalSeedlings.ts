import { emergenceSource } from '../../reference/emergence';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { emergenceKnots } from './emergenceKnots';

/**
 * The share of seed that makes normal seedlings in soil of a steady temperature.
 *
 * share = the table's shares, in a line between its temperatures
 *
 * @param cropName a crop's name or synonym
 * @param soilTemperature at the depth of the seed [F or C]
 * @param units say which scale
 * @returns share of normal seedlings
 * @throws unknownName, noEmergence, outsideEmergence, outOfRange
 * Source: Harrington and Minges 1954, as copied; in a line between: project convention.
 * @example normalSeedlings('watermelon', 15, unitSystems.metric) // 0.17
 */
export function normalSeedlings(
  cropName: string,
  soilTemperature: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const { low, high, part, temperatures } = emergenceKnots(cropName, soilTemperature, units, () => true);
  const share = low.normal + (high.normal - low.normal) * part;
  record?.({
    step: 'normalSeedlings',
    inputs: { ...temperatures, cooler: low.normal, warmer: high.normal, part },
    result: share,
    unit: 'share',
  });
  record?.({ source: emergenceSource });
  return share;
}
