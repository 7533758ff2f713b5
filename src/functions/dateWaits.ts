import { harvestAfterManure } from '../calc/dates/harvestAfterManure';
import { pickAfterSpray } from '../calc/dates/pickAfterSpray';
import { define } from './define';
import { day, number, yesOrNo } from './parameters';
import { toCell } from './toCell';

export const afterSpray = define({
  id: 'DATE.AFTERSPRAY',
  parameters: [day('spray_date', 'spring'), number('label_days')],
  result: 'day',
  grounds: ['arithmetic'],
  calculate: ([sprayDate, labelDays], record) => pickAfterSpray(sprayDate, labelDays, record),
});

/**
 * Earliest day to pick after a spraying, by the days to harvest on the label.
 * @customfunction DATE.AFTERSPRAY
 * @param spray_date Day of the last spraying
 * @param label_days Days to harvest from the label of what was sprayed, 0 to 365
 * @returns A date
 */
export function dateAfterSpray(spray_date: any, label_days: any): any {
  return toCell(afterSpray, [spray_date, label_days]);
}

export const afterManure = define({
  id: 'DATE.AFTERMANURE',
  parameters: [day('manure_date', 'spring'), yesOrNo('touches_soil')],
  result: 'day',
  calculate: ([manureDate, touchesSoil], record) => harvestAfterManure(manureDate, touchesSoil, record),
});

/**
 * Earliest day to harvest after raw manure, by the US organic rule; food-safety rules may ask for more.
 * @customfunction DATE.AFTERMANURE
 * @param manure_date Day on which raw manure was worked into the soil
 * @param touches_soil TRUE if the fruit touches soil (120 days), FALSE if not (90)
 * @returns A date
 */
export function dateAfterManure(manure_date: any, touches_soil: any): any {
  return toCell(afterManure, [manure_date, touches_soil]);
}
