import { monthOfDay, yearOfDay } from '../dates/calendar';
import { quantile } from '../frost/quantile';
import { inMetric } from '../units/inMetric';
import { fahrenheitPerCelsius, freezingF, type UnitSystemName } from '../units/units';
import type { Measure, RecordDoubt } from './recordDoubts';

/** A temperature of a line. */
export interface DegreesOfLine {
  readonly line: number;
  readonly day: number;
  readonly degrees: number;
}

/** No month is so far from its years, and one of 45 F in C is 38 off: judgement. */
const leastOffF = 35;
/** Colder months can differ as much by themselves: judgement. */
const mildF = 45;
/** The mean of fewer days tells little of a month: judgement. */
const leastDays = 20;

interface Month {
  readonly line: number;
  readonly firstDay: number;
  readonly lastDay: number;
  readonly mean: number;
}

/**
 * The first run of months that are in the other scale, held against the same months of other years.
 *
 * A month is, when the median of the others is 45 F or more, it lies 35 F or more from that to the side of the other
 * scale, and the change of scale brings it nearer by half or more.
 *
 * @param temperatures all highs, or all lows, in any order
 * @param units the scale that they should be in
 * Source: the rule and its limits are judgement. Not found: less than a month, or cold months alone.
 */
export function findMonthsOfOtherScale(
  measure: Exclude<Measure, 'date'>,
  temperatures: readonly DegreesOfLine[],
  units: UnitSystemName,
): RecordDoubt | undefined {
  const months = monthsOf(temperatures);
  const usual = months.map((month) => usualOf(month, months, units));
  const first = usual.findIndex((one) => one !== null);
  const start = months[first];
  if (start === undefined) return undefined;
  const after = usual.findIndex((one, index) => index > first && one === null);
  const end = months[(after === -1 ? months.length : after) - 1] ?? start;
  return {
    code: 'monthsOfOtherScale',
    line: start.line,
    measure,
    units,
    from: start.firstDay,
    to: end.lastDay,
    mean: start.mean,
    usual: usual[first] ?? start.mean,
  };
}

/** Those with enough days, by date. */
function monthsOf(temperatures: readonly DegreesOfLine[]): readonly Month[] {
  const byMonth = new Map<number, DegreesOfLine[]>();
  for (const one of temperatures) {
    const month = yearOfDay(one.day) * 12 + monthOfDay(one.day);
    const ofMonth = byMonth.get(month);
    if (ofMonth === undefined) byMonth.set(month, [one]);
    else ofMonth.push(one);
  }
  return [...byMonth.values()]
    .filter((days) => days.length >= leastDays)
    .map((days) => {
      const firstDay = days.reduce((least, { day }) => Math.min(least, day), Infinity);
      return {
        line: days.find(({ day }) => day === firstDay)?.line ?? 1,
        firstDay,
        lastDay: days.reduce((most, { day }) => Math.max(most, day), -Infinity),
        mean: days.reduce((sum, { degrees }) => sum + degrees, 0) / days.length,
      };
    })
    .sort((one, other) => one.firstDay - other.firstDay);
}

/** The median of the same month in other years where this one is in the other scale; else null. */
function usualOf(month: Month, months: readonly Month[], units: UnitSystemName): number | null {
  const name = monthOfDay(month.firstDay);
  const others = months
    .filter((other) => other !== month && monthOfDay(other.firstDay) === name)
    .map(({ mean }) => mean);
  if (others.length === 0) return null;
  const isF = units === 'us';
  const usual = median(others);
  if (usual < (isF ? mildF : inMetric(mildF, 'F').value)) return null;
  const off = isF ? usual - month.mean : month.mean - usual;
  if (off < (isF ? leastOffF : leastOffF / fahrenheitPerCelsius)) return null;
  const changed = isF ? month.mean * fahrenheitPerCelsius + freezingF : inMetric(month.mean, 'F').value;
  return Math.abs(changed - usual) <= off / 2 ? usual : null;
}

function median(values: readonly number[]): number {
  return quantile(
    [...values].sort((one, other) => one - other),
    0.5,
    'inc',
  );
}
