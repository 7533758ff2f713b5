import { emergence, type EmergenceKnot } from '../../reference/emergence';
import { seedKinds } from '../../reference/seedStandards';
import { findCrop } from '../crops/findCrop';
import { refuse } from '../errors';
import { checkTemperature } from '../limits/checkTemperature';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import { fahrenheitPerCelsius, freezingF } from '../units/units';

export interface BetweenKnots {
  readonly low: EmergenceKnot;
  readonly high: EmergenceKnot;
  /** How far from the lower knot to the higher one, 0 to 1. */
  readonly part: number;
  /** What the part is of, for the working [F or C]. */
  readonly temperatures: Readonly<Record<'soil_temperature' | 'coolerAt' | 'warmerAt', number>>;
}

/**
 * The two knots of the crop's table that a soil temperature lies between.
 *
 * @param has which of the table's columns is wanted: knots without it are not counted
 * @throws unknownName, noEmergence (no table for the crop), outsideEmergence, outOfRange
 * Source: reference/emergence.
 */
export function emergenceKnots(
  cropName: string,
  soilTemperature: number,
  units: UnitSystem,
  has: (knot: EmergenceKnot) => boolean,
): BetweenKnots {
  const crop = findCrop(cropName);
  const table = emergence[seedKinds[crop.name] ?? ''] ?? refuse({ code: 'noEmergence', crop: crop.name });
  checkTemperature('soil_temperature', soilTemperature);
  const celsius = units.name === 'metric' ? soilTemperature : inMetric(soilTemperature, 'F').value;
  const knots = table.filter(has);
  const index = Math.max(
    1,
    knots.findIndex((knot) => knot.celsius >= celsius - 1e-9),
  );
  const low = knots[index - 1];
  const high = knots[index];
  const first = knots[0]?.celsius ?? NaN;
  const last = knots[knots.length - 1]?.celsius ?? NaN;
  const shown = (knot: number): number =>
    units.name === 'metric' ? knot : knot * fahrenheitPerCelsius + freezingF;
  if (low === undefined || high === undefined || celsius < first - 1e-9 || celsius > last + 1e-9) {
    return refuse({
      code: 'outsideEmergence',
      crop: crop.name,
      from: shown(first),
      to: shown(last),
      unit: units.temperature,
    });
  }
  return {
    low,
    high,
    part: (celsius - low.celsius) / (high.celsius - low.celsius),
    temperatures: {
      soil_temperature: soilTemperature,
      coolerAt: shown(low.celsius),
      warmerAt: shown(high.celsius),
    },
  };
}
