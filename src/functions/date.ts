import { firstPickDate, startMethods } from '../calc/dates/firstPickDate';
import { firstSowingDate } from '../calc/dates/firstSowingDate';
import { hardeningStartDate } from '../calc/dates/hardeningStartDate';
import { lastPickDate } from '../calc/dates/lastPickDate';
import { lastSowingDate } from '../calc/dates/lastSowingDate';
import { rowCoverOffDate } from '../calc/dates/rowCoverOffDate';
import { setOutDate } from '../calc/dates/setOutDate';
import { transplantStartDate } from '../calc/dates/transplantStartDate';
import { flowerTypes } from '../reference/crops';
import { define } from './define';
import { day, number, optionalChoice, optionalDay, optionalNumber, text } from './parameters';
import { toCell } from './toCell';

export const setOut = define({
  id: 'DATE.SETOUT',
  parameters: [day('last_frost', 'spring'), optionalNumber('days_after')],
  result: 'day',
  grounds: ['common practice, no source'],
  calculate: ([lastFrost, daysAfter], record) => setOutDate(lastFrost, daysAfter, record),
});

/**
 * Day to set out transplants, counted from the last frost; warm soil decides.
 * @customfunction DATE.SETOUT
 * @param last_frost Mean date of the last spring frost
 * @param [days_after] Days to wait after it, -60 to 120 (default 14)
 * @returns A date
 */
export function dateSetOut(last_frost: any, days_after?: any): any {
  return toCell(setOut, [last_frost, days_after]);
}

export const startTransplants = define({
  id: 'DATE.STARTTRANSPLANTS',
  parameters: [day('set_out', 'spring'), optionalNumber('weeks')],
  result: 'day',
  grounds: ['vce-transplants'],
  calculate: ([setOutDay, weeks], record) => transplantStartDate(setOutDay, weeks, record),
});

/**
 * Day to sow for transplants, counted back from setting out.
 * @customfunction DATE.STARTTRANSPLANTS
 * @param set_out Day of setting out
 * @param [weeks] Weeks to grow them, 0 to 26 (default 3; crops differ)
 * @returns A date
 */
export function dateStartTransplants(set_out: any, weeks?: any): any {
  return toCell(startTransplants, [set_out, weeks]);
}

export const hardenOff = define({
  id: 'DATE.HARDENOFF',
  parameters: [day('set_out', 'spring'), optionalNumber('days')],
  result: 'day',
  grounds: ['common practice, no source'],
  calculate: ([setOutDay, days], record) => hardeningStartDate(setOutDay, days, record),
});

/**
 * Day to begin hardening off transplants, not under about 60 F (16 C).
 * @customfunction DATE.HARDENOFF
 * @param set_out Day of setting out
 * @param [days] Days of hardening, 0 to 60 (default 7)
 * @returns A date
 */
export function dateHardenOff(set_out: any, days?: any): any {
  return toCell(hardenOff, [set_out, days]);
}

export const firstSowing = define({
  id: 'DATE.FIRSTSOWING',
  parameters: [day('last_frost', 'spring'), optionalNumber('days_after')],
  result: 'day',
  grounds: ['common practice, no source'],
  calculate: ([lastFrost, daysAfter], record) => firstSowingDate(lastFrost, daysAfter, record),
});

/**
 * First day to sow in the open, counted from the last frost; warm soil decides.
 * @customfunction DATE.FIRSTSOWING
 * @param last_frost Mean date of the last spring frost
 * @param [days_after] Days to wait after it, -60 to 120 (default 7)
 * @returns A date
 */
export function dateFirstSowing(last_frost: any, days_after?: any): any {
  return toCell(firstSowing, [last_frost, days_after]);
}

export const lastSowing = define({
  id: 'DATE.LASTSOWING',
  parameters: [
    day('first_frost', 'fall'),
    number('days_to_maturity'),
    optionalNumber('harvest_days'),
    optionalNumber('fall_days'),
    optionalNumber('frost_margin'),
  ],
  result: 'day',
  calculate: ([firstFrost, daysToMaturity, harvestDays, fallDays, frostMargin], record) =>
    lastSowingDate(firstFrost, daysToMaturity, harvestDays, fallDays, frostMargin, record),
});

