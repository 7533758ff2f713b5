import type { Crop, FlowerType } from '../../reference/crops';
import { cropFigure } from '../crops/cropFigure';
import { cropText } from '../crops/cropText';
import { findCrop } from '../crops/findCrop';
import { refuse } from '../errors';
import { unitSystems } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

/**
 * The day on which a row cover comes off, so that bees reach the first female flowers.
 *
 * cover off = first pick - days from flower to pick, a fraction of a day rounded down (early rather than late)
 *
 * @param firstPick day of the first pick [whole day number]
 * @param cropName a crop's name or synonym
 * @param flowerToPick from open female flower to pick [days], 0 to 120; the middle of the crop's own when undefined
 * @param flowerType the crop's own when undefined
 * @returns the day to take the cover off [whole day number]
 * @throws notADate, outOfRange, unknownName, noFigure, mayStayCovered for a parthenocarpic type
 * Source: North Carolina AG-552: cucumbers 8 to 10 days from the first fully open female flowers to the first pick,
 * middle 9; other crops: reference/crops.
 * @example rowCoverOffDate(20649, 'cucumber', undefined, undefined) // 20640: 2026-07-15 gives 2026-07-06
 */
export function rowCoverOffDate(
  firstPick: number,
  cropName: string,
  flowerToPick: number | undefined,
  flowerType: FlowerType | undefined,
  record?: Recorder,
): number {
  checkDay('first_pick', firstPick);
  const crop = findCrop(cropName);
  if ((flowerType ?? ownFlowerType(crop, record)) === 'parthenocarpic') refuse({ code: 'mayStayCovered' });
  const days = flowerToPick ?? cropFigure(crop, 'flower to pick', 'mid', unitSystems.us, record);
  checkDays('flower_to_pick', days);
  const exact = firstPick - days;
  const coverOff = floorWhole(exact);
  record?.({
    step: 'coverOff',
    inputs: { first_pick: firstPick, flower_to_pick: days },
    result: coverOff,
    unit: 'date',
    ...roundingOf(exact, coverOff),
  });
  record?.({ remark: 'goByFlowers' });
  return coverOff;
}

/** A crop of which the reference has no flower type is taken for one that needs bees. */
function ownFlowerType(crop: Crop, record: Recorder | undefined): string | undefined {
  return crop.figures['flower type'] === undefined ? undefined : cropText(crop, 'flower type', record);
}
