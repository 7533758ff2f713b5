import { keep15Digits } from './coerceValue';

/** ROUNDUP: away from zero. */
export function roundUp(number: number, places: number): number {
  return roundBy(Math.ceil, number, places);
}

/** ROUND: to the nearest, a half away from zero. */
export function round(number: number, places: number): number {
  return roundBy(Math.round, number, places);
}

/** Digits beyond the 15 that Excel keeps do not count: 1.1*1.1*100 is 121, not 122. */
function roundBy(roundPositive: (number: number) => number, number: number, places: number): number {
  const whole = Math.trunc(places);
  const shifted = keep15Digits(shiftPoint(Math.abs(keep15Digits(number)), whole));
  return Math.sign(number) * shiftPoint(roundPositive(shifted), -whole);
}

/** Moves the decimal point by its text, as 1.005 * 100 would not give 100.5. */
function shiftPoint(number: number, places: number): number {
  const [digits = '0', power = '0'] = String(number).split('e');
  return Number(`${digits}e${Number(power) + places}`);
}
