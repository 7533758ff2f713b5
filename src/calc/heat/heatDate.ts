import { checkDay } from '../dates/dayLimits';
import { checkPositive } from '../limits/limits';
import { orAssume, type Recorder } from '../working';
import { checkBase } from './checkBase';
import { heatByDay } from './heatByDay';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatSources } from './heatOfDay';
import { heatPutIn } from './heatPutIn';

/**
 * The day on which the heat since a start reaches a target.
 *
 * date = first day on which the sum of the days' heat, the start's included, is at least the target
 *
 * @param dates of the record [whole day numbers], in any order
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @param start first day that counts [whole day number]
 * @param target [degree days of that scale], above 0
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns whole day number
 * @throws notADate, unequalLists, noDays, sameDayTwice, dateMissing, dayMissing (on the way there), recordEnds
 *   (before the target), lowAboveHighInRow, notATemperature, baseInOtherScale, outOfRange, ceilingWanted,
 *   ceilingUnderBase
 * Source: see heatFormula.
 * @example heatDate([0, 1, 2], [65, 80, 80], [40, 60, 60], 0, 22.5, 50) // 1: 2.5 and 20
 */
export function heatDate(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  start: number,
  target: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): number {
  checkDay('start', start);
  checkPositive('target', target, 'degreeDays');
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  checkBase(base, highs);
  const heatOn = heatByDay(dates, highs, lows, heatFormula(base, ceiling, chosen));
  let day = start;
  let sum = heatOn(day);
  while (sum < target - leastDifference) sum += heatOn(++day);
  record?.({
    step: 'heatReached',
    inputs: {
      start,
      target,
      days: day - start + 1,
      heatOfDays: heatPutIn(Array.from({ length: day - start + 1 }, (_, after) => heatOn(start + after))),
    },
    result: sum,
    unit: 'degreeDays',
  });
  record?.({ step: 'heatDate', inputs: { start, days: day - start + 1 }, result: day, unit: 'date' });
  record?.({ source: heatSources[chosen] });
  return day;
}

/** A sum of decimal temperatures that is short by rounding error only has reached the target. */
export const leastDifference = 1e-9;
