import { refuse, type Problem } from '../errors';
import { airLimits } from '../limits/airLimits';
import type { UnitSystem } from '../units/units';

/** Where a year's warmest night is colder in F no cucurbit grows. */
const coolestSummerInF = 40;
/** From here on a threshold is one in F. */
const leastThresholdInF = 20;
const wholeYear = 365;

/**
 * What speaks against the scale that the lows of a record should be in, with the frost's threshold.
 *
 * @param lows of the days that have one [F or C]
 * @param threshold of a frost [same scale]
 * @param units say which scale
 * @returns lowsInCelsius (of a year or more), lowsInFahrenheit, or null
 * Source: judgement.
 */
export function findOtherScaleOfLows(
  lows: readonly number[],
  threshold: number,
  units: UnitSystem,
): Extract<Problem, { code: 'lowsInCelsius' | 'lowsInFahrenheit' }> | null {
  const warmest = lows.reduce((most, low) => Math.max(most, low), -Infinity);
  if (units.name === 'metric') {
    return warmest > airLimits.warmestNightC ? { code: 'lowsInFahrenheit', warmest } : null;
  }
  const isCold = threshold >= leastThresholdInF && lows.length >= wholeYear && warmest < coolestSummerInF;
  return isCold ? { code: 'lowsInCelsius', warmest } : null;
}

/** The check that nothing speaks against it. @throws lowsInCelsius, lowsInFahrenheit */
export function checkScale(lows: readonly number[], threshold: number, units: UnitSystem): void {
  const problem = findOtherScaleOfLows(lows, threshold, units);
  if (problem !== null) refuse(problem);
}
