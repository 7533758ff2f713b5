import { placeOf } from './evenly';
import type { HillRows } from './hillRowsInPlot';
import { placeRows, type PlacedRow } from './placeRows';

/**
 * Where the hills lie that hillsInPlot counts.
 *
 * @param plot as hillRowsInPlot gives it
 * @returns every row of hills, from the near edge on; a staggered one may hold none
 * @throws tooManyRowsToPlace
 * Source: plane geometry.
 * @example placeInHills(hillRowsInPlot(60, 26, 6, unitSystems.us, 'staggered'))[1].along.count // 9
 */
export function placeInHills({ rows, inOddRow, inEvenRow }: HillRows): PlacedRow[] {
  return placeRows(rows.count, (index) => ({
    across: placeOf(rows, index),
    along: index % 2 === 0 ? inOddRow : inEvenRow,
  }));
}
