import { checkCount } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import type { HillPattern } from './hillRowsInPlot';
import { hillsInPlot } from './hillsInPlot';

/**
 * Plants in the hills of a rectangular plot.
 *
 * plants = hills in the plot x plants in a hill
 *
 * @param length of the plot, along the rows [ft or m], above 0
 * @param width of the plot, across the rows [ft or m], above 0
 * @param hillSpacing between hills in the row [ft or m], above 0
 * @param plantsPerHill left to stand in each hill, whole, 1 or more
 * @param pattern 'square' (default) or 'staggered'
 * @param rowSpacing between rows [ft or m], above 0; left out as in hillsInPlot
 * @returns whole plants
 * @throws outOfRange, notWhole, noHillFits, noHillRowFits
 * Source: plane geometry; the hills in hillsInPlot.
 * @example plantsInHills(60, 26, 6, 3, unitSystems.us, 'staggered') // 38 hills, 114 plants
 */
export function plantsInHills(
  length: number,
  width: number,
  hillSpacing: number,
  plantsPerHill: number,
  units: UnitSystem,
  pattern?: HillPattern,
  rowSpacing?: number,
  record?: Recorder,
): number {
  const inHill = checkCount('plants_per_hill', plantsPerHill, 'plants', { atLeast: 1 });
  const hills = hillsInPlot(length, width, hillSpacing, units, pattern, rowSpacing, record);
  const plants = hills * inHill;
  record?.({
    step: 'plantsInHills',
    inputs: { hills, plants_per_hill: inHill },
    result: plants,
    unit: 'plants',
  });
  return plants;
}
