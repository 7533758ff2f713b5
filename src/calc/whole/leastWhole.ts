/**
 * The least whole number from `lowest` to `highest` that passes a test, or null when none does.
 *
 * Steps of doubling size from the guess until the answer is bracketed, then bisection: about 2 log2(distance of
 * the guess) tests.
 *
 * @param passes false up to the answer and true from it on
 * @param guess where to start; any number, brought into the range
 * Source: project convention, the usual galloping search.
 * @example leastWhole(1, 1000, 20, (n) => n * n >= 50) // 8
 */
export function leastWhole(
  lowest: number,
  highest: number,
  guess: number,
  passes: (candidate: number) => boolean,
): number | null {
  let failing = lowest - 1;
  let passing = Math.min(highest, Math.max(lowest, Math.round(guess)));
  for (let stride = 1; !passes(passing); stride *= 2) {
    if (passing === highest) return null;
    failing = passing;
    passing = Math.min(highest, passing + stride);
  }
  // The guess itself may lie far above the answer: come down from it the same way.
  for (let stride = 1; passing - failing > stride; stride *= 2) {
    const below = passing - stride;
    if (!passes(below)) {
      failing = below;
      break;
    }
    passing = below;
  }
  while (passing - failing > 1) {
    const middle = failing + Math.floor((passing - failing) / 2);
    if (passes(middle)) passing = middle;
    else failing = middle;
  }
  return passing;
}
