import { asWhole } from '../whole/wholeNumbers';
import type { Step } from '../working';

/**
 * Which way a result was rounded, for its step: nothing at all when it was whole already.
 *
 * @param exact before rounding
 * @param whole after rounding
 * @returns the part of a step that names the rounding
 * Source: project convention: a working names a rounding only where one happened.
 * @example roundingOf(20575.5, 20576) // { rounded: 'up' }
 */
export function roundingOf(exact: number, whole: number): Pick<Step, 'rounded'> {
  if (asWhole(exact) !== null) return {};
  return { rounded: whole > exact ? 'up' : 'down' };
}
