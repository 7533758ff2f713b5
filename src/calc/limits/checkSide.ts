import type { Unit } from '../units/units';
import { checkNumber, checkPositive } from './limits';

/** In feet or metres. No plot is as long: a larger figure is a slip. */
const longestSide = 1_000_000;

/**
 * The check of a side of a plot.
 *
 * @param side [ft or m], above 0 to 1,000,000
 * @throws outOfRange
 * Source: judgement.
 */
export function checkSide(name: 'length' | 'width', side: number, unit: Unit): void {
  checkPositive(name, side, unit);
  checkNumber(name, side, unit, { atMost: longestSide });
}
