import { heatDate } from '../calc/heat/heatDate';
import { heatDates } from '../calc/heat/heatDates';
import { heatMethods } from '../calc/heat/heatFormula';
import { heatOfDay } from '../calc/heat/heatOfDay';
import { heatOfYears } from '../calc/heat/heatOfYears';
import { heatSuccession } from '../calc/heat/heatSuccession';
import { heatSum } from '../calc/heat/heatSum';
import { catalogue } from '../texts/catalogue';
import { serialOfDay } from '../workbook/serialDate';
import { define } from './define';
import { orNoYear } from './orNoYear';
import { day, days, number, numbers, optionalChoice, optionalNumber } from './parameters';
import { toCell, toCells } from './toCell';

const howCounted = [
  number('base'),
  optionalNumber('ceiling'),
  optionalChoice('method', heatMethods),
] as const;
const record = [days('dates'), numbers('highs'), numbers('lows')] as const;

export const ofDay = define({
  id: 'HEAT.DAY',
  parameters: [number('high'), number('low'), ...howCounted],
  result: 'plain',
  calculate: ([high, low, base, ceiling, method], recorder) =>
    heatOfDay(high, low, base, ceiling, method, recorder),
});

/**
 * Heat of one day in degree days of the scale that the temperatures are in.
 * @customfunction HEAT.DAY
 * @param high Highest temperature of the day, F or C
 * @param low Lowest temperature of the day, not above the high
 * @param base Temperature below which nothing grows, such as 50 F or 10 C
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns Degree days; one C-day is 1.8 F-days
 */
export function heatDay(high: any, low: any, base: any, ceiling?: any, method?: any): any {
  return toCell(ofDay, [high, low, base, ceiling, method]);
}

export const sum = define({
  id: 'HEAT.SUM',
  parameters: [numbers('highs'), numbers('lows'), ...howCounted],
  result: 'plain',
  calculate: ([highs, lows, base, ceiling, method], recorder) =>
    heatSum(highs, lows, base, ceiling, method, recorder),
});

/**
 * Heat of a run of days in degree days; a gap in the record is named and gives no sum.
 * @customfunction HEAT.SUM
 * @param highs Range of highest temperatures, a day each, F or C
 * @param lows Range of lowest temperatures of the same days
 * @param base Temperature below which nothing grows
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns Degree days; #N/A names the first day missing
 */
export function heatSumOf(highs: any[][], lows: any[][], base: any, ceiling?: any, method?: any): any {
  return toCell(sum, [highs, lows, base, ceiling, method]);
}

export const dateReached = define({
  id: 'HEAT.DATE',
  parameters: [...record, day('start', 'spring'), number('target'), ...howCounted],
  result: 'day',
  calculate: ([dates, highs, lows, start, target, base, ceiling, method], recorder) =>
    heatDate(dates, highs, lows, start, target, base, ceiling, method, recorder),
});

/**
 * Day on which the heat since a start reaches a target, the start's own heat included.
 * @customfunction HEAT.DATE
 * @param dates Range of dates, in any order
 * @param highs Range of highest temperatures of those days, F or C
 * @param lows Range of lowest temperatures of those days
 * @param start First day that counts, such as the day of sowing
 * @param target Degree days wanted, above 0
 * @param base Temperature below which nothing grows
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns A date; #N/A when a day on the way is missing or the record ends before
 */
export function heatDateOf(
  dates: any[][],
  highs: any[][],
  lows: any[][],
  start: any,
  target: any,
  base: any,
  ceiling?: any,
  method?: any,
): any {
  return toCell(dateReached, [dates, highs, lows, start, target, base, ceiling, method]);
}

export const years = define({
  id: 'HEAT.YEARS',
  parameters: [...record, day('start', 'spring'), number('days'), ...howCounted],
  result: 'plain',
  calculate: ([dates, highs, lows, start, count, base, ceiling, method], recorder) =>
    orNoYear(
      heatOfYears(dates, highs, lows, start, count, base, ceiling, method, recorder).map(({ year, heat }) => [
        year,
        heat,
      ]),
      catalogue.noYear.start,
    ),
});

