import { chanceOfFrost } from '../calc/frost/chanceOfFrost';
import { frostSides, hemispheres, type FrostSide } from '../calc/frost/coldSeason';
import { frostFreeYears } from '../calc/frost/frostFreeYears';
import { frostDateAtRisk } from '../calc/frost/frostDateAtRisk';
import { frostOfSeasons, type SeasonFrost } from '../calc/frost/frostOfSeasons';
import { quantileRules } from '../calc/frost/quantile';
import { catalogue } from '../texts/catalogue';
import { serialOfDay } from '../workbook/serialDate';
import { define, type FunctionDefinition } from './define';
import { orNoYear } from './orNoYear';
import {
  choice,
  day,
  days,
  frosts,
  number,
  numbers,
  optionalChoice,
  optionalNumber,
  units,
} from './parameters';
import { toCell, toCells } from './toCell';

const record = [
  days('dates'),
  numbers('lows'),
  optionalNumber('threshold'),
  units,
  optionalChoice('hemisphere', hemispheres),
] as const;
const cellOf = (frost: SeasonFrost): number | string =>
  typeof frost === 'number' ? serialOfDay(frost) : frost;

const datesOfSide = (id: string, side: FrostSide): FunctionDefinition =>
  define({
    id,
    parameters: record,
    // Years stand beside the dates, so the whole has no one format.
    result: 'plain',
    dateColumns: [1],
    calculate: ([dates, lows, threshold, system, hemisphere], recorder) =>
      frostOfSeasons(side, dates, lows, threshold, system, hemisphere, recorder).map(({ year, frost }) => [
        year,
        cellOf(frost),
      ]),
  });

export const lastDates = datesOfSide('FROST.LASTDATES', 'spring');
export const firstDates = datesOfSide('FROST.FIRSTDATES', 'fall');

/**
 * Last frost of every spring in a daily record: years in the first column, dates in the second.
 * @customfunction FROST.LASTDATES
 * @param dates Range of dates, a day each, in any order
 * @param lows Range of lowest temperatures of those days
 * @param [threshold] Temperature of a frost, default 32 F or 0 C
 * @param [units] "us" (F, default) or "metric" (C)
 * @param [hemisphere] "north" (default) or "south"
 * @returns Rows of year and date, a number until the second column gets a date format; "none" when it never froze, "void" when ten or more days are missing
 */
export function frostLastDates(
  dates: any[][],
  lows: any[][],
  threshold?: any,
  units?: any,
  hemisphere?: any,
): any[][] {
  return toCells(lastDates, [dates, lows, threshold, units, hemisphere]);
}

/**
 * First frost of every fall in a daily record: years in the first column, dates in the second.
 * @customfunction FROST.FIRSTDATES
 * @param dates Range of dates, a day each, in any order
 * @param lows Range of lowest temperatures of those days
 * @param [threshold] Temperature of a frost, default 32 F or 0 C
 * @param [units] "us" (F, default) or "metric" (C)
 * @param [hemisphere] "north" (default) or "south"
 * @returns Rows of year and date, a number until the second column gets a date format; "none" when it never froze, "void" when ten or more days are missing
 */
export function frostFirstDates(
  dates: any[][],
  lows: any[][],
  threshold?: any,
  units?: any,
  hemisphere?: any,
): any[][] {
  return toCells(firstDates, [dates, lows, threshold, units, hemisphere]);
}

export const years = define({
  id: 'FROST.YEARS',
  parameters: record,
  result: 'plain',
  dateColumns: [1, 2],
  calculate: ([dates, lows, threshold, system, hemisphere], recorder) =>
    orNoYear(
      frostFreeYears(dates, lows, threshold, system, hemisphere, recorder).map(
        ({ year, lastFrost, firstFrost, days: between }) => [
          year,
          cellOf(lastFrost),
          cellOf(firstFrost),
          between,
        ],
      ),
      catalogue.noYear.season,
    ),
});

