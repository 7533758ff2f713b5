import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkNumber } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/** From twice a day to once a season. Judgement. */
const intervals = { atLeast: 0.5, atMost: 366 };
/** Twice a day for a year: more is a slip in a year. */
const mostPicks = 732;

/**
 * Times that a planting is picked.
 *
 * picks = (last pick - first pick) / days between, rounded down, + 1
 *
 * @param firstPick day of the first pick, included [whole day number]
 * @param lastPick day that no pick comes after [whole day number], not before the first
 * @param everyDays from one pick to the next [days], 0.5 to 366; three a week are 7/3
 * @returns whole picks, 1 or more
 * @throws notADate, outOfRange, lastBeforeFirst, tooManyPicks
 * Source: arithmetic.
 * @example picksInHarvest(20639, 20660, 2) // 11: from 2026-07-05 to 2026-07-26
 */
export function picksInHarvest(
  firstPick: number,
  lastPick: number,
  everyDays: number,
  record?: Recorder,
): number {
  checkDay('first_pick', firstPick);
  checkDay('last_pick', lastPick);
  checkNumber('every_days', everyDays, 'days', intervals);
  if (lastPick < firstPick) refuse({ code: 'lastBeforeFirst', firstDay: firstPick, lastDay: lastPick });
  const exact = (lastPick - firstPick) / everyDays + 1;
  const picks = floorWhole(exact);
  if (picks > mostPicks) refuse({ code: 'tooManyPicks', count: picks, most: mostPicks });
  record?.({
    step: 'picksInHarvest',
    inputs: { first_pick: firstPick, last_pick: lastPick, every_days: everyDays },
    result: picks,
    unit: 'picks',
    ...roundingOf(exact, picks),
  });
  record?.({ remark: 'leftFruitStopsSet' });
  record?.({ source: 'nc-ag-552-harvest' });
  return picks;
}
