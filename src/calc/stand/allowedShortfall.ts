/** As for whole numbers: what differs by less is rounding error of the decimals that were typed. */
const nearness = 1e-9;

/**
 * The largest chance of too few plants that an assurance allows.
 *
 * 1 - assurance, with room for the rounding error of binary fractions: two seeds at a germination of 0.7 give one
 * plant with a chance of 0.91, and an assurance of 0.91 must not ask for a third
 *
 * @param assurance above 0, below 1
 * @returns a chance
 * Source: project convention, as in wholeNumbers.
 * @example allowedShortfall(0.95) // 0.05
 */
export function allowedShortfall(assurance: number): number {
  return (1 - assurance) * (1 + nearness) + Number.EPSILON;
}
