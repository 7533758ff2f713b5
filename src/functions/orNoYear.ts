import type { Scalar } from './define';

/** The rows of a list of years, or one with the sentence where there is none: an empty list shows as a bare error. */
export function orNoYear(rows: Scalar[][], sentence: string): Scalar[][] {
  return rows.length === 0 ? [[sentence]] : rows;
}
