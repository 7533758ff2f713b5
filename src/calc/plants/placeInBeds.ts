import type { BedsInPlot } from './bedsInPlot';
import { placeOf } from './evenly';
import { placeRows, type PlacedRow } from './placeRows';

/**
 * Where the plants stand that plantsInBeds counts.
 *
 * @param plot as bedsInPlot gives it
 * @returns every row of every bed, from the near edge on
 * @throws tooManyRowsToPlace
 * Source: plane geometry.
 * @example placeInBeds(bedsInPlot(100, 40, 4, 2, 2, 12, unitSystems.us))[2].across // 7
 */
export function placeInBeds({ beds, rowsInBed, plants }: BedsInPlot): PlacedRow[] {
  return placeRows(beds.count * rowsInBed.count, (index) => ({
    across: placeOf(beds, Math.floor(index / rowsInBed.count)) + placeOf(rowsInBed, index % rowsInBed.count),
    along: plants,
  }));
}
