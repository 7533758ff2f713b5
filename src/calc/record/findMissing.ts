import { yearOfDay } from '../dates/calendar';
import {
  coldSeasonOfSide,
  coldSeasonStart,
  frostSides,
  type FrostSide,
  type Hemisphere,
} from '../frost/coldSeason';
import { enoughSeasons } from '../frost/frostDateAtRisk';
import { frostOfSeasons } from '../frost/frostOfSeasons';
import { unitSystems, type UnitSystemName } from '../units/units';
import type { Doubts } from './recordDoubts';
import type { RecordDay } from './settleDays';

/**
 * What a record lacks: days between its first and last, lows, springs and falls that count. All is added to the doubts.
 *
 * @param days by date, at least one
 * @param lineOf the line of a day
 */
export function findMissing(
  days: readonly RecordDay[],
  units: UnitSystemName,
  hemisphere: Hemisphere,
  lineOf: (day: number) => number,
  doubts: Doubts,
): void {
  days.forEach(({ day }, index) => {
    const before = days[index - 1]?.day ?? day - 1;
    const count = day - before - 1;
    if (count > 0) doubts.add({ code: 'gap', line: lineOf(day), from: before + 1, to: day - 1, count });
  });
  const withLow = days.filter(({ low }) => low !== null);
  const lowless = days.find(({ low }) => low === null);
  if (lowless !== undefined) {
    doubts.add({ code: 'noLow', line: lineOf(lowless.day), count: days.length - withLow.length });
  }
  const lineOfYear = (year: number, side: FrostSide): number => {
    const start = coldSeasonStart(coldSeasonOfSide(year, side, hemisphere), hemisphere);
    return lineOf((days.find(({ day }) => day >= start) ?? days[0])?.day ?? 0);
  };
  // The winter that a record of whole years begins in belongs to a fall before it: nobody expects that one.
  const isIn = (year: number): boolean =>
    year >= yearOfDay(days[0]?.day ?? 0) && year <= yearOfDay(days.at(-1)?.day ?? 0);
  const counts = frostSides.map((side) => {
    if (withLow.length === 0) return 0;
    const frosts = frostOfSeasons(
      side,
      withLow.map(({ day }) => day),
      withLow.map(({ low }) => low),
      undefined,
      unitSystems[units],
      hemisphere,
    );
    const ofNone = frosts.filter(({ frost }) => frost === 'void');
    for (const { year } of ofNone.filter((one) => isIn(one.year))) {
      doubts.add({ code: 'voidSeason', line: lineOfYear(year, side), side, year });
    }
    return frosts.length - ofNone.length;
  });
  const [springs = 0, falls = 0] = counts;
  if (Math.min(springs, falls) >= enoughSeasons) return;
  const line = lineOf(days.at(-1)?.day ?? 0);
  doubts.add({ code: 'fewSeasons', line, springs, falls, enough: enoughSeasons });
}
