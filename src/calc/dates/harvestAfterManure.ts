import { practice } from '../../reference/practice';
import type { Recorder } from '../working';
import { checkDay } from './dayLimits';

/**
 * The earliest day to harvest after raw manure was worked in, by the organic rule of the United States.
 *
 * earliest harvest = day of working in + 120 days where the fruit touches the soil, + 90 where it does not
 *
 * @param manureDate day on which it was worked into the soil [whole day number]
 * @param touchesSoil whether the part that is eaten touches soil or what splashes from it
 * @returns the earliest day to harvest [whole day number]
 * @throws notADate
 * Source: 7 CFR 205.203(c)(1)(ii) and (iii).
 * @example harvestAfterManure(20514, true) // 20634: 2026-03-02 gives 2026-06-30
 */
export function harvestAfterManure(manureDate: number, touchesSoil: boolean, record?: Recorder): number {
  checkDay('manure_date', manureDate);
  const { value: wait, ground } = touchesSoil ? practice.manureTouchingSoil : practice.manureOffTheSoil;
  record?.({ step: 'manureWait', inputs: { touches_soil: touchesSoil }, result: wait, unit: 'days' });
  record?.({ source: ground });
  const harvest = manureDate + wait;
  record?.({
    step: 'harvestAfterManure',
    inputs: { manure_date: manureDate, manureWait: wait },
    result: harvest,
    unit: 'date',
  });
  record?.({ remark: 'vinesLieOnSoil' });
  record?.({ remark: 'manureRules' });
  return harvest;
}
