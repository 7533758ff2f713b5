import { checkCount, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * Potting mix that fills a number of cells.
 *
 * mix = cells x cell volume / 1,728 cu in in a cu ft (1,000 ml in a litre)
 *
 * @param cells whole, 1 or more
 * @param cellVolume [cu in or ml], above 0
 * @returns mix as it lies in the cells [cu ft or litres], unrounded
 * @throws outOfRange, notWhole
 * Source: definition of the units.
 * @example mixForCells(72, 4.38, unitSystems.us) // 0.1825
 */
export function mixForCells(cells: number, cellVolume: number, units: UnitSystem, record?: Recorder): number {
  const wanted = checkCount('cells', cells, 'cells', { atLeast: 1 });
  checkPositive('cell_volume', cellVolume, units.cellVolume);
  const { cellVolumePerMixVolume } = units;
  const mix = (wanted * cellVolume) / cellVolumePerMixVolume;
  record?.({
    step: 'mixForCells',
    inputs: { cells: wanted, cell_volume: cellVolume, cellVolumePerMixVolume },
    result: mix,
    unit: units.mixVolume,
  });
  record?.({ remark: 'mixSettles' });
  return mix;
}
