import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { yearOfDay, dayOfDate } from '../dates/calendar';
import { daysCounted, type FrostSide, type Hemisphere } from './coldSeason';
import type { SeasonFrost } from './frostOfSeasons';

export interface CountedFrosts {
  readonly hemisphere: Hemisphere;
  /** Days from the counting start of each season that froze, rising. */
  readonly counted: readonly number[];
  /** Seasons that count: those that froze and those that did not; void ones are left out. */
  readonly seasons: number;
}

/**
 * One frost a season, counted so that seasons compare. In which hemisphere they fell is read off the dates: a last
 * frost falls in the first half of the year in the north, a first frost in the second.
 *
 * @throws notADate, noSeasons
 */
export function countedFrosts(side: FrostSide, frosts: readonly (SeasonFrost | null)[]): CountedFrosts {
  const days = frosts.filter((one) => typeof one === 'number');
  days.forEach((day) => checkDay(side === 'spring' ? 'last_dates' : 'first_dates', day));
  const seasons = days.length + frosts.filter((one) => one === 'none').length;
  if (seasons === 0) refuse({ code: 'noSeasons' });
  const early = days.filter((day) => day < dayOfDate(yearOfDay(day), 7, 1)).length;
  const isNorth = side === 'spring' ? early * 2 >= days.length : early * 2 <= days.length;
  const hemisphere = isNorth ? 'north' : 'south';
  const counted = days.map((day) => daysCounted(day, side, hemisphere)).sort((a, b) => a - b);
  return { hemisphere, counted, seasons };
}
