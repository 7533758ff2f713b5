import { refuse } from '../errors';
import { orAssume, type Recorder } from '../working';
import { checkTemperature } from '../limits/checkTemperature';
import { checkBase } from './checkBase';
import { heatFormula, type HeatMethod } from './heatFormula';

/**
 * The heat of one day.
 *
 * heat = what the method makes of the high, the low, the base and the ceiling (see heatFormula)
 *
 * @param high highest temperature of the day [degrees of any one scale], -150 to 150
 * @param low lowest temperature of the day [same scale], not above the high
 * @param base below which nothing grows [same scale]
 * @param ceiling above which more warmth does not help [same scale]; none when undefined
 * @param method "mean" when undefined
 * @returns degree days of that scale; one C-day is 1.8 F-days
 * @throws outOfRange, baseInOtherScale, lowAboveHigh, ceilingWanted, ceilingUnderBase
 * Source: see heatFormula. Michigan State's worked example: 65 and 40 over 50 make 2.5.
 * @example heatOfDay(65, 40, 50) // 2.5
 */
export function heatOfDay(
  high: number,
  low: number,
  base: number,
  ceiling?: number,
  method?: HeatMethod,
  record?: Recorder,
): number {
  const chosen = orAssume(method, 'mean', 'method', 'none', 'judgement', record);
  const formula = heatFormula(base, ceiling, chosen);
  checkTemperature('high', high);
  checkTemperature('low', low);
  checkBase(base, [high]);
  if (low > high) refuse({ code: 'lowAboveHigh', high, low });
  const heat = formula(high, low);
  record?.({
    step: heatSteps[chosen],
    inputs: { high, low, base, ...(ceiling === undefined ? {} : { ceiling }) },
    result: heat,
    unit: 'degreeDays',
  });
  record?.({ source: heatSources[chosen] });
  return heat;
}

export const heatSteps: Readonly<Record<HeatMethod, string>> = {
  mean: 'heatByMean',
  modified: 'heatByModified',
  sine: 'heatBySine',
  reduced: 'heatByReduced',
};

export const heatSources: Readonly<Record<HeatMethod, string>> = {
  mean: 'msu-degree-days',
  modified: 'mcmaster-wilhelm-1997',
  sine: 'baskerville-emin-1969',
  reduced: 'perry-wehner-1996',
};
