import { refuse } from '../errors';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

/**
 * The day of the last pick: the end of the harvest or the day before the first frost, whichever comes sooner.
 *
 * last pick = min(first pick + harvest days, first frost - 1), a fraction of a day rounded down
 *
 * @param firstPick day of the first pick [whole day number]
 * @param harvestDays from first to last pick [days], 0 to 365; 0 for crops picked once
 * @param firstFrost date of the first fall frost [whole day number]; undefined: no frost in the way
 * @returns the day of the last pick [whole day number]
 * @throws notADate, outOfRange, frostComesFirst when the first pick falls on the first frost or after it
 * Source: project convention: cucurbits are killed by frost, so the last pick is the day before it at the latest.
 * @example lastPickDate(20639, 21, 20736) // 20660: 2026-07-05 gives 2026-07-26
 */
export function lastPickDate(
  firstPick: number,
  harvestDays: number,
  firstFrost: number | undefined,
  record?: Recorder,
): number {
  checkDay('first_pick', firstPick);
  checkDays('harvest_days', harvestDays);
  const exact = firstPick + harvestDays;
  const harvestEnd = floorWhole(exact);
  record?.({
    step: 'harvestEnd',
    inputs: { first_pick: firstPick, harvest_days: harvestDays },
    result: harvestEnd,
    unit: 'date',
    ...roundingOf(exact, harvestEnd),
  });
  if (firstFrost === undefined) {
    record?.({ remark: 'noFrostGiven' });
    return harvestEnd;
  }
  checkDay('first_frost', firstFrost);
  if (firstPick >= firstFrost) refuse({ code: 'frostComesFirst', firstPick, firstFrost });
  const lastPick = Math.min(harvestEnd, firstFrost - 1);
  record?.({
    step: 'lastPick',
    inputs: { harvestEnd, first_frost: firstFrost },
    result: lastPick,
    unit: 'date',
  });
  if (lastPick < harvestEnd) record?.({ remark: 'frostEndsHarvest' });
  return lastPick;
}
