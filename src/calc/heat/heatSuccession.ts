import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkPositive } from '../limits/limits';
import { orAssume, type Recorder } from '../working';
import { checkBase } from './checkBase';
import { heatByDay } from './heatByDay';
import { leastDifference } from './heatDate';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatSources } from './heatOfDay';

/**
 * Sowing dates with equal heat between them.
 *
 * next = first day after a sowing such that the heat of the days from that sowing to the day before it is at least
 * the heat wanted
 *
 * @param dates of the record [whole day numbers], in any order
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @param first sowing [whole day number], included
 * @param last day to sow [whole day number], not before the first
 * @param heatBetween sowings [degree days of that scale], above 0
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns whole day numbers, rising, none after the last
 * @throws notADate, lastBeforeFirst, unequalLists, noDays, sameDayTwice, dateMissing, dayMissing, recordEnds (before
 *   the last day to sow), lowAboveHighInRow, notATemperature, baseInOtherScale, outOfRange, ceilingWanted,
 *   ceilingUnderBase
 * Source: project convention over heatFormula: sown in the morning, so that a sowing's day is its first day of heat.
 * @example heatSuccession([0, 1, 2, 3], [80, 80, 80, 80], [60, 60, 60, 60], 0, 4, 40, 50) // [0, 2, 4]
 */
export function heatSuccession(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  first: number,
  last: number,
  heatBetween: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): number[] {
  checkDay('first', first);
  checkDay('last', last);
  if (last < first) refuse({ code: 'lastBeforeFirst', firstDay: first, lastDay: last });
  checkPositive('heat_between', heatBetween, 'degreeDays');
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  checkBase(base, highs);
  const heatOn = heatByDay(dates, highs, lows, heatFormula(base, ceiling, chosen));
  const sowings = [first];
  let sum = 0;
  for (let day = first; day < last; day++) {
    sum += heatOn(day);
    if (sum < heatBetween - leastDifference) continue;
    record?.({
      step: 'heatSowing',
      inputs: { sowing: sowings[sowings.length - 1] ?? first, heat: sum, heat_between: heatBetween },
      result: day + 1,
      unit: 'date',
    });
    sowings.push(day + 1);
    sum = 0;
  }
  record?.({ source: heatSources[chosen] });
  return sowings;
}
