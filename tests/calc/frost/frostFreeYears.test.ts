import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frostFreeYears } from '../../../src/calc/frost/frostFreeYears';
import { frostOfSeasons } from '../../../src/calc/frost/frostOfSeasons';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';

const { us } = unitSystems;
/** By the calendar of JavaScript alone. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

/** Every day from one to the other, warm but for those named. */
function record(from: string, to: string, frosts: readonly string[]) {
  const cold = new Set(frosts.map(day));
  const dates = Array.from({ length: day(to) - day(from) + 1 }, (_, i) => day(from) + i);
  return { dates, lows: dates.map((each) => (cold.has(each) ? 30 : 50)) };
}

describe('frostFreeYears', () => {
  test('calendar years in the north; what touches the record at its ends alone is left out (by hand)', () => {
    const { dates, lows } = record('2020-01-01', '2022-12-31', [
      '2020-04-30',
      '2020-10-07',
      '2021-05-02',
      '2022-04-20',
      '2022-10-17',
      '2022-12-01',
    ]);
    expect(frostFreeYears(dates, lows, undefined, us, undefined)).toEqual([
      // May 31, June 30, July 31, August 31, September 30 and 7 days: 160.
      { year: 2020, lastFrost: day('2020-04-30'), firstFrost: day('2020-10-07'), days: 160 },
      // The fall of 2021 had none, the winter before the spring of 2022 neither.
      { year: 2021, lastFrost: day('2021-05-02'), firstFrost: day('2022-04-20'), days: 353 },
      { year: 2022, lastFrost: day('2022-04-20'), firstFrost: day('2022-10-17'), days: 180 },
    ]);
  });

  test('in the south the season runs over New Year (by hand)', () => {
    const { dates, lows } = record('2020-06-01', '2022-06-30', [
      '2020-10-05',
      '2021-04-10',
      '2021-09-28',
      '2022-05-01',
    ]);
    expect(frostFreeYears(dates, lows, undefined, us, 'south')).toEqual([
      // October 26, November 30, December 31, January 31, February 28, March 31 and 10 days: 187.
      { year: 2020, lastFrost: day('2020-10-05'), firstFrost: day('2021-04-10'), days: 187 },
      { year: 2021, lastFrost: day('2021-09-28'), firstFrost: day('2022-05-01'), days: 215 },
    ]);
  });

  test('"none" where it never froze, "void" where days are missing', () => {
    const warm = record('2020-07-24', '2022-07-23', []);
    const years = frostFreeYears(warm.dates, warm.lows, undefined, us, undefined);
    expect(years.map(({ year, days }) => [year, days])).toEqual([
      [2020, 'void'],
      [2021, 'none'],
      [2022, 'void'],
    ]);
    const { dates, lows } = record('2020-01-01', '2020-12-31', ['2020-04-30', '2020-10-07']);
    // From 19 July: five days of the winter before, 25 of the one after.
    const gap = lows.map((low, i) => (i >= 200 && i < 230 ? null : low));
    expect(frostFreeYears(dates, gap, undefined, us, undefined)).toEqual([
      { year: 2020, lastFrost: day('2020-04-30'), firstFrost: 'void', days: 'void' },
    ]);
  });

  test('has every date that the seasons have, and no other (any frosts)', () => {
    const start = day('2015-03-10');
    const anyLows = fc.array(fc.constantFrom(30, 50, 50, 50, null), { minLength: 1, maxLength: 1500 });
    fc.assert(
      fc.property(anyLows, fc.constantFrom('north', 'south'), (any, where) => {
        const lows = [50, ...any];
        const dates = lows.map((_, i) => start + i);
        const years = frostFreeYears(dates, lows, undefined, us, where);
        for (const side of ['spring', 'fall'] as const) {
          const found = years.map(({ lastFrost, firstFrost }) =>
            side === 'spring' ? lastFrost : firstFrost,
          );
          const asked = frostOfSeasons(side, dates, lows, undefined, us, where).map(({ frost }) => frost);
          const isDate = (one: unknown): boolean => typeof one === 'number' || one === 'none';
          expect(found.filter(isDate)).toEqual(asked.filter(isDate));
        }
      }),
      seeded,
    );
  });

  test('says once what was assumed', () => {
    const { dates, lows } = record('2020-01-01', '2020-12-31', ['2020-04-30', '2020-10-07']);
    const { assumptions, steps } = recording((record) =>
      frostFreeYears(dates, lows, undefined, us, undefined, record),
    );
    expect(assumptions.map(({ assumed }) => assumed)).toEqual(['threshold', 'hemisphere']);
    expect(steps.map(({ step }) => step)).toEqual(['lastFrosts', 'firstFrosts']);
  });
});
