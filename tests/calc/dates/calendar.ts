/** Day numbers and calendar dates by date-fns 4.4.0 on UTC dates: a routine independent of workbook/serialDate. */
import { UTCDate } from '@date-fns/utc';
import { addDays, differenceInCalendarDays, formatISO } from 'date-fns';
import fc from 'fast-check';

const epoch = new UTCDate(1970, 0, 1);

export function dayNumber(iso: string): number {
  return differenceInCalendarDays(new UTCDate(`${iso}T00:00:00Z`), epoch);
}

export function isoDate(day: number): string {
  return formatISO(addDays(epoch, day), { representation: 'date' });
}

/** Every property runs from this seed; fast-check prints it with the counterexample. */
export const seeded = { seed: 20261125, numRuns: 300 };

/** Days from 2000 to 2099. */
export const anyDay = fc.integer({ min: dayNumber('2000-01-01'), max: dayNumber('2099-12-31') });
