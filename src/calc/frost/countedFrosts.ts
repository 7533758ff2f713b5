import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { yearOfDay, dayOfDate } from '../dates/calendar';
import { orAssume, type Recorder } from '../working';
import { coldSeasonOf, daysCounted, type FrostSide, type Hemisphere } from './coldSeason';
import type { SeasonFrost } from './frostOfSeasons';

export interface CountedFrosts {
  readonly hemisphere: Hemisphere;
  /** Days from the counting start of each season that froze, rising. */
  readonly counted: readonly number[];
  /** Seasons that count: those that froze and those that did not; void ones are left out. */
  readonly seasons: number;
}

/** Fewer on the other side of the winter may be a freak of a mild place: judgement. */
const fewestOfOtherSide = 3;
/**
 * In days counted: no last frost of spring comes before December, no first one of fall from March on; in the south June
 * and September. Judgement.
 */
const winter = { from: -90, to: 365 };

/**
 * One frost a season, counted so that seasons compare.
 *
 * @param given hemisphere; when undefined it is read off the dates: a last frost falls in the first half of the year in
 *   the north, a first frost in the second, unless only in the other hemisphere each has a season of its own
 * @throws notADate, noSeasons, sameSeasonTwice; where the hemisphere is given lastFrostsInFall, firstFrostsInSpring
 *   (three or more, and all of them: judgement)
 */
export function countedFrosts(
  side: FrostSide,
  frosts: readonly (SeasonFrost | null)[],
  given: Hemisphere | undefined,
  record: Recorder | undefined,
): CountedFrosts {
  const days = frosts.filter((one) => typeof one === 'number');
  days.forEach((day) => checkDay(side === 'spring' ? 'last_dates' : 'first_dates', day));
  const seasons = days.length + frosts.filter((one) => one === 'none').length;
  if (seasons === 0) refuse({ code: 'noSeasons' });
  const early = days.filter((day) => day < dayOfDate(yearOfDay(day), 7, 1)).length;
  const isNorth = side === 'spring' ? early * 2 >= days.length : early * 2 <= days.length;
  const both = isNorth ? (['north', 'south'] as const) : (['south', 'north'] as const);
  const likely = both.find((one) => new Set(days.map((day) => coldSeasonOf(day, one))).size === days.length);
  const hemisphere = orAssume(given, likely ?? both[0], 'hemisphere', 'none', 'judgement', record);
  const seen = new Map<number, number>();
  for (const day of days) {
    const season = coldSeasonOf(day, hemisphere);
    const other = seen.get(season);
    if (other !== undefined) {
      refuse({ code: 'sameSeasonTwice', firstDay: Math.min(day, other), lastDay: Math.max(day, other) });
    }
    seen.set(season, day);
  }
  const counted = days.map((day) => daysCounted(day, side, hemisphere)).sort((a, b) => a - b);
  if (given !== undefined && counted.length >= fewestOfOtherSide) {
    const [first = NaN, last = NaN] = [counted[0], counted[counted.length - 1]];
    if (side === 'spring' && last < winter.from)
      refuse({ code: 'lastFrostsInFall', seasons: counted.length });
    if (side === 'fall' && first >= winter.to)
      refuse({ code: 'firstFrostsInSpring', seasons: counted.length });
  }
  return { hemisphere, counted, seasons };
}
