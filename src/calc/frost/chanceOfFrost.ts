import { checkDay } from '../dates/dayLimits';
import type { Recorder } from '../working';
import { daysCounted, type FrostSide, type Hemisphere } from './coldSeason';
import { countedFrosts } from './countedFrosts';
import type { SeasonFrost } from './frostOfSeasons';

/**
 * The chance of frost after a spring date, or before a fall date.
 *
 * chance = seasons with a last frost after the date / seasons that count; in fall, with a first frost before it
 *
 * @param date of any year [whole day number]
 * @param frosts one a season [whole day numbers, "none", "void"; null for blanks]
 * @param side "spring" or "fall"
 * @param hemisphere when undefined, read off the dates
 * @returns a share; a frost on the very date does not count
 * @throws notADate, noSeasons, sameSeasonTwice, lastFrostsInFall, firstFrostsInSpring
 * Source: NOAA freeze tables; the share counted straight from the seasons: project convention.
 * @example chanceOfFrost(20576, [20575, 20942, 'none', 'void'], 'spring') // 1/3
 */
export function chanceOfFrost(
  date: number,
  frosts: readonly (SeasonFrost | null)[],
  side: FrostSide,
  hemisphere?: Hemisphere,
  record?: Recorder,
): number {
  checkDay('date', date);
  const { hemisphere: where, counted, seasons } = countedFrosts(side, frosts, hemisphere, record);
  const days = daysCounted(date, side, where);
  const hits = counted.filter((one) => (side === 'spring' ? one > days : one < days)).length;
  const chance = hits / seasons;
  record?.({
    step: side === 'spring' ? 'chanceAfter' : 'chanceBefore',
    inputs: { date, frosts: hits, seasons },
    result: chance,
    unit: 'share',
  });
  record?.({ source: 'noaa-freeze' });
  return chance;
}
