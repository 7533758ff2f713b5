/**
 * Whole numbers without the traps of binary fractions: 0.6 / 0.2 is 2.9999999999999996 in floating point, and
 * a grower counts 3. A value within 1e-9 relative of an integer is that integer. Source: project convention.
 */
const nearness = 1e-9;

function nearestIfNear(value: number): number | null {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= nearness * Math.max(1, Math.abs(nearest)) ? nearest : null;
}

/** Rounds down, but for a value that is an integer up to rounding error. */
export function floorWhole(value: number): number {
  return nearestIfNear(value) ?? Math.floor(value);
}

/** Rounds up, but for a value that is an integer up to rounding error. */
export function ceilWhole(value: number): number {
  return nearestIfNear(value) ?? Math.ceil(value);
}

/** The integer that the value is, or null when it is none. */
export function asWhole(value: number): number | null {
  return nearestIfNear(value);
}
