import { yearOfDay } from '../dates/calendar';
import { airLimits } from '../limits/airLimits';
import { readings } from '../limits/checkReading';
import { inMetric } from '../units/inMetric';
import { fahrenheitPerCelsius, freezingF, type UnitSystemName } from '../units/units';
import type { RecordDoubt } from './recordDoubts';

/** The warmest temperature of a line. */
export interface WarmestOfDay {
  readonly line: number;
  readonly day: number;
  readonly degrees: number;
}

const { hottestC, coldestC, warmestNightC } = airLimits;

const toF = (celsius: number): number => celsius * fahrenheitPerCelsius + freezingF;

/** Whether air was never as hot or as cold, a night never as warm, or no function would take it. */
export function isImpossible(degrees: number, units: UnitSystemName, measure: 'high' | 'low'): boolean {
  const celsius = units === 'us' ? inMetric(degrees, 'F').value : degrees;
  const most = measure === 'low' ? warmestNightC : hottestC;
  return celsius > most + nearness || celsius < coldestC - nearness || degrees < readings.atLeast;
}

/** A limit turned into F and back is off by rounding error. */
const nearness = 1e-9;

/** @param warmest at least one */
export function hottestOf(warmest: readonly WarmestOfDay[]): WarmestOfDay {
  return warmest.reduce((most, one) => (one.degrees > most.degrees ? one : most));
}

/** Nowhere that a cucurbit is grown has the hottest day of a year under 50 F: judgement. */
const leastHottestF = 50;
/** Fewer days may be a winter: judgement. */
const daysOfYear = 300;
/** Impossible temperatures: so many of a year are no slips any more: judgement. */
const slips = { count: 5, share: 0.05 };

/**
 * The scale of a record by its temperatures, in place of a header that names it.
 *
 * Hotter than 56.7: F, for no air was ever as hot in C. At least 300 days, none over 50: C, for no year is as cold in
 * F where cucurbits grow. Else unknown.
 *
 * @param warmest one a day, at least one
 * Source: the limits are given above; the rule: project convention.
 */
export function scaleByTemperatures(warmest: readonly WarmestOfDay[]): UnitSystemName | null {
  const hottest = hottestOf(warmest).degrees;
  if (hottest > hottestC) return 'us';
  return warmest.length >= daysOfYear && hottest <= leastHottestF ? 'metric' : null;
}

/**
 * What speaks against a scale, by calendar years, for records are put together of years.
 *
 * C: over 5 % of a year's days, and at least five, hotter than 56.7 C. F: at least 300 days of a year, none over 50 F;
 * or over 5 %, and at least five, hotter than 134.06 F, which is neither.
 *
 * @param warmest one a day
 * @param units the scale that they should be in
 * Source: as above; the shares: judgement.
 */
export function findOtherScale(
  warmest: readonly WarmestOfDay[],
  units: UnitSystemName,
): RecordDoubt | undefined {
  const years = new Map<number, WarmestOfDay[]>();
  for (const one of warmest) {
    const year = yearOfDay(one.day);
    const ofYear = years.get(year);
    if (ofYear === undefined) years.set(year, [one]);
    else ofYear.push(one);
  }
  for (const [year, days] of years) {
    const { line, degrees } = hottestOf(days);
    const tooHot = (limit: number): boolean => {
      const count = days.filter((one) => one.degrees > limit).length;
      return count >= slips.count && count > days.length * slips.share;
    };
    if (tooHot(toF(hottestC))) return { code: 'noScale', line, hottest: degrees };
    const isF = units === 'metric' && tooHot(hottestC);
    const isC = units === 'us' && days.length >= daysOfYear && degrees <= leastHottestF;
    if (isF || isC) return { code: 'otherScale', line, units, year, hottest: degrees };
  }
  return undefined;
}

/**
 * What speaks against a scale that the person named: only what no air ever was, for the rest the person may know better.
 */
export function findImpossibleScale(
  warmest: readonly WarmestOfDay[],
  units: UnitSystemName,
): RecordDoubt | undefined {
  const other = findOtherScale(warmest, units);
  if (other?.code !== 'otherScale') return other;
  return units === 'metric' ? { ...other, code: 'askedScale' } : undefined;
}
