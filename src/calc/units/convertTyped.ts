import { inMetric } from './inMetric';
import type { Unit, UnitSystemName } from './units';

/** Nobody measures a plot or a price closer. */
const fewestDigits = 5;
/** A number holds no more. */
const mostDigits = 15;

/**
 * A number that somebody typed, in the other system's unit, in as many digits as bring it back.
 *
 * Five significant digits, or more until the way back gives the same number. So a number of up to five significant
 * digits comes back as it was typed, from either system; one of more comes back within its own last digit.
 *
 * @param value a finite number
 * @param usUnit the unit that the US system has for it; one that both systems have leaves the number as it is
 * @param to the system it goes to
 * @returns the number in that system's unit
 * Source: project convention: how many digits is judgement; the factors are those of `inMetric`.
 * @example convertTyped(24, 'ft', 'metric') // 7.3152
 */
export function convertTyped(value: number, usUnit: Unit, to: UnitSystemName): number {
  const digits = Math.max(fewestDigits, significantDigits(value));
  const [there, back] = to === 'metric' ? [toMetric, toUs] : [toUs, toMetric];
  for (let n = fewestDigits; n < mostDigits; n++) {
    const rounded = round(there(value, usUnit), n);
    if (round(back(rounded, usUnit), digits) === value) return rounded;
  }
  return round(there(value, usUnit), mostDigits);
}

function toMetric(value: number, usUnit: Unit): number {
  return inMetric(value, usUnit).value;
}

/** The way back of a straight line, from two of its points: the factors stand in one place. */
function toUs(value: number, usUnit: Unit): number {
  const zero = toMetric(0, usUnit);
  return (value - zero) / (toMetric(1, usUnit) - zero);
}

/** Decimals past which there is only the dust of binary fractions: 0 F must not come back as 4e-14. */
const mostDecimals = 12;

function round(value: number, digits: number): number {
  // Added to 0, for -0 is none that anybody typed.
  return 0 + Number(Number(value.toPrecision(digits)).toFixed(mostDecimals));
}

function significantDigits(value: number): number {
  return value.toExponential().replace(/e.*$/, '').replace(/\D/g, '').length;
}
