import { refuse } from '../errors';
import { checkCount } from '../limits/limits';
import type { Recorder } from '../working';

const years = { atLeast: 1900, atMost: 9999 };

/**
 * Full seasons that ground has been free of cucurbits.
 *
 * seasons = year - last year of them - 1
 *
 * @param year of planting, whole, 1900 to 9999
 * @param pastYears in which cucurbits stood there, whole, each before `year`; null is none
 * @returns seasons, or null when no year is on record
 * @throws outOfRange, notWhole, pastYearNotPast
 * Source: arithmetic. Rests that are advised: North Carolina, 2 years for slicing cucumbers and pumpkin, 3 for
 * squash; Cornell, not two years running.
 * @example seasonsFree(2026, [2019, 2023]) // 2
 */
export function seasonsFree(
  year: number,
  pastYears: readonly (number | null)[],
  record?: Recorder,
): number | null {
  const now = checkCount('year', year, 'none', years);
  const past = pastYears
    .filter((one) => one !== null)
    .map((one) => checkCount('past_year', one, 'none', years));
  const tooLate = past.find((one) => one >= now);
  if (tooLate !== undefined) refuse({ code: 'pastYearNotPast', pastYear: tooLate, year: now });
  const last = past.length === 0 ? null : past.reduce((latest, one) => Math.max(latest, one));
  const seasons = last === null ? null : now - last - 1;
  if (last !== null && seasons !== null) {
    record?.({ step: 'seasonsFree', inputs: { year: now, lastYear: last }, result: seasons, unit: 'none' });
  }
  record?.({ remark: 'restsAdvised' });
  record?.({ source: 'nc-hil-14' });
  record?.({ source: 'nc-hil-24' });
  record?.({ source: 'nc-summer-squash' });
  record?.({ source: 'cornell-watermelon' });
  return seasons;
}
