import type { Hemisphere } from '../frost/coldSeason';
import { monthOfDay } from '../dates/calendar';

/** Of each half, and so much warmer in C or F: judgement; nearer to the equator it freezes nowhere that plots lie. */
const leastDays = 30;
const leastDegrees = 5;

/**
 * Where the warm half of the year tells that a record is from: June to August warmer than December to February in the
 * north, colder in the south.
 *
 * @param days by date or not
 * @returns null when the record has too few days of either to tell, or hardly differs
 * Source: the calendar of the seasons; how many days and degrees: judgement.
 */
export function hemisphereOfRecord(
  days: readonly { readonly day: number; readonly low: number | null }[],
): Hemisphere | null {
  const mid = { june: { sum: 0, count: 0 }, december: { sum: 0, count: 0 } };
  for (const { day, low } of days) {
    const month = monthOfDay(day);
    const half = month >= 6 && month <= 8 ? mid.june : month === 12 || month <= 2 ? mid.december : null;
    if (half === null || low === null) continue;
    half.sum += low;
    half.count += 1;
  }
  if (Math.min(mid.june.count, mid.december.count) < leastDays) return null;
  const warmer = mid.june.sum / mid.june.count - mid.december.sum / mid.december.count;
  if (Math.abs(warmer) < leastDegrees) return null;
  return warmer > 0 ? 'north' : 'south';
}
