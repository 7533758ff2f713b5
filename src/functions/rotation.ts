import { seasonsFree } from '../calc/rotation/seasonsFree';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { number, numbers } from './parameters';
import { toCell } from './toCell';

export const yearsFree = define({
  id: 'ROTATION.YEARS',
  parameters: [number('year'), numbers('past_years')],
  result: 'plain',
  calculate: ([year, pastYears], record) =>
    seasonsFree(year, pastYears, record) ?? catalogue.rotation.noneOnRecord,
});

/**
 * Full seasons that ground has been free of cucurbits; any of them counts, squash after cucumbers too.
 * @customfunction ROTATION.YEARS
 * @param year Year of planting, such as 2027
 * @param past_years Range of the years in which cucurbits stood there, each before it
 * @returns Seasons, or "none on record"
 */
export function rotationYears(year: any, past_years: any[][]): any {
  return toCell(yearsFree, [year, past_years]);
}
