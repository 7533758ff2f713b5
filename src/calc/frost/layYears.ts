import { countingStart, daysCounted, type FrostSide, type Hemisphere } from './coldSeason';
import type { FrostFreeYear } from './frostFreeYears';
import type { SeasonFrost } from './frostOfSeasons';
import { quantile } from './quantile';

export interface LaidYear extends FrostFreeYear {
  /** Whether it is the middle one of those with frost-free days, or one of the two. */
  readonly isMiddle: boolean;
}

export interface LaidYears {
  readonly years: readonly LaidYear[];
  /** The median of the frost-free days; null when no year has them. */
  readonly middleDays: number | null;
}

/**
 * Growing seasons laid under one another: each date moved into one year, and the middle season found.
 *
 * moved date = counting start of the year + days counted; middle = median of the days, that of two their mean
 *
 * @param years as frostFreeYears gives them
 * @param year of the spring to which they are moved
 * @param hemisphere of the record
 * @returns the same seasons, with their days as they were; "none" and "void" stay
 * Source: project convention, as frostDateAtRisk moves a date.
 */
export function layYears(years: readonly FrostFreeYear[], year: number, hemisphere: Hemisphere): LaidYears {
  const moved = (frost: SeasonFrost, side: FrostSide): SeasonFrost => {
    if (typeof frost === 'string') return frost;
    const to = side === 'fall' && hemisphere === 'south' ? year + 1 : year;
    return countingStart(to, side, hemisphere) + daysCounted(frost, side, hemisphere);
  };
  const byDays = years
    .flatMap(({ days, year: of }) => (typeof days === 'number' ? [{ days, of }] : []))
    .sort((a, b) => a.days - b.days);
  const half = (byDays.length - 1) / 2;
  const middle = new Set([Math.floor(half), Math.ceil(half)].map((at) => byDays[at]?.of));
  const sorted = byDays.map(({ days }) => days);
  return {
    years: years.map((one) => ({
      ...one,
      lastFrost: moved(one.lastFrost, 'spring'),
      firstFrost: moved(one.firstFrost, 'fall'),
      isMiddle: middle.has(one.year),
    })),
    middleDays: sorted.length === 0 ? null : quantile(sorted, 0.5, 'inc'),
  };
}
