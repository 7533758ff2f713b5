import { refuse } from '../errors';
import type { Evenly } from './evenly';

/** A row of plants, or of hills, by its distance from the plot's near edge [ft or m]. */
export interface PlacedRow {
  readonly across: number;
  /** From the end where the row begins. */
  readonly along: Evenly;
}

/** More than a picture can show, and far more than a plot has: judgement. */
const mostRows = 1000;

/**
 * Rows one by one, as many as are drawn.
 *
 * @param count whole, 0 to 1,000
 * @param rowAt gives a row by its number, from 0
 * @throws tooManyRowsToPlace
 * Source: project convention.
 * @example placeRows(2, (i) => ({ across: 5 * i, along })).length // 2
 */
export function placeRows(count: number, rowAt: (index: number) => PlacedRow): PlacedRow[] {
  if (count > mostRows) refuse({ code: 'tooManyRowsToPlace', rows: count, most: mostRows });
  return Array.from({ length: count }, (_, index) => rowAt(index));
}
