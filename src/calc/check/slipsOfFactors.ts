import { knownOf, unitNumbers, type Given, type Slip } from './slip';
import { inSmallUnits, type ChangedCall } from './slipsOfArguments';

/**
 * Slips with each factor of a sum on paper: multiplied by where it divides, or the other way round, or left out. What
 * is a factor is tried out: the figure grows, or shrinks, as the number does.
 *
 * @param figure the sum on paper, NaN where there is none
 * @param given arguments and constants of the call
 * @returns a call a slip, for the sum on paper only
 * Source: common practice, no source: what teachers of the trade see.
 */
export function slipsOfFactors(figure: (given: Given) => number, given: Given): ChangedCall[] {
  const { units } = knownOf(given, NaN);
  const turning = unitNumbers(units);
  const numbers = Object.entries({ ...turning, ...given }).flatMap(([about, value]) =>
    typeof value === 'number'
      ? [{ about, value, power: powerOf((times) => figure({ ...given, [about]: value * times })) }]
      : [],
  );
  const notDividing = numbers.filter(({ about, power }) => power >= 0 && !(about in turning));
  const calls: ChangedCall[] = [];
  for (const { about, value, power } of numbers) {
    if (power === 0) continue;
    const put = (slip: Slip, changed: number): void => {
      calls.push({ slip, given: { ...given, [about]: changed } });
    };
    if (about in turning) {
      // Of two spacings one in the small unit turned wrongly is both of them in it, and is told of so.
      if (about === 'spacingPerLength' && given['row_spacing'] !== undefined) continue;
      put({ name: power > 0 ? 'unitDivided' : 'unitMultiplied', about, value }, 1 / value);
      continue;
    }
    // What alone is divided is what the sum is about: nobody divides by it, or leaves it out.
    if (power > 0 && notDividing.length === 1) continue;
    const slip: Slip = { name: power > 0 ? 'divided' : 'multiplied', about };
    // One large unit is what a length in the small one amounts to when it is left out.
    const one = inSmallUnits.includes(about) ? units.spacingPerLength : 1;
    put(slip, 1 / value);
    if (one > 1) put(slip, one ** 2 / value);
    put({ name: 'leftOut', about }, one);
  }
  return calls;
}

/** 1 where the figure is so many times as large, -1 where it is that part, 0 where it is neither. */
function powerOf(figureOf: (times: number) => number): number {
  const isAt = (times: number, power: number): boolean =>
    Math.abs(figureOf(times) / figureOf(1) / times ** power - 1) < 1e-9;
  return [1, -1].find((power) => isAt(2, power) && isAt(3, power)) ?? 0;
}
