import { sameDateIn } from '../dates/calendar';
import { checkDay } from '../dates/dayLimits';
import { checkPositive } from '../limits/limits';
import { orAssume, type Recorder } from '../working';
import { leastDifference } from './heatDate';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatSources } from './heatOfDay';
import { heatWhereKnown } from './heatWhereKnown';
import { startsInRecord } from './startsInRecord';

export interface HeatDateOfYear {
  readonly year: number;
  /** "none" when it is not reached in twelve months; "void" when a day before it is missing. */
  readonly date: number | 'none' | 'void';
  /** From the start to the date. */
  readonly days: number | 'none' | 'void';
}

/**
 * The day on which the heat since a start reaches a target, in every year of a record.
 *
 * date = first day on which the sum of the days' heat, the start's included, is at least the target
 *
 * @param dates of the record [whole day numbers], in any order; null in rows that are empty
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @param start of any year [whole day number]: its month and date count
 * @param target [degree days of that scale], above 0
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns one entry for every year whose start lies in the record
 * @throws notADate, outOfRange, unequalLists, noDays, sameDayTwice, dateMissing, lowAboveHighInRow, ceilingWanted,
 *   ceilingUnderBase
 * Source: see heatFormula.
 * @example heatDates([0, 1], [65, 80], [40, 60], 0, 22.5, 50) // [{ year: 1970, date: 1, days: 1 }]
 */
export function heatDates(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  start: number,
  target: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): HeatDateOfYear[] {
  checkDay('start', start);
  checkPositive('target', target, 'degreeDays');
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  const known = heatWhereKnown(dates, highs, lows, heatFormula(base, ceiling, chosen));
  const years = startsInRecord(known, start).map(({ year, start: first }): HeatDateOfYear => {
    const end = sameDateIn(year + 1, start);
    let heat = 0;
    for (let day = first; day < end; day++) {
      const more = known.heatOn(day);
      if (more === null) return { year, date: 'void', days: 'void' };
      heat += more;
      if (heat >= target - leastDifference) return { year, date: day, days: day - first };
    }
    return { year, date: 'none', days: 'none' };
  });
  const count = (of: 'none' | 'void'): number => years.filter(({ date }) => date === of).length;
  record?.({
    step: 'heatDates',
    inputs: { start, target, none: count('none'), void: count('void') },
    result: years.length - count('none') - count('void'),
    unit: 'none',
  });
  record?.({ source: heatSources[chosen] });
  return years;
}