/**
 * Heat of the same run of days in every year of a record: years in the first column, degree days in the second.
 * @customfunction HEAT.YEARS
 * @param dates Range of dates, in any order
 * @param highs Range of highest temperatures of those days, F or C
 * @param lows Range of lowest temperatures of those days
 * @param start First day that counts, such as a sowing; of any year
 * @param days Days that count, 1 to 366
 * @param base Temperature below which nothing grows
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns Rows of year and degree days; "void" where one of the days is missing; a sentence when the record never has the first
 */
export function heatYearsOf(
  dates: any[][],
  highs: any[][],
  lows: any[][],
  start: any,
  days: any,
  base: any,
  ceiling?: any,
  method?: any,
): any[][] {
  return toCells(years, [dates, highs, lows, start, days, base, ceiling, method]);
}

export const datesReached = define({
  id: 'HEAT.DATES',
  parameters: [...record, day('start', 'spring'), number('target'), ...howCounted],
  // Years and days stand beside the dates, so the whole has no one format.
  result: 'plain',
  dateColumns: [1],
  calculate: ([dates, highs, lows, start, target, base, ceiling, method], recorder) =>
    orNoYear(
      heatDates(dates, highs, lows, start, target, base, ceiling, method, recorder).map(
        ({ year, date, days: count }) => [year, typeof date === 'number' ? serialOfDay(date) : date, count],
      ),
      catalogue.noYear.start,
    ),
});

/**
 * Day on which the heat since a start reaches a target, in every year of a record: year, date, days from the start.
 * @customfunction HEAT.DATES
 * @param dates Range of dates, in any order
 * @param highs Range of highest temperatures of those days, F or C
 * @param lows Range of lowest temperatures of those days
 * @param start First day that counts, such as a sowing; of any year
 * @param target Degree days wanted, above 0
 * @param base Temperature below which nothing grows
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns Rows of three; the dates are numbers until their column gets a date format. "none" when it is not reached in twelve months, "void" where a day is missing; a sentence when the record never has the start
 */
export function heatDatesOf(
  dates: any[][],
  highs: any[][],
  lows: any[][],
  start: any,
  target: any,
  base: any,
  ceiling?: any,
  method?: any,
): any[][] {
  return toCells(datesReached, [dates, highs, lows, start, target, base, ceiling, method]);
}

export const succession = define({
  id: 'HEAT.SUCCESSION',
  parameters: [...record, day('first', 'spring'), day('last', 'fall'), number('heat_between'), ...howCounted],
  result: 'day',
  calculate: ([dates, highs, lows, first, last, between, base, ceiling, method], recorder) =>
    heatSuccession(dates, highs, lows, first, last, between, base, ceiling, method, recorder).map((date) => [
      date,
    ]),
});

/**
 * Sowing dates with equal heat between them, one below the other, none after the last.
 * @customfunction HEAT.SUCCESSION
 * @param dates Range of dates, in any order
 * @param highs Range of highest temperatures of those days, F or C
 * @param lows Range of lowest temperatures of those days
 * @param first Date of the first sowing, included
 * @param last Date that no sowing comes after
 * @param heat_between Degree days from one sowing to the next, above 0
 * @param base Temperature below which nothing grows
 * @param [ceiling] Temperature above which more warmth does not help; none when left out
 * @param [method] "mean" (default), "modified", "sine" or "reduced", which needs a ceiling
 * @returns A column of dates; #N/A when a day is missing or the record ends before the last
 */
export function heatSuccessionOf(
  dates: any[][],
  highs: any[][],
  lows: any[][],
  first: any,
  last: any,
  heat_between: any,
  base: any,
  ceiling?: any,
  method?: any,
): any[][] {
  return toCells(succession, [dates, highs, lows, first, last, heat_between, base, ceiling, method]);
}
