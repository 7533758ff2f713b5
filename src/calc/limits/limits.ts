/** The checks that calculations open with. Each throws a CalcError naming the argument, the limit and the unit. */
import { refuse } from '../errors';
import type { Unit } from '../units/units';
import { asWhole } from '../whole/wholeNumbers';

interface Limits {
  readonly atLeast?: number;
  readonly above?: number;
  readonly atMost?: number;
  readonly below?: number;
}

/** @throws outOfRange */
export function checkNumber(name: string, value: number, unit: Unit, limits: Limits): void {
  const { atLeast = -Infinity, above = -Infinity, atMost = Infinity, below = Infinity } = limits;
  const inside =
    value >= atLeast &&
    value <= atMost &&
    (above === -Infinity || value > above) &&
    (below === Infinity || value < below);
  if (!Number.isFinite(value) || !inside) refuse({ code: 'outOfRange', name, value, unit, ...limits });
}

/** A length, area or other size that must be above 0. @throws outOfRange */
export function checkPositive(name: string, value: number, unit: Unit): void {
  checkNumber(name, value, unit, { above: 0 });
}

/** A fraction from 0 to 1, both included unless a limit says otherwise. @throws outOfRange, percentForShare */
export function checkShare(name: string, value: number, limits: Limits = {}): void {
  if (value > 1 && value <= 100) refuse({ code: 'percentForShare', name, value });
  const from = limits.above === undefined ? { atLeast: 0 } : {};
  const to = limits.below === undefined ? { atMost: 1 } : {};
  checkNumber(name, value, 'share', { ...from, ...to, ...limits });
}

/** A count: the whole number that the value is. @throws notWhole, outOfRange */
export function checkCount(name: string, value: number, unit: Unit, limits: Limits): number {
  checkNumber(name, value, unit, limits);
  return asWhole(value) ?? refuse({ code: 'notWhole', name, value });
}
