import { ripenessSigns } from '../../reference/pickingSizes';
import { findCrop } from '../crops/findCrop';
import { recordGrounds } from '../crops/recordGrounds';
import { checkPositive } from '../limits/limits';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import { ceilWhole, floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { pickingSizeOf, type PickingUse } from './pickingSizeOf';

export type SizeVerdict = 'under' | 'ready' | 'over';

/**
 * Whether a fruit has the size to be picked.
 *
 * under: size < low end; over: size > high end; else ready, both ends included
 *
 * @param size length or diameter, as the crop is measured [in or cm], above 0
 * @param cropName a crop's name or synonym
 * @param use "fresh" or "pickles"; undefined: what the crop is grown for
 * @returns the verdict
 * @throws outOfRange, unknownName, judgedByRipeness, noSizeForUse
 * Source: as pickingSizeOf.
 * @example sizeVerdict(7, 'cucumber', undefined, unitSystems.us) // 'ready'
 */
export function sizeVerdict(
  size: number,
  cropName: string,
  use: PickingUse | undefined,
  units: UnitSystem,
  record?: Recorder,
): SizeVerdict {
  checkPositive('size', size, units.spacing);
  const crop = findCrop(cropName);
  const { low, high, measured, grounds } = pickingSizeOf(crop, cropName, use);
  const shown = (inches: number): number => (units.name === 'metric' ? inMetric(inches, 'in').value : inches);
  const smallest = shown(low);
  const largest = shown(high);
  const inputs = { crop: crop.name, measured };
  record?.({ step: 'pickingSizeLow', inputs, result: smallest, unit: units.spacing });
  record?.({ step: 'pickingSizeHigh', inputs, result: largest, unit: units.spacing });
  recordGrounds(grounds, largest, units.spacing, 'pickingSizeHigh', record);
  // Whole numbers know a bound in spite of binary fractions: 9.3 in are 23.622000000000003 cm in binary fractions.
  const verdict =
    floorWhole(size / smallest) < 1 ? 'under' : ceilWhole(size / largest) > 1 ? 'over' : 'ready';
  record?.({
    step: 'sizeVerdict',
    inputs: { size, pickingSizeLow: smallest, pickingSizeHigh: largest },
    result: verdict,
    unit: 'none',
  });
  const ripe = ripenessSigns[crop.name];
  if (ripe !== undefined) {
    record?.({ remark: 'sizeIsNotRipeness' });
    record?.({ source: ripe.ground });
  }
  if (crop.figures.species?.text === 'Cucumis sativus') {
    record?.({ remark: 'cucumbersByThickness' });
    record?.({ source: 'nc-ag-552-harvest' });
  }
  return verdict;
}
