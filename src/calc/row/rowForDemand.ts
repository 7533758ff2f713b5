import { checkNumber, checkPositive } from '../limits/limits';
import { rowLengthOfYield } from '../units/units';
import type { Recorder } from '../working';

/** A year: more weeks than that are days or a date. */
const mostWeeks = 52;

/**
 * The length of row that carries a demand of so much a week as long as it is picked.
 *
 * row length = wanted per week x picking weeks / yield per 100 x 100
 *
 * @param wantedPerWeek [any unit of weight or count], above 0
 * @param yieldPer100 what 100 ft or 100 m of row bears in the whole of its picking season [the same unit], above 0
 * @param pickingWeeks weeks over which it bears, above 0, at most 52
 * @returns row length [ft or m], as the yield is for feet or metres
 * @throws outOfRange
 * Source: proportion, the yield taken as even over the weeks.
 * @example rowForDemand(30, 150, 4) // 80
 */
export function rowForDemand(
  wantedPerWeek: number,
  yieldPer100: number,
  pickingWeeks: number,
  record?: Recorder,
): number {
  checkPositive('wanted_per_week', wantedPerWeek, 'none');
  checkPositive('yield_per_100', yieldPer100, 'none');
  checkNumber('picking_weeks', pickingWeeks, 'weeks', { above: 0, atMost: mostWeeks });
  const wanted = wantedPerWeek * pickingWeeks;
  record?.({
    step: 'wantedInSeason',
    inputs: { wanted_per_week: wantedPerWeek, picking_weeks: pickingWeeks },
    result: wanted,
    unit: 'none',
  });
  const row = (wanted / yieldPer100) * rowLengthOfYield;
  record?.({
    step: 'rowForDemand',
    inputs: { wantedInSeason: wanted, yield_per_100: yieldPer100, rowLengthOfYield },
    result: row,
    unit: 'none',
  });
  record?.({ remark: 'picksAreUneven' });
  return row;
}
