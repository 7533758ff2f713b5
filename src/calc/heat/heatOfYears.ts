import { checkDay } from '../dates/dayLimits';
import { checkCount } from '../limits/limits';
import { orAssume, type Recorder } from '../working';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatSources } from './heatOfDay';
import { heatWhereKnown } from './heatWhereKnown';
import { startsInRecord } from './startsInRecord';

export interface HeatOfYear {
  readonly year: number;
  /** "void" when a day of those is missing. */
  readonly heat: number | 'void';
}

/**
 * The heat of the same run of days in every year of a record.
 *
 * heat = sum of the days' heat (see heatOfDay), the start's included
 *
 * @param dates of the record [whole day numbers], in any order; null in rows that are empty
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @param start of any year [whole day number]: its month and date count
 * @param days whole, 1 to 366
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns one entry for every year whose start lies in the record
 * @throws notADate, outOfRange, notWhole, unequalLists, noDays, sameDayTwice, dateMissing, lowAboveHighInRow,
 *   ceilingWanted, ceilingUnderBase
 * Source: see heatFormula.
 * @example heatOfYears([0, 1], [65, 80], [40, 60], 0, 2, 50) // [{ year: 1970, heat: 22.5 }]
 */
export function heatOfYears(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  start: number,
  days: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): HeatOfYear[] {
  checkDay('start', start);
  const count = checkCount('days', days, 'days', { atLeast: 1, atMost: 366 });
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  const known = heatWhereKnown(dates, highs, lows, heatFormula(base, ceiling, chosen));
  const years = startsInRecord(known, start).map(({ year, start: first }): HeatOfYear => {
    let heat = 0;
    for (let day = first; day < first + count; day++) {
      const more = known.heatOn(day);
      if (more === null) return { year, heat: 'void' };
      heat += more;
    }
    return { year, heat };
  });
  record?.({
    step: 'heatYears',
    inputs: { start, days: count, void: years.filter(({ heat }) => heat === 'void').length },
    result: years.filter(({ heat }) => heat !== 'void').length,
    unit: 'none',
  });
  record?.({ source: heatSources[chosen] });
  return years;
}
