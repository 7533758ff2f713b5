import { practice } from '../../reference/practice';
import { checkFieldArea } from '../limits/checkFieldArea';
import { checkNumber } from '../limits/limits';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import { roundingOf } from '../whole/roundingOf';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

/**
 * Hives of honey bees for a field.
 *
 * hives = area / area of an acre or hectare x hives on it, rounded up
 *
 * @param area [sq ft or sq m], at least 10 sq ft or 1 sq m
 * @param hivesPerLand [per acre or per hectare], 0 or more; 1 an acre (2.47 a hectare) when left out
 * @returns whole hives
 * @throws outOfRange, areaInLandUnits
 * Source: one hive an acre of cucumbers: Ambrose, 1995, North Carolina Beekeeping Note 7B. Other cucurbits: from
 * memory, check, about 2 an acre (Delaplane and Mayer, 2000). Triploid watermelon wants about twice the visits:
 * Walters, 2005, HortScience 40.
 * @example hivesNeeded(100000, undefined, unitSystems.us) // 3
 */
export function hivesNeeded(
  area: number,
  hivesPerLand: number | undefined,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkFieldArea(area, units);
  if (hivesPerLand !== undefined) checkNumber('hives_per_acre', hivesPerLand, units.density, { atLeast: 0 });
  const { value, ground } = practice.hives;
  const usual = units.name === 'metric' ? inMetric(value, 'perAcre').value : value;
  const density = orAssume(hivesPerLand, usual, 'hives_per_acre', units.density, ground, record);
  const exact = (area / units.areaPerLand) * density;
  const hives = ceilWhole(exact);
  record?.({
    step: 'hivesNeeded',
    inputs: { area, areaPerLand: units.areaPerLand, hives_per_acre: density },
    result: hives,
    unit: 'hives',
    ...roundingOf(exact, hives),
  });
  record?.({ remark: 'hivesByFlowers' });
  record?.({ remark: 'smallFieldsHaveBees' });
  record?.({ source: 'nc-note-7b' });
  return hives;
}
