/** The day it is where the person is, by their own clock. */
import { dayOfIso, serialOfDay } from './serialDate';

/** As 2027-05-02. */
export function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function todaySerial(): number {
  return serialOfDay(dayOfIso(today()) ?? 0);
}
