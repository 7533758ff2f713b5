import { replantVerdict } from '../calc/stand/replantVerdict';
import { standingShare } from '../calc/stand/standingShare';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { day, number, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const count = define({
  id: 'STAND.COUNT',
  parameters: [number('plants_standing'), number('row_length'), number('plant_spacing'), units],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([plantsStanding, rowLength, plantSpacing, system], record) =>
    standingShare(plantsStanding, rowLength, plantSpacing, system, record),
});

/**
 * Share of the intended stand that came up, from plants counted along a length of row.
 * @customfunction STAND.COUNT
 * @param plants_standing Plants counted, 0 or more; a mean of counts may have a fraction
 * @param row_length Length of row they were counted on, gaps and all, ft (m)
 * @param plant_spacing Distance meant between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns A share
 */
export function standCount(plants_standing: any, row_length: any, plant_spacing: any, units?: any): any {
  return toCell(count, [plants_standing, row_length, plant_spacing, units]);
}

export const replant = define({
  id: 'STAND.REPLANT',
  parameters: [
    number('stand'),
    // Any hour of a day is that day.
    day('today', 'fall'),
    day('last_planting', 'fall'),
    optionalNumber('least_stand'),
  ],
  result: 'plain',
  grounds: ['judgement'],
  calculate: ([stand, today, lastPlanting, leastStand], record) =>
    catalogue.standVerdicts[replantVerdict(stand, today, lastPlanting, leastStand, record)],
});

/**
 * Whether to keep a stand as it is, to fill its gaps, or whether it is too late for that.
 * @customfunction STAND.REPLANT
 * @param stand Share of the intended stand, 0 to 2, as STAND.COUNT gives it
 * @param today Date of the decision
 * @param last_planting Last date for planting, such as DATE.LASTSOWING gives
 * @param [least_stand] Share worth keeping as it is, above 0 to 1, default 0.75 (judgement)
 * @returns "keep", "fill gaps" or "too late"
 */
export function standReplant(stand: any, today: any, last_planting: any, least_stand?: any): any {
  return toCell(replant, [stand, today, last_planting, least_stand]);
}
