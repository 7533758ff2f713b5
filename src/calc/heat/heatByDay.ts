import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkSameLength } from '../limits/checkSameLength';
import type { HeatFormula } from './heatFormula';
import { heatOfRow } from './heatOfRow';

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
  checkSameLength('dates', dates, 'highs', highs);
  checkSameLength('dates', dates, 'lows', lows);
  const rows = new Map<number, number>();
  let lastDay = -Infinity;
  dates.forEach((day, row) => {
    if (day === null) {
      if (highs[row] !== null || lows[row] !== null) refuse({ code: 'dateMissing', row: row + 1 });
      return;
    }
    checkDay('dates', day);
    if (rows.has(day)) refuse({ code: 'sameDayTwice', day, row: row + 1 });
    rows.set(day, row);
    lastDay = Math.max(lastDay, day);
  });
  if (rows.size === 0) refuse({ code: 'noDays' });
  return (day) => {
    if (day > lastDay) refuse({ code: 'recordEnds', lastDay });
    const row = rows.get(day);
    if (row === undefined || highs[row] == null || lows[row] == null)
      return refuse({ code: 'dayMissing', day });
    return heatOfRow(formula, highs[row], lows[row], row);
  };
}
