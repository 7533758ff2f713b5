import { refuse } from '../errors';
import type { HeatFormula } from './heatFormula';
import { heatWhereKnown } from './heatWhereKnown';

/**
 * The heat of a day by its day number, out of a record in any order.
 *
 * @param dates of the rows [whole day numbers]; null in rows that are empty
 * @param highs highest temperature of each [degrees of any one scale]; null where the record has none
 * @param lows lowest temperature of each [same scale]
 * @returns what gives a day's heat. It throws dayMissing for a day that has no row or no temperatures, recordEnds
 *   for one after the last row, and what heatOfRow throws: days that nobody asks for are not looked at
 * @throws unequalLists, noDays, sameDayTwice, dateMissing
 */
export function heatByDay(
  dates: readonly (number | null)[],
  highs: readonly (number | null)[],
  lows: readonly (number | null)[],
  formula: HeatFormula,
): (day: number) => number {
  const { lastDay, heatOn } = heatWhereKnown(dates, highs, lows, formula);
  return (day) => {
    if (day > lastDay) refuse({ code: 'recordEnds', lastDay });
    return heatOn(day) ?? refuse({ code: 'dayMissing', day });
  };
}
