import { refuse } from '../errors';
import type { UnitSystem } from '../units/units';

/** No night has been as warm in C. */
const warmestNightInC = 45;
/** Where a year's warmest night is colder in F no cucurbit grows. */
const coolestSummerInF = 40;
/** From here on a threshold is one in F. */
const leastThresholdInF = 20;
const wholeYear = 365;

/**
 * The check that the lows of a record are in the scale of the frost's threshold.
 *
 * @param lows of the days that have one [F or C]
 * @param threshold of a frost [same scale]
 * @param units say which scale
 * @throws lowsInCelsius (a year or more of them), lowsInFahrenheit
 * Source: judgement.
 */
export function checkScale(lows: readonly number[], threshold: number, units: UnitSystem): void {
  const warmest = lows.reduce((most, low) => Math.max(most, low), -Infinity);
  if (units.name === 'metric') {
    if (warmest > warmestNightInC) refuse({ code: 'lowsInFahrenheit', warmest });
  } else if (threshold >= leastThresholdInF && lows.length >= wholeYear && warmest < coolestSummerInF) {
    refuse({ code: 'lowsInCelsius', warmest });
  }
}
