import { roundingOf } from '../whole/roundingOf';
import { refuse } from '../errors';
import { checkSide } from '../limits/checkSide';
import { checkCount, checkNumber, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import type { Evenly } from './evenly';

export interface BedsInPlot {
  /** The near edge of each, across the plot. */
  readonly beds: Evenly;
  /** Across a bed, from its near edge. */
  readonly rowsInBed: Evenly;
  /** In each row, along the plot. */
  readonly plants: Evenly;
}

/** In inches or centimetres. */
const closestRows = { us: 4, metric: 10 };

/**
 * The beds of a rectangular plot, their rows and the plants in each: what plantsInBeds counts and placeInBeds places.
 *
 * beds = floor((width + path) / (bed + path)), from the edge on; each row owns its part of the bed and stands in its
 * middle; plants in a row = floor(length / plant spacing), from half a spacing on
 *
 * @param length of the plot, along the beds [ft or m], above 0 to 1,000,000
 * @param width of the plot, across the beds [ft or m], above 0 to 1,000,000
 * @param bedWidth [ft or m], above 0
 * @param pathWidth between two beds [ft or m], 0 or more
 * @param rowsPerBed whole, 1 or more, at least 4 in or 10 cm apart
 * @param plantSpacing in the row [in or cm], above 0
 * @returns at least one bed; what is left over lies behind the last of them
 * @throws outOfRange, notWhole, rowsTooClose, noBedFits, noPlantFits
 * Source: plane geometry: n beds and n - 1 paths take n (bed + path) - path. How close rows may be: judgement.
 * @example bedsInPlot(100, 40, 4, 2, 2, 12, unitSystems.us).beds // { first: 0, apart: 6, count: 7 }
 */
export function bedsInPlot(
  length: number,
  width: number,
  bedWidth: number,
  pathWidth: number,
  rowsPerBed: number,
  plantSpacing: number,
  units: UnitSystem,
  record?: Recorder,
): BedsInPlot {
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

  const between = plantSpacing / units.spacingPerLength;
  return {
    beds: { first: 0, apart: bedWidth + pathWidth, count: beds },
    rowsInBed: { first: bedWidth / rowsInBed / 2, apart: bedWidth / rowsInBed, count: rowsInBed },
    plants: { first: between / 2, apart: between, count: plantsInRow },
  };
}
