import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

const customaryHarvestDays = 21;
const customaryFallDays = 14;
const customaryFrostMarginDays = 14;

/**
 * The last day on which seed sown in the open still gives its whole harvest before the first frost.
 *
 * last sowing = first frost - (days to maturity + harvest days + fall days + frost margin), rounded down
 *
 * @param firstFrost date of the first fall frost [whole day number]
 * @param daysToMaturity from sowing to first pick [days], above 0 to 365
 * @param harvestDays from first to last pick [days], 0 to 365, 21 when undefined (picked again and again); 0 for
 *   crops picked once
 * @param fallDays slower growth in shortening days [days], 0 to 90, 14 when undefined
 * @param frostMargin days a tender crop should be done before frost [days], 0 to 90, 14 when undefined
 * @returns the last day of sowing [whole day number]
 * @throws notADate, outOfRange
 * Source: formula, fall factor and frost-tender factor of about 14 days: Virginia Cooperative Extension, as
 * quoted in a garden journal of 2011 (secondary copy). Harvest of 21 days: North Carolina AG-552, 2 to 3 weeks a
 * field of cucumbers, the longer.
 * @example lastSowingDate(20736, 60, 21, 14, 0) // 20641: 2026-10-10 gives 2026-07-07
 */
export function lastSowingDate(
  firstFrost: number,
  daysToMaturity: number,
  harvestDays: number | undefined,
  fallDays: number | undefined,
  frostMargin: number | undefined,
  record?: Recorder,
): number {
  checkDay('first_frost', firstFrost);
  checkDays('days_to_maturity', daysToMaturity);
  const harvest = orAssume(
    harvestDays,
    customaryHarvestDays,
    'harvest_days',
    'days',
    'nc-ag-552-harvest',
    record,
  );
  checkDays('harvest_days', harvest);
  const fall = orAssume(fallDays, customaryFallDays, 'fall_days', 'days', 'vce-fall-garden', record);
  checkDays('fall_days', fall);
  const margin = orAssume(
    frostMargin,
    customaryFrostMarginDays,
    'frost_margin',
    'days',
    'vce-fall-garden',
    record,
  );
  checkDays('frost_margin', margin);
  const daysBefore = daysToMaturity + harvest + fall + margin;
  record?.({
    step: 'daysBeforeFrost',
    inputs: {
      days_to_maturity: daysToMaturity,
      harvest_days: harvest,
      fall_days: fall,
      frost_margin: margin,
    },
    result: daysBefore,
    unit: 'days',
  });
  const exact = firstFrost - daysBefore;
  const sowing = floorWhole(exact);
  record?.({
    step: 'lastSowing',
    inputs: { first_frost: firstFrost, daysBeforeFrost: daysBefore },
    result: sowing,
    unit: 'date',
    ...roundingOf(exact, sowing),
  });
  record?.({ source: 'vce-fall-garden' });
  if (harvestDays === undefined) record?.({ remark: 'harvestIsForManyPicks' });
  return sowing;
}
