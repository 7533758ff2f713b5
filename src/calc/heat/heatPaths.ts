import { checkDay } from '../dates/dayLimits';
import { checkPositive } from '../limits/limits';
import { leastDifference } from './heatDate';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatWhereKnown } from './heatWhereKnown';

export interface HeatPath {
  readonly sowing: number;
  /** The heat since the sowing at the end of each day, the sowing's own included. */
  readonly sums: readonly number[];
  /** The day that heatDate gives; null where the record ends or lacks a day before it, or it is a year away. */
  readonly reached: number | null;
}

/** No crop here stands longer, and a target that is never reached ends somewhere. */
const mostDays = 366;

/**
 * How heat adds up from each sowing to its target.
 *
 * sum of a day = heat of the days from the sowing to that day
 *
 * @param dates of the record [whole day numbers], in any order
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @param sowings [whole day numbers]
 * @param target degree days to the first pick [of that scale], above 0
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns a path a sowing, to the day that reaches the target, else to the last before a gap or for a year
 * @throws notADate, unequalLists, noDays, sameDayTwice, dateMissing, lowAboveHighInRow, outOfRange, ceilingWanted,
 *   ceilingUnderBase
 * Source: project convention over heatFormula, as heatDate.
 */
export function heatPaths(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  sowings: readonly number[],
  target: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
): HeatPath[] {
  checkPositive('target', target, 'degreeDays');
  const { heatOn } = heatWhereKnown(dates, highs, lows, heatFormula(base, ceiling, method ?? 'mean'));
  return sowings.map((sowing) => {
    checkDay('sowing', sowing);
    const sums: number[] = [];
    let sum = 0;
    for (let day = sowing; day < sowing + mostDays; day++) {
      const heat = heatOn(day);
      if (heat === null) break;
      sum += heat;
      sums.push(sum);
      if (sum >= target - leastDifference) return { sowing, sums, reached: day };
    }
    return { sowing, sums, reached: null };
  });
}
