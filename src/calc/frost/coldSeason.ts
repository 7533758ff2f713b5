/**
 * Cold seasons: from midsummer to midsummer, so that each holds the first frost of a fall and the last of the spring
 * after it, on whichever side of New Year. Split on 24 July in the north, 24 January in the south: Utah Climate
 * Center, freeze table (north); the south mirrored, project convention.
 */
import { dayOfDate, yearOfDay } from '../dates/calendar';

export const hemispheres = ['north', 'south'] as const;
export type Hemisphere = (typeof hemispheres)[number];
export const frostSides = ['spring', 'fall'] as const;
export type FrostSide = (typeof frostSides)[number];

const splitMonth = { north: 7, south: 1 };
const splitDate = 24;

/** The first day of the cold season that begins in a year. */
export function coldSeasonStart(year: number, hemisphere: Hemisphere): number {
  return dayOfDate(year, splitMonth[hemisphere], splitDate);
}

/** The year in which the day's cold season begins. */
export function coldSeasonOf(day: number, hemisphere: Hemisphere): number {
  const year = yearOfDay(day);
  return day < coldSeasonStart(year, hemisphere) ? year - 1 : year;
}

/** The year that the season's spring or fall is in. */
export function yearOfSide(coldSeason: number, side: FrostSide, hemisphere: Hemisphere): number {
  return hemisphere === 'north' && side === 'spring' ? coldSeason + 1 : coldSeason;
}

/** The other way round: the year in which the cold season of a year's spring or fall begins. */
export function coldSeasonOfSide(year: number, side: FrostSide, hemisphere: Hemisphere): number {
  return hemisphere === 'north' && side === 'spring' ? year - 1 : year;
}

/**
 * The day that a year's spring or fall dates are counted from, so that 29 February shifts none of them: 1 March in the
 * north, 1 September in the south, before the fall of that year.
 */
export function countingStart(year: number, side: FrostSide, hemisphere: Hemisphere): number {
  if (hemisphere === 'north') return dayOfDate(year, 3, 1);
  return dayOfDate(side === 'spring' ? year : year - 1, 9, 1);
}

/** Days from that day to the date. */
export function daysCounted(day: number, side: FrostSide, hemisphere: Hemisphere): number {
  const year = yearOfSide(coldSeasonOf(day, hemisphere), side, hemisphere);
  return day - countingStart(year, side, hemisphere);
}
