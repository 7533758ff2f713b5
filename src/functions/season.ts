import { seasonDays as computeDays } from '../calc/season/seasonDays';
import { seasonSpare as computeSpare } from '../calc/season/seasonSpare';
import { define } from './define';
import { day, number } from './parameters';
import { toCell } from './toCell';

export const days = define({
  id: 'SEASON.DAYS',
  parameters: [day('last_frost', 'spring'), day('first_frost', 'fall')],
  result: 'plain',
  grounds: ['convention'],
  calculate: ([lastFrost, firstFrost], record) => computeDays(lastFrost, firstFrost, record),
});

/**
 * Days between the last frost and the first one after it, over New Year too.
 * @customfunction SEASON.DAYS
 * @param last_frost Date of the last spring frost, with its year
 * @param first_frost Date of the first fall frost, with its year, at most 366 days later
 * @returns Days
 */
export function seasonDays(last_frost: any, first_frost: any): any {
  return toCell(days, [last_frost, first_frost]);
}

export const spare = define({
  id: 'SEASON.SPARE',
  parameters: [day('last_frost', 'spring'), day('first_frost', 'fall'), number('days_needed')],
  result: 'plain',
  grounds: ['convention'],
  calculate: ([lastFrost, firstFrost, daysNeeded], record) =>
    computeSpare(lastFrost, firstFrost, daysNeeded, record),
});

/**
 * Days to spare between the frosts, negative when the season is too short.
 * @customfunction SEASON.SPARE
 * @param last_frost Date of the last spring frost, with its year
 * @param first_frost Date of the first fall frost, with its year, at most 366 days later
 * @param days_needed Days from the last frost to the last pick, 0 to 730
 * @returns Days
 */
export function seasonSpare(last_frost: any, first_frost: any, days_needed: any): any {
  return toCell(spare, [last_frost, first_frost, days_needed]);
}
