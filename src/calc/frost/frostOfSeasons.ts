import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkSameLength } from '../limits/checkSameLength';
import { checkReading } from '../limits/checkReading';
import { checkNumber } from '../limits/limits';
import { freezingF, type UnitSystem } from '../units/units';
import { orAssume, type Recorder } from '../working';
import { checkScale } from './checkScale';
import { coldSeasonOf, coldSeasonStart, yearOfSide, type FrostSide, type Hemisphere } from './coldSeason';

/** A day; "none" when it never froze; "void" when too many days are missing to know. */
export type SeasonFrost = number | 'none' | 'void';

export interface FrostOfYear {
  /** Of the spring or fall. */
  readonly year: number;
  readonly frost: SeasonFrost;
}

/** Utah Climate Center, freeze table: a season is void if ten days are missing. */
const mostMissing = 9;

/** From no winter of a garden to the cold that harms a cucurbit: judgement. */
const thresholds = { us: { atLeast: -40, atMost: 60 }, metric: { atLeast: -40, atMost: 15 } };

/**
 * The last frost of every spring, or the first of every fall, out of a daily record.
 *
 * last = last day of the cold season with a low at or below the threshold; first = the first such day
 *
 * @param side "spring" for the last frosts, "fall" for the first
 * @param dates of the record [whole day numbers], in any order; null in rows that are empty
 * @param lows lowest temperature of each day [F or C]; null where the record has none
 * @param threshold of a frost [F or C], 32 F or 0 C when undefined, -40 to 60 F or 15 C
 * @param units say which scale
 * @param hemisphere "north" when undefined
 * @returns one entry a season that the record touches, by year. Void when ten or more days are missing on the side
 *   where a frost would change the answer: after a last frost, before a first one, anywhere when none was found
 * @throws notADate, unequalLists, noDays, sameDayTwice, dateMissing, notATemperature,
 *   lowsInCelsius, lowsInFahrenheit, outOfRange
 * Source: NOAA and the Utah Climate Center, freeze tables. The side on which missing days count: project convention.
 */
export function frostOfSeasons(
  side: FrostSide,
  dates: readonly (number | null)[],
  lows: readonly (number | null)[],
  threshold: number | undefined,
  units: UnitSystem,
  hemisphere: Hemisphere | undefined,
  record?: Recorder,
): FrostOfYear[] {
  const frost = orAssume(
    threshold,
    units.name === 'us' ? freezingF : 0,
    'threshold',
    units.temperature,
    'noaa-freeze',
    record,
  );
  checkNumber('threshold', frost, units.temperature, thresholds[units.name]);
  const where = orAssume(hemisphere, 'north', 'hemisphere', 'none', 'judgement', record);
  const days = daysWithLows(dates, lows);
  checkScale(
    days.map(({ low }) => low),
    frost,
    units,
  );
  const first = days[0]?.day ?? refuse({ code: 'noDays' });
  const last = days[days.length - 1]?.day ?? first;

  const found: FrostOfYear[] = [];
  let next = 0;
  for (let season = coldSeasonOf(first, where); season <= coldSeasonOf(last, where); season++) {
    const start = coldSeasonStart(season, where);
    const end = coldSeasonStart(season + 1, where);
    const from = next;
    while (next < days.length && (days[next]?.day ?? end) < end) next += 1;
    const ofSeason = days.slice(from, next);
    found.push({
      year: yearOfSide(season, side, where),
      frost: frostOfSeason(side, ofSeason, frost, start, end),
    });
  }
  const count = (wanted: (one: SeasonFrost) => boolean): number =>
    found.filter((one) => wanted(one.frost)).length;
  record?.({
    step: side === 'spring' ? 'lastFrosts' : 'firstFrosts',
    inputs: {
      threshold: frost,
      none: count((one) => one === 'none'),
      void: count((one) => one === 'void'),
    },
    result: count((one) => typeof one === 'number'),
    unit: 'none',
  });
  record?.({ source: 'usu-freeze-table' });
  return found;
}

interface DayWithLow {
  readonly day: number;
  readonly low: number;
}

/** By date. */
function daysWithLows(
  dates: readonly (number | null)[],
  lows: readonly (number | null)[],
): readonly DayWithLow[] {
  checkSameLength('dates', dates, 'lows', lows);
  const seen = new Set<number>();
  const days: DayWithLow[] = [];
  dates.forEach((day, row) => {
    const low = lows[row] ?? null;
    if (day === null) {
      if (low !== null) refuse({ code: 'dateMissing', row: row + 1 });
      return;
    }
    checkDay('dates', day);
    if (seen.has(day)) refuse({ code: 'sameDayTwice', day, row: row + 1 });
    seen.add(day);
    if (low === null) return;
    checkReading('lows', low, row + 1);
    days.push({ day, low });
  });
  return days.sort((one, other) => one.day - other.day);
}

/** @param start first day of the season; `end` the first after it */
function frostOfSeason(
  side: FrostSide,
  days: readonly DayWithLow[],
  threshold: number,
  start: number,
  end: number,
): SeasonFrost {
  const isFrost = ({ low }: DayWithLow): boolean => low <= threshold;
  const frosty = days.map(isFrost);
  const index = side === 'spring' ? frosty.lastIndexOf(true) : frosty.indexOf(true);
  const found = days[index];
  if (found === undefined) return end - start - days.length > mostMissing ? 'void' : 'none';
  const missing =
    side === 'spring' ? end - 1 - found.day - (days.length - 1 - index) : found.day - start - index;
  return missing > mostMissing ? 'void' : found.day;
}
