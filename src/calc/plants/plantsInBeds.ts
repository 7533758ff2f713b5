import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { bedsInPlot } from './bedsInPlot';

/**
 * Plants in beds that run along the length of a plot, with paths between the beds and none outside them.
 *
 * beds = floor((width + path) / (bed + path)); plants = beds x rows in a bed x floor(length / plant spacing)
 *
 * @param length of the plot, along the beds [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the beds [ft or m], above 0 to 1,000,000
 * @param bedWidth [ft or m], above 0
 * @param pathWidth between two beds [ft or m], 0 or more
 * @param rowsPerBed whole, 1 or more, at least 4 in or 10 cm apart, each owning its part of the bed
 * @param plantSpacing in the row [in or cm], above 0
 * @returns whole plants
 * @throws outOfRange, notWhole, rowsTooClose, noBedFits, noPlantFits
 * Source: plane geometry: n beds and n - 1 paths take n (bed + path) - path. How close rows may be: judgement.
 * @example plantsInBeds(100, 40, 4, 2, 2, 12, unitSystems.us) // 1400
 */
export function plantsInBeds(
  length: number,
  width: number,
  bedWidth: number,
  pathWidth: number,
  rowsPerBed: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  const found = bedsInPlot(length, width, bedWidth, pathWidth, rowsPerBed, plantSpacing, units, record);
  const beds = found.beds.count;
  const rowsInBed = found.rowsInBed.count;
  const plantsInRow = found.plants.count;
  const plants = beds * rowsInBed * plantsInRow;
  record?.({
    step: 'plantsInBeds',
    inputs: { beds, rows_per_bed: rowsInBed, plantsInRow },
    result: plants,
    unit: 'plants',
  });
  return plants;
}
