/**
 * Spreadsheet serial numbers and whole day numbers. A day number counts days since 1970-01-01 (UTC), so no time
 * zone and no clock change can move it. Serial 25569 is 1970-01-01 in the 1900 date system.
 *
 * Serials below 61 are not dates here: the 1900 system has a 29 February 1900 (serial 60) that never was, and a
 * small number in a date cell is nearly always a count of days.
 */
const serialOfEpoch = 25569;
const firstSerial = 61;
const lastSerial = 2958465;

/** The day number of a serial (fractions kept), or null when it is no date from 1900-03-01 to 9999-12-31. */
export function dayOfSerial(serial: number): number | null {
  return serial >= firstSerial && serial < lastSerial + 1 ? serial - serialOfEpoch : null;
}

export function serialOfDay(day: number): number {
  return day + serialOfEpoch;
}

const isoPattern = /^\s*(\d{4})-(\d{2})-(\d{2})\s*$/;

/** The day number of an ISO date (yyyy-mm-dd), or null when the text is none, or none from 1900-03-01 on. */
export function dayOfIso(text: string): number | null {
  const parts = isoPattern.exec(text);
  if (!parts) return null;
  const milliseconds = Date.parse(`${parts[1]}-${parts[2]}-${parts[3]}T00:00:00Z`);
  if (Number.isNaN(milliseconds)) return null;
  const day = milliseconds / 86400000;
  return isoOfDay(day) === text.trim() && dayOfSerial(serialOfDay(day)) !== null ? day : null;
}

/** yyyy-mm-dd of a whole day number. */
export function isoOfDay(day: number): string {
  return new Date(day * 86400000).toISOString().slice(0, 10);
}
