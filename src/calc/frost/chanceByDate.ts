import { countingStart, type FrostSide, type Hemisphere } from './coldSeason';
import { countedFrosts } from './countedFrosts';
import type { SeasonFrost } from './frostOfSeasons';

export interface ChanceOnDay {
  readonly day: number;
  readonly chance: number;
}

/**
 * The chance of frost by date, as chanceOfFrost counts it: it goes in steps, one at each season's frost.
 *
 * @param side "spring" or "fall"
 * @param frosts one a season [whole day numbers, "none", "void"; null for blanks]
 * @param year that the dates are wanted for
 * @param hemisphere when undefined, read off the dates
 * @returns the days of that year, rising, whose chance is another than the day before's [whole day number, share], and
 *   the day before the first of them; none when it never froze
 * @throws notADate, noSeasons, sameSeasonTwice, lastFrostsInFall, firstFrostsInSpring
 * Source: see chanceOfFrost.
 * @example chanceByDate('spring', [20575, 'none'], 2030) // day 22035: 0.5, day 22036: 0
 */
export function chanceByDate(
  side: FrostSide,
  frosts: readonly (SeasonFrost | null)[],
  year: number,
  hemisphere?: Hemisphere,
): ChanceOnDay[] {
  const { hemisphere: where, counted, seasons } = countedFrosts(side, frosts, hemisphere, undefined);
  const start = countingStart(year, side, where);
  const isSpring = side === 'spring';
  // A frost on the very date does not count: in fall it begins to a day later.
  const steps = [...new Set(counted)].map((days) => (isSpring ? days : days + 1));
  const [first] = steps;
  return (first === undefined ? [] : [first - 1, ...steps]).map((days) => ({
    day: start + days,
    chance: counted.filter((one) => (isSpring ? one > days : one < days)).length / seasons,
  }));
}
