/** Invented daily records for properties. */
import fc from 'fast-check';

export interface DailyRecord {
  readonly dates: readonly number[];
  readonly highs: readonly number[];
  readonly lows: readonly number[];
}

/** Whole degrees F, day after day from day 20000 on. */
export const dailyRecord = fc
  .array(fc.tuple(fc.integer({ min: 20, max: 90 }), fc.integer({ min: 0, max: 30 })), {
    minLength: 2,
    maxLength: 120,
  })
  .map((days): DailyRecord => ({
    dates: days.map((_, i) => 20000 + i),
    lows: days.map(([low]) => low),
    highs: days.map(([low, range]) => low + range),
  }));
