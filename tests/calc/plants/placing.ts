/** Rows and plants set out one by one, to count what formulas count. Room for rounding error only. */
import fc from 'fast-check';

const slack = 1e-7;

/** Positions from `first` on, every `spacing`, not past `last`. */
export function positions(first: number, last: number, spacing: number): number[] {
  const placed: number[] = [];
  for (let i = 0; first + i * spacing <= last + slack; i++) placed.push(first + i * spacing);
  return placed;
}

/** Lengths in hundredths, as a tape reads them. */
export const measured = (min: number, max: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.round(min * 100), max: Math.round(max * 100) })
    .map((hundredths) => hundredths / 100);