/**
 * Last day to sow for a whole harvest before the first frost.
 * @customfunction DATE.LASTSOWING
 * @param first_frost Date of the first fall frost
 * @param days_to_maturity Days from sowing to first pick, above 0, up to 365
 * @param [harvest_days] Days from first to last pick, 0 to 365 (default 21; 0 for crops picked once)
 * @param [fall_days] Days added for slower growth in shortening days, 0 to 90 (default 14)
 * @param [frost_margin] Days a tender crop should be done before frost, 0 to 90 (default 14)
 * @returns A date
 */
export function dateLastSowing(
  first_frost: any,
  days_to_maturity: any,
  harvest_days?: any,
  fall_days?: any,
  frost_margin?: any,
): any {
  return toCell(lastSowing, [first_frost, days_to_maturity, harvest_days, fall_days, frost_margin]);
}

export const firstPick = define({
  id: 'DATE.FIRSTPICK',
  parameters: [
    day('start', 'spring'),
    number('days_to_maturity'),
    optionalChoice('method', startMethods),
    optionalChoice('basis', startMethods),
    optionalNumber('transplant_gain'),
    optionalNumber('fall_days'),
  ],
  result: 'day',
  grounds: ['common practice, no source'],
  calculate: ([start, daysToMaturity, method, basis, transplantGain, fallDays], record) =>
    firstPickDate(start, daysToMaturity, method, basis, transplantGain, fallDays, record),
});

/**
 * Day of the first pick, from sowing or from setting out.
 * @customfunction DATE.FIRSTPICK
 * @param start Day of sowing or of setting out
 * @param days_to_maturity Days to maturity as on the packet, above 0, up to 365
 * @param [method] What start is: "seed" (default) or "transplant"
 * @param [basis] What the packet counts from: "seed" (default) or "transplant"
 * @param [transplant_gain] Days a transplant is ahead of seed, 0 to 60 (default 10)
 * @param [fall_days] Days added for slower growth in shortening days, 0 to 90 (default 0)
 * @returns A date
 */
export function dateFirstPick(
  start: any,
  days_to_maturity: any,
  method?: any,
  basis?: any,
  transplant_gain?: any,
  fall_days?: any,
): any {
  return toCell(firstPick, [start, days_to_maturity, method, basis, transplant_gain, fall_days]);
}

export const lastPick = define({
  id: 'DATE.LASTPICK',
  parameters: [day('first_pick', 'spring'), number('harvest_days'), optionalDay('first_frost', 'fall')],
  result: 'day',
  grounds: ['convention'],
  calculate: ([firstPickDay, harvestDays, firstFrost], record) =>
    lastPickDate(firstPickDay, harvestDays, firstFrost, record),
});

/**
 * Day of the last pick: the end of the harvest, or the day before frost if that comes sooner.
 * @customfunction DATE.LASTPICK
 * @param first_pick Day of the first pick
 * @param harvest_days Days from first to last pick, 0 to 365 (0 for crops picked once)
 * @param [first_frost] Date of the first fall frost (default: no frost in the way)
 * @returns A date
 */
export function dateLastPick(first_pick: any, harvest_days: any, first_frost?: any): any {
  return toCell(lastPick, [first_pick, harvest_days, first_frost]);
}

export const coverOff = define({
  id: 'DATE.COVEROFF',
  parameters: [
    day('first_pick', 'fall'),
    text('crop'),
    optionalNumber('flower_to_pick'),
    optionalChoice('flower_type', flowerTypes),
  ],
  result: 'day',
  grounds: ['arithmetic'],
  calculate: ([firstPickDay, crop, flowerToPick, flowerType], record) =>
    rowCoverOffDate(firstPickDay, crop, flowerToPick, flowerType, record),
});

/**
 * Day to take the row cover off, before female flowers open; go by the flowers, not by this date.
 * @customfunction DATE.COVEROFF
 * @param first_pick Day of the first pick
 * @param crop Crop name, such as "slicing cucumber" or "zucchini"
 * @param [flower_to_pick] Days from female flower to pick, 0 to 120 (default: the crop's own)
 * @param [flower_type] Flower type of the variety (default: the crop's own); parthenocarpic may stay covered
 * @returns A date
 */
export function dateCoverOff(first_pick: any, crop: any, flower_to_pick?: any, flower_type?: any): any {
  return toCell(coverOff, [first_pick, crop, flower_to_pick, flower_type]);
}