/**
 * Growing seasons of a daily record: year, last frost of spring, first frost of fall, frost-free days between them.
 * @customfunction FROST.YEARS
 * @param dates Range of dates, a day each, in any order
 * @param lows Range of lowest temperatures of those days
 * @param [threshold] Temperature of a frost, default 32 F or 0 C
 * @param [units] "us" (F, default) or "metric" (C)
 * @param [hemisphere] "north" (default) or "south"
 * @returns Rows of four; the dates are numbers until their columns get a date format. "none" when it never froze, "void" when ten or more days are missing; a sentence when the record holds no season
 */
export function frostYears(
  dates: any[][],
  lows: any[][],
  threshold?: any,
  units?: any,
  hemisphere?: any,
): any[][] {
  return toCells(years, [dates, lows, threshold, units, hemisphere]);
}

const dateOfSide = (id: string, side: FrostSide, name: string): FunctionDefinition =>
  define({
    id,
    parameters: [
      frosts(name),
      number('risk'),
      number('year'),
      optionalChoice('rule', quantileRules),
      optionalChoice('hemisphere', hemispheres),
    ],
    result: 'day',
    calculate: ([dates, risk, year, rule, hemisphere], record) =>
      frostDateAtRisk(side, dates, risk, year, rule, hemisphere, record),
  });

export const springDate = dateOfSide('FROST.SPRINGDATE', 'spring', 'last_dates');
export const fallDate = dateOfSide('FROST.FALLDATE', 'fall', 'first_dates');

/**
 * Date after which frost still comes in a share of all springs.
 * @customfunction FROST.SPRINGDATE
 * @param last_dates Range of last frosts, one a spring, or both columns of FROST.LASTDATES
 * @param risk Share of springs with a later frost, above 0, below 1, such as 10%
 * @param year Year that the date is for
 * @param [rule] "inc" (default, as PERCENTILE.INC) or "exc" (as PERCENTILE.EXC)
 * @param [hemisphere] "north" or "south"; left out it is read off the dates, and frosts of the wrong season pass
 * @returns A date, rounded to the later day; #N/A when frost comes in fewer springs than the risk
 */
export function frostSpringDate(
  last_dates: any[][],
  risk: any,
  year: any,
  rule?: any,
  hemisphere?: any,
): any {
  return toCell(springDate, [last_dates, risk, year, rule, hemisphere]);
}

/**
 * Date before which frost already comes in a share of all falls.
 * @customfunction FROST.FALLDATE
 * @param first_dates Range of first frosts, one a fall, or both columns of FROST.FIRSTDATES
 * @param risk Share of falls with an earlier frost, above 0, below 1, such as 10%
 * @param year Year that the date is for
 * @param [rule] "inc" (default, as PERCENTILE.INC) or "exc" (as PERCENTILE.EXC)
 * @param [hemisphere] "north" or "south"; left out it is read off the dates, and frosts of the wrong season pass
 * @returns A date, rounded to the earlier day; #N/A when frost comes in fewer falls than the risk
 */
export function frostFallDate(first_dates: any[][], risk: any, year: any, rule?: any, hemisphere?: any): any {
  return toCell(fallDate, [first_dates, risk, year, rule, hemisphere]);
}

export const chance = define({
  id: 'FROST.CHANCE',
  parameters: [
    day('date', 'spring'),
    frosts('frost_dates'),
    choice('season', frostSides),
    optionalChoice('hemisphere', hemispheres),
  ],
  result: 'plain',
  calculate: ([date, dates, season, hemisphere], record) =>
    chanceOfFrost(date, dates, season, hemisphere, record),
});

/**
 * Share of seasons with a frost after a spring date, or before a fall date.
 * @customfunction FROST.CHANCE
 * @param date Date of any year
 * @param frost_dates Range of last frosts (spring) or first frosts (fall), one a season
 * @param season "spring" or "fall"
 * @param [hemisphere] "north" or "south"; left out it is read off the dates, and frosts of the wrong season pass
 * @returns A share; a frost on the very date does not count
 */
export function frostChance(date: any, frost_dates: any[][], season: any, hemisphere?: any): any {
  return toCell(chance, [date, frost_dates, season, hemisphere]);
}
