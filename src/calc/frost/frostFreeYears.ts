import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import type { FrostSide, Hemisphere } from './coldSeason';
import { frostOfSeasons, type SeasonFrost } from './frostOfSeasons';

export interface FrostFreeYear {
  /** Of the spring that opens the growing season. */
  readonly year: number;
  readonly lastFrost: SeasonFrost;
  readonly firstFrost: SeasonFrost;
  /** From the last frost to the first; "none" when either never came; "void" when either cannot be known. */
  readonly days: SeasonFrost;
}

/**
 * The growing seasons of a daily record: the last frost of each spring, the first of the fall after it, the days
 * between them.
 *
 * days = first frost - last frost; in the south the fall after a spring is in the next year
 *
 * @param dates of the record [whole day numbers], in any order; null in rows that are empty
 * @param lows lowest temperature of each day [F or C]; null where the record has none
 * @param threshold of a frost [F or C], 32 F or 0 C when undefined
 * @param units say which scale
 * @param hemisphere "north" when undefined
 * @returns one entry a year, rising, but none for a year at an end of the record of which it holds no frost date
 * @throws notADate, unequalLists, noDays, sameDayTwice, dateMissing, outOfRange
 * Source: see frostOfSeasons; which years are left out: project convention.
 */
export function frostFreeYears(
  dates: readonly (number | null)[],
  lows: readonly (number | null)[],
  threshold: number | undefined,
  units: UnitSystem,
  hemisphere: Hemisphere | undefined,
  record?: Recorder,
): FrostFreeYear[] {
  const frosts = (side: FrostSide, recorder?: Recorder): ReadonlyMap<number, SeasonFrost> =>
    new Map(
      frostOfSeasons(side, dates, lows, threshold, units, hemisphere, recorder).map(({ year, frost }) => [
        side === 'fall' && hemisphere === 'south' ? year - 1 : year,
        frost,
      ]),
    );
  const springs = frosts('spring', record);
  // Of the same record, threshold and hemisphere: what was assumed is said once.
  const falls = frosts('fall', record && ((entry) => ('assumed' in entry ? undefined : record(entry))));
  const years = [...new Set([...springs.keys(), ...falls.keys()])].sort((one, other) => one - other);
  return years.flatMap((year): FrostFreeYear[] => {
    const [spring, fall] = [springs.get(year), falls.get(year)];
    const isTouched = spring !== undefined && fall !== undefined;
    if (!isTouched && (spring ?? fall) === 'void') return [];
    const lastFrost = spring ?? 'void';
    const firstFrost = fall ?? 'void';
    return [{ year, lastFrost, firstFrost, days: daysBetween(lastFrost, firstFrost) }];
  });
}

function daysBetween(lastFrost: SeasonFrost, firstFrost: SeasonFrost): SeasonFrost {
  if (lastFrost === 'void' || firstFrost === 'void') return 'void';
  if (lastFrost === 'none' || firstFrost === 'none') return 'none';
  return firstFrost - lastFrost;
}
