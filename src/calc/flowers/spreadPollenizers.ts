import { checkCount } from '../limits/limits';

/**
 * Which plants are pollenizers, when they are spread evenly along the rows, one row after another.
 *
 * the j-th of P pollenizers among N plants is the plant floor((j + 1/2) N / P), from 0 on: each in the middle of its
 * share of the row
 *
 * @param plants N in the plot, whole, 1 or more
 * @param pollenizers P among them, whole, 0 to N
 * @returns numbers of plants, from 0, rising and each another
 * @throws outOfRange, notWhole
 * Source: University of Delaware Weekly Crop Update (Johnson) tells pollenizers as one to so many plants; that they
 * stand evenly in every row, and where the first one stands: judgement.
 * @example spreadPollenizers(12, 3) // [2, 6, 10]: every fourth plant
 */
export function spreadPollenizers(plants: number, pollenizers: number): number[] {
  const all = checkCount('plants', plants, 'plants', { atLeast: 1 });
  const some = checkCount('pollenizers', pollenizers, 'plants', { atLeast: 0, atMost: all });
  return Array.from({ length: some }, (_, j) => Math.floor(((2 * j + 1) * all) / (2 * some)));
}
