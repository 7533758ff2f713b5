import { refuse } from '../errors';
import { checkTemperature } from '../limits/checkTemperature';

export const heatMethods = ['mean', 'modified', 'sine', 'reduced'] as const;
export type HeatMethod = (typeof heatMethods)[number];

/** The heat of one day by its high and low, in degree days of their scale. */
export type HeatFormula = (high: number, low: number) => number;

/**
 * The formula of one method, so that a record of many years checks its base and ceiling once.
 *
 * mean: max(0, min((high + low) / 2, ceiling) - base)
 * modified: high and low each brought into base to ceiling, then their mean - base
 * sine: area between base and ceiling under a sine through low and high (horizontal cutoff)
 * reduced: max(0, high' - base), high' = high up to the ceiling, beyond it 2 ceiling - high
 *
 * @param base below which nothing grows [degrees of the highs' scale], -150 to 150
 * @param ceiling above which more warmth does not help [same scale], above the base; none when undefined
 * @throws outOfRange, ceilingWanted (reduced without one), ceilingUnderBase
 * Source: mean and modified: McMaster and Wilhelm 1997 (the two readings of one formula); sine: Baskerville and Emin
 * 1969, from memory, held to numerical integration; reduced: Perry and Wehner 1996, where the low is not used.
 * Heat below the base counts as none: their abstracts do not say.
 */
export function heatFormula(base: number, ceiling: number | undefined, method: HeatMethod): HeatFormula {
  checkTemperature('base', base);
  if (ceiling !== undefined) {
    checkTemperature('ceiling', ceiling);
    if (ceiling <= base) refuse({ code: 'ceilingUnderBase', base, ceiling });
  }
  const top = ceiling ?? Infinity;
  const into = (degrees: number): number => Math.min(Math.max(degrees, base), top);
  switch (method) {
    case 'mean':
      return (high, low) => Math.max(0, Math.min((high + low) / 2, top) - base);
    case 'modified':
      return (high, low) => (into(high) + into(low)) / 2 - base;
    case 'sine':
      return (high, low) =>
        sineOver(base, high, low) - (ceiling === undefined ? 0 : sineOver(ceiling, high, low));
    case 'reduced':
      if (ceiling === undefined) return refuse({ code: 'ceilingWanted' });
      return (high) => Math.max(0, (high <= top ? high : 2 * top - high) - base);
  }
}

/** The area over a threshold under one turn of a sine from low to high. */
function sineOver(threshold: number, high: number, low: number): number {
  const mean = (high + low) / 2;
  if (low >= threshold) return mean - threshold;
  if (high <= threshold) return 0;
  const half = (high - low) / 2;
  const angle = Math.asin((threshold - mean) / half);
  return (half * Math.cos(angle) - (threshold - mean) * (Math.PI / 2 - angle)) / Math.PI;
}
