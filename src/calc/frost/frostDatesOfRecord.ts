import type { UnitSystem } from '../units/units';
import { frostSides, type FrostSide, type Hemisphere } from './coldSeason';
import { frostDateAtRisk } from './frostDateAtRisk';
import { frostOfSeasons, type SeasonFrost } from './frostOfSeasons';

export interface FrostDates {
  /** Whole day numbers. */
  readonly lastFrost: number;
  readonly firstFrost: number;
  /** Springs and falls that count. */
  readonly springs: number;
  readonly falls: number;
}

/**
 * The last frost of a spring and the first of the fall after it, at one risk, out of a daily record.
 *
 * As FROST.SPRINGDATE of FROST.LASTDATES, and FROST.FALLDATE of FROST.FIRSTDATES; in the south the fall after a spring
 * is in the next year.
 *
 * @param dates of the record [whole day numbers]
 * @param lows lowest temperature of each day [F or C]; null where the record has none
 * @param risk above 0, below 1 [share]
 * @param year of the spring, whole
 * @throws what frostOfSeasons and frostDateAtRisk throw
 * Source: see there.
 */
export function frostDatesOfRecord(
  dates: readonly number[],
  lows: readonly (number | null)[],
  risk: number,
  year: number,
  units: UnitSystem,
  hemisphere: Hemisphere,
): FrostDates {
  const [last = [], first = []] = frostSides.map((side: FrostSide): SeasonFrost[] =>
    frostOfSeasons(side, dates, lows, undefined, units, hemisphere).map(({ frost }) => frost),
  );
  const count = (frosts: readonly SeasonFrost[]): number => frosts.filter((one) => one !== 'void').length;
  return {
    lastFrost: frostDateAtRisk('spring', last, risk, year, undefined, hemisphere),
    firstFrost: frostDateAtRisk(
      'fall',
      first,
      risk,
      hemisphere === 'north' ? year : year + 1,
      undefined,
      hemisphere,
    ),
    springs: count(last),
    falls: count(first),
  };
}
