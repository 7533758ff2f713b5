import { refuse } from '../errors';
import { checkCount, checkShare } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { ceilWhole, floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { countingStart, type FrostSide, type Hemisphere } from './coldSeason';
import { countedFrosts } from './countedFrosts';
import type { SeasonFrost } from './frostOfSeasons';
import { placeOfQuantile, type QuantileRule } from './quantile';

/** Fewer make a quantile that one more year can move by a week: judgement. */
export const enoughSeasons = 20;

/**
 * The date of a frost risk: after it frost still comes in that share of springs; before it, of falls.
 *
 * date = counting start of the year + quantile of the counted frosts, at 1 - risk / share of seasons with frost in
 * spring, at risk / that share in fall; a fraction of a day rounded up in spring, down in fall: the safe side
 *
 * @param side "spring" or "fall"
 * @param frosts one a season [whole day numbers, "none", "void"; null for blanks]. A season without frost counts, a
 *   void one does not
 * @param risk above 0, below 1 [share]
 * @param year that the date is wanted for, whole, 1901 to 9998
 * @param rule "inc" (as PERCENTILE.INC), the default, or "exc" (as PERCENTILE.EXC)
 * @param hemisphere when undefined, read off the dates
 * @returns whole day number
 * @throws outOfRange, percentForShare, notWhole, notADate, noSeasons, sameSeasonTwice, lastFrostsInFall,
 *   firstFrostsInSpring, neverFroze, riskAboveFrost, tooFewSeasons
 * Source: NOAA freeze tables, the meaning of the risk and the part of seasons without frost; which quantile rule:
 * project convention, they differ by days.
 * @example frostDateAtRisk('spring', [20575, 20940, 21306], 0.5, 2030) // day 22036, 2 May: the middle one's
 */
export function frostDateAtRisk(
  side: FrostSide,
  frosts: readonly (SeasonFrost | null)[],
  risk: number,
  year: number,
  rule?: QuantileRule,
  hemisphere?: Hemisphere,
  record?: Recorder,
): number {
  checkShare('risk', risk, { above: 0, below: 1 });
  const wanted = checkCount('year', year, 'none', { atLeast: 1901, atMost: 9998 });
  const chosen = orAssume(rule, 'inc', 'rule', 'none', 'judgement', record);
  const { hemisphere: where, counted, seasons } = countedFrosts(side, frosts, hemisphere, record);
  if (counted.length === 0) refuse({ code: 'neverFroze', seasons });
  const share = counted.length / seasons;
  record?.({ step: 'frostShare', inputs: { frosts: counted.length, seasons }, result: share, unit: 'share' });
  // Under "exc" no number of seasons reaches their very earliest or latest frost.
  if (chosen === 'exc' ? risk >= share : risk > share) refuse({ code: 'riskAboveFrost', risk, share });
  const at = side === 'spring' ? 1 - risk / share : risk / share;
  record?.({
    step: side === 'spring' ? 'springQuantile' : 'fallQuantile',
    inputs: { risk, frostShare: share },
    result: at,
    unit: 'share',
  });
  const { place, low, high, part } = placeOfQuantile(counted, at, chosen);
  const exact = low + (high - low) * part;
  const days = side === 'spring' ? ceilWhole(exact) : floorWhole(exact);
  const start = countingStart(wanted, side, where);
  record?.({
    step: 'frostQuantile',
    inputs: {
      quantileAt: at,
      rule: chosen,
      frosts: counted.length,
      place,
      earlierFrost: start + low,
      laterFrost: start + high,
      wayToLater: part,
      countingStart: start,
    },
    result: days,
    unit: 'days',
    ...roundingOf(exact, days),
  });
  const date = start + days;
  record?.({ step: 'frostDate', inputs: { countingStart: start, days }, result: date, unit: 'date' });
  if (counted.length < enoughSeasons) record?.({ remark: 'fewSeasons' });
  record?.({ source: 'noaa-freeze' });
  return date;
}
