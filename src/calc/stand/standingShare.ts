import { checkNumber, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * The share of the stand that was meant, from the plants counted along a length of row.
 *
 * share = plants standing / (row length / plant spacing)
 *
 * @param plantsStanding counted, or the mean of several counts; 0 or more
 * @param rowLength counted over, gaps and all [ft or m], above 0
 * @param plantSpacing meant in the row [in or cm], above 0
 * @returns share, above 1 where more stand than were meant
 * @throws outOfRange
 * Source: proportion. The plants meant are not rounded, so that a short count is not too kind.
 * @example standingShare(75, 100, 12, unitSystems.us) // 0.75
 */
export function standingShare(
  plantsStanding: number,
  rowLength: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkNumber('plants_standing', plantsStanding, 'plants', { atLeast: 0 });
  checkPositive('row_length', rowLength, units.length);
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const plantsMeant = (rowLength * units.spacingPerLength) / plantSpacing;
  record?.({
    step: 'plantsMeant',
    inputs: {
      row_length: rowLength,
      spacingPerLength: units.spacingPerLength,
      plant_spacing: plantSpacing,
    },
    result: plantsMeant,
    unit: 'plants',
  });
  const share = plantsStanding / plantsMeant;
  record?.({
    step: 'standingShare',
    inputs: { plants_standing: plantsStanding, plantsMeant },
    result: share,
    unit: 'share',
  });
  record?.({ remark: 'countInSeveralPlaces' });
  return share;
}
