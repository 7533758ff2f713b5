import { emergenceSource } from '../../reference/emergence';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { emergenceKnots } from './emergenceKnots';
import { normalSeedlings } from './normalSeedlings';

/** Below it the table says days of the few that come up: judgement. */
const enoughNormal = 0.75;

/**
 * Days from sowing to emergence in soil of a steady temperature.
 *
 * days = 1 / rate, rate = 1 / days of the table, in a line between its temperatures
 *
 * @param cropName a crop's name or synonym
 * @param soilTemperature at the depth of the seed [F or C]
 * @param units say which scale
 * @returns days, unrounded
 * @throws unknownName, noEmergence, outsideEmergence, outOfRange
 * Source: Harrington and Minges 1954, seed half an inch deep; rates in a line: project convention.
 * @example daysToEmergence('cucumber', 64, unitSystems.us) // 7.89
 */
export function daysToEmergence(
  cropName: string,
  soilTemperature: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const { low, high, part, temperatures } = emergenceKnots(
    cropName,
    soilTemperature,
    units,
    (knot) => knot.days !== null,
  );
  const rateAt = (days: number | null): number => 1 / (days ?? NaN);
  const rate = rateAt(low.days) + (rateAt(high.days) - rateAt(low.days)) * part;
  record?.({
    step: 'emergenceRate',
    inputs: { ...temperatures, coolerDays: low.days ?? NaN, warmerDays: high.days ?? NaN, part },
    result: rate,
    unit: 'none',
  });
  const days = 1 / rate;
  record?.({ step: 'daysToEmergence', inputs: { emergenceRate: rate }, result: days, unit: 'days' });
  if (record && normalSeedlings(cropName, soilTemperature, units) < enoughNormal) {
    record({ remark: 'fewNormalSeedlings' });
  }
  record?.({ source: emergenceSource });
  return days;
}
