import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkCount, checkNumber, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/** In inches or centimetres. */
const closestRows = { us: 4, metric: 10 };

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
  checkSide('length', length, units.length);
  checkSide('width', width, units.length);
  checkPositive('bed_width', bedWidth, units.length);
  checkNumber('path_width', pathWidth, units.length, { atLeast: 0 });
  const rowsInBed = checkCount('rows_per_bed', rowsPerBed, 'rows', { atLeast: 1 });
  checkPositive('plant_spacing', plantSpacing, units.spacing);
  const apart = (bedWidth * units.spacingPerLength) / rowsInBed;
  const least = closestRows[units.name];
  if (rowsInBed > 1 && apart < least * (1 - 1e-9)) {
    const { length: unit, spacing: spacingUnit } = units;
    refuse({ code: 'rowsTooClose', rows: rowsInBed, bedWidth, unit, apart, least, spacingUnit });
  }

  const bedsExact = (width + pathWidth) / (bedWidth + pathWidth);
  const beds = floorWhole(bedsExact);
  if (beds < 1) refuse({ code: 'noBedFits', width, bedWidth, unit: units.length });
  record?.({
    step: 'bedsInWidth',
    inputs: { width, path_width: pathWidth, bed_width: bedWidth },
    result: beds,
    unit: 'beds',
    ...roundingOf(bedsExact, beds),
  });

  const inRowExact = (length * units.spacingPerLength) / plantSpacing;
  const plantsInRow = floorWhole(inRowExact);
  if (plantsInRow < 1) {
    refuse({ code: 'noPlantFits', length, plantSpacing, unit: units.length, spacingUnit: units.spacing });
  }
  record?.({
    step: 'plantsInRowInset',
    inputs: { length, spacingPerLength: units.spacingPerLength, plant_spacing: plantSpacing },
    result: plantsInRow,
    unit: 'plants',
    ...roundingOf(inRowExact, plantsInRow),
  });

  const plants = beds * rowsInBed * plantsInRow;
  record?.({
    step: 'plantsInBeds',
    inputs: { beds, rows_per_bed: rowsInBed, plantsInRow },
    result: plants,
    unit: 'plants',
  });
  return plants;
}
