import type { CellError } from '../../workbook/port';
import { dayOfSerial, isoOfDay, serialOfDay } from '../../workbook/serialDate';
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

export function yearAndMonth(serial: number): { year: number; month: number } | CellError {
  const day = dayOfSerial(serial);
  if (day !== null) {
    const [year, month] = isoOfDay(Math.floor(day)).split('-');
    return { year: Number(year), month: Number(month) };
  }
  if (serial < 0 || serial > lastSerial) return errorOf('#NUM!');
  return { year: 1900, month: serial < 32 ? 1 : 2 };
}
