import type { CellError } from '../port';
import { dayOfSerial, isoOfDay, serialOfDay } from '../serialDate';
import { errorOf } from './operand';

const dayOf1900March = -25508;
const lastSerial = 2958465;

/** DATE: months and days run over into the next; a year below 1900 counts from 1900, as in Excel. */
export function dateSerial(year: number, month: number, day: number): number | CellError {
  const wholeYear = Math.trunc(year);
  const fullYear = wholeYear < 1900 ? wholeYear + 1900 : wholeYear;
  if (wholeYear < 0 || fullYear > 9999) return errorOf('#NUM!');
  const moment = Date.UTC(fullYear, Math.trunc(month) - 1, Math.trunc(day));
  const dayNumber = moment / 86400000;
  // Excel's 1900 has a 29 February, so what lies before March is one serial lower.
  const serial = serialOfDay(dayNumber) - (dayNumber < dayOf1900March ? 1 : 0);
  return serial >= 0 && serial <= lastSerial ? serial : errorOf('#NUM!');
}

export function calendarDate(serial: number): { year: number; month: number; day: number } | CellError {
  const dayNumber = dayOfSerial(serial);
  if (dayNumber !== null) {
    const [year, month, day] = isoOfDay(Math.floor(dayNumber)).split('-');
    return { year: Number(year), month: Number(month), day: Number(day) };
  }
  if (serial < 0 || serial > lastSerial) return errorOf('#NUM!');
  const whole = Math.trunc(serial);
  return { year: 1900, month: whole < 32 ? 1 : 2, day: whole < 32 ? whole : whole - 31 };
}
