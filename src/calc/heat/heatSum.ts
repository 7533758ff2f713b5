import { refuse } from '../errors';
import { orAssume, type Recorder } from '../working';
import { checkSameLength } from '../limits/checkSameLength';
import { checkBase } from './checkBase';
import { heatFormula, type HeatMethod } from './heatFormula';
import { heatSources } from './heatOfDay';
import { heatOfRow } from './heatOfRow';
import { heatPutIn } from './heatPutIn';

/**
 * The heat of a run of days, a row each.
 *
 * sum = sum of the days' heat (see heatOfDay)
 *
 * @param highs highest temperature of each day [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each day [same scale], in the same order. Rows after the last that has either
 *   are no part of the record
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns degree days of that scale
 * @throws unequalLists, noDays, dayMissingInRow (no sum without it), lowAboveHighInRow, notATemperature,
 *   baseInOtherScale, outOfRange, ceilingWanted, ceilingUnderBase
 * Source: see heatFormula.
 * @example heatSum([65, 80], [40, 60], 50) // 22.5
 */
export function heatSum(
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): number {
  checkSameLength('highs', highs, 'lows', lows);
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  const formula = heatFormula(base, ceiling, chosen);
  let days = highs.length;
  while (days > 0 && highs[days - 1] === null && lows[days - 1] === null) days -= 1;
  if (days === 0) refuse({ code: 'noDays' });
  const heats = highs.slice(0, days).map((high, row) => heatOfRow(formula, high, lows[row], row));
  const sum = heats.reduce((total, heat) => total + heat, 0);
  // After the rows: exchanged columns and marks for what is missing are named as such.
  checkBase(base, highs);
  record?.({
    step: 'heatSum',
    inputs: {
      days,
      base,
      ...(ceiling === undefined ? {} : { ceiling }),
      method: chosen,
      heatOfDays: heatPutIn(heats),
    },
    result: sum,
    unit: 'degreeDays',
  });
  record?.({ source: heatSources[chosen] });
  return sum;
}
