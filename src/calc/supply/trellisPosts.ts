import { checkCount, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { roundingOf } from '../whole/roundingOf';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

/**
 * Posts for trellised rows, one at each end of a row and no gap wider than the spacing.
 *
 * posts = rows x (row length / post spacing, rounded up, + 1)
 *
 * @param rowLength of one row [ft or m], above 0
 * @param postSpacing at most, between posts [ft or m], above 0
 * @param rows whole, 1 or more; 1 when undefined
 * @returns whole posts of all rows
 * @throws outOfRange, notWhole
 * Source: geometry: a fence has one post more than gaps.
 * @example trellisPosts(100, 8, undefined, unitSystems.us) // 14
 */
export function trellisPosts(
  rowLength: number,
  postSpacing: number,
  rows: number | undefined,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkPositive('row_length', rowLength, units.length);
  checkPositive('post_spacing', postSpacing, units.length);
  const given = rows === undefined ? undefined : checkCount('rows', rows, 'rows', { atLeast: 1 });
  const count = orAssume(given, 1, 'rows', 'rows', 'judgement', record);
  const gaps = rowLength / postSpacing;
  const postsInRow = ceilWhole(gaps) + 1;
  record?.({
    step: 'postsInRow',
    inputs: { row_length: rowLength, post_spacing: postSpacing },
    result: postsInRow,
    unit: 'posts',
    ...roundingOf(gaps + 1, postsInRow),
  });
  const posts = count * postsInRow;
  record?.({ step: 'trellisPosts', inputs: { rows: count, postsInRow }, result: posts, unit: 'posts' });
  return posts;
}
