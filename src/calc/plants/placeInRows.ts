import { placeOf } from './evenly';
import { placeRows, type PlacedRow } from './placeRows';
import type { RowsInPlot } from './rowsInPlot';

/**
 * Where the plants stand that plantsInRows counts.
 *
 * @param plot as rowsInPlot gives it
 * @returns every row, from the near edge on
 * @throws tooManyRowsToPlace
 * Source: plane geometry.
 * @example placeInRows(rowsInPlot(30, 10, 5, 12, unitSystems.us))[1].across // 7.5
 */
export function placeInRows({ rows, plants }: RowsInPlot): PlacedRow[] {
  return placeRows(rows.count, (index) => ({ across: placeOf(rows, index), along: plants }));
}
