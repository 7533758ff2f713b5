import { refuse } from '../errors';

/** Colder and hotter than where people live, in either scale, and inside of -99 and 999, marks for what is missing. */
export const readings = { atLeast: -90, atMost: 150 };

/**
 * The check of a temperature out of a daily record.
 *
 * @param degrees [F or C], -90 to 150
 * @param row of the record, from 1
 * @throws notATemperature
 * Source: judgement.
 */
export function checkReading(name: string, degrees: number, row: number): void {
  if (degrees >= readings.atLeast && degrees <= readings.atMost) return;
  refuse({ code: 'notATemperature', name, value: degrees, row });
}
