import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FrostSide, Hemisphere } from '../../../src/calc/frost/coldSeason';
import { frostOfSeasons } from '../../../src/calc/frost/frostOfSeasons';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;
/** By the calendar of JavaScript alone. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const isoOf = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);
const run = (from: string, to: string): number[] =>
  Array.from({ length: day(to) - day(from) + 1 }, (_, i) => day(from) + i);

/** Warm but for the days named. */
function record(days: readonly number[], frosts: readonly string[]): { dates: number[]; lows: number[] } {
  const cold = new Set(frosts.map(day));
  return { dates: [...days], lows: days.map((each) => (cold.has(each) ? 30 : 50)) };
}
const seasons = (
  side: FrostSide,
  { dates, lows }: { dates: readonly (number | null)[]; lows: readonly (number | null)[] },
  hemisphere?: Hemisphere,
) => frostOfSeasons(side, dates, lows, undefined, us, hemisphere);

describe('frostOfSeasons', () => {
  const years = run('2019-07-24', '2022-07-23');
  const frosts = ['2019-11-02', '2020-04-30', '2020-10-20', '2020-12-24', '2021-11-30', '2022-05-01'];

  test('last of spring and first of fall, on whichever side of New Year (by hand)', () => {
    expect(seasons('spring', record(years, frosts))).toEqual([
      { year: 2020, frost: day('2020-04-30') },
      // A spring whose last frost fell before New Year: Utah Climate Center, freeze table.
      { year: 2021, frost: day('2020-12-24') },
      { year: 2022, frost: day('2022-05-01') },
    ]);
    expect(seasons('fall', record(years, frosts))).toEqual([
      { year: 2019, frost: day('2019-11-02') },
      { year: 2020, frost: day('2020-10-20') },
      { year: 2021, frost: day('2021-11-30') },
    ]);
  });

  test('a season without frost is "none"; 32.0 is a frost, 32.1 is not', () => {
    const warm = record(run('2019-07-24', '2020-07-23'), []);
    expect(seasons('spring', warm)).toEqual([{ year: 2020, frost: 'none' }]);
    expect(seasons('fall', warm)).toEqual([{ year: 2019, frost: 'none' }]);
    const at = (low: number) => seasons('fall', { ...warm, lows: [low, ...warm.lows.slice(1)] });
    expect(at(32)).toEqual([{ year: 2019, frost: day('2019-07-24') }]);
    expect(at(32.1)).toEqual([{ year: 2019, frost: 'none' }]);
    const celsius = warm.lows.map(() => 0);
    expect(frostOfSeasons('fall', warm.dates, celsius, undefined, metric, undefined)[0]?.frost).toBe(
      day('2019-07-24'),
    );
    // A hard freeze is asked for by its threshold.
    expect(frostOfSeasons('fall', warm.dates, warm.lows, 28, us, undefined)[0]?.frost).toBe('none');
  });

  test('ten missing days make a season void, nine do not, and only where a frost could hide', () => {
    const whole = run('2019-07-24', '2020-07-23');
    const without = (from: string, count: number) =>
      record(
        whole.filter((each) => each < day(from) || each >= day(from) + count),
        ['2019-11-02', '2020-04-30'],
      );
    expect(seasons('fall', without('2019-09-01', 9))[0]?.frost).toBe(day('2019-11-02'));
    expect(seasons('fall', without('2019-09-01', 10))[0]?.frost).toBe('void');
    expect(seasons('fall', without('2019-12-01', 40))[0]?.frost).toBe(day('2019-11-02'));
    expect(seasons('spring', without('2020-05-05', 9))[0]?.frost).toBe(day('2020-04-30'));
    expect(seasons('spring', without('2020-05-05', 10))[0]?.frost).toBe('void');
    expect(seasons('spring', without('2019-12-01', 40))[0]?.frost).toBe(day('2020-04-30'));
    // A row with a date and no low is a missing day like one without a row.
    const { dates, lows } = record(whole, ['2020-04-30']);
    const blank = lows.map((low, i) => ((dates[i] ?? 0) >= day('2020-06-01') && i % 2 === 0 ? null : low));
    expect(seasons('spring', { dates, lows: blank })[0]?.frost).toBe('void');
    // Where it never froze, a gap anywhere leaves it open.
    const warm = record(
      whole.filter((each) => each < day('2020-01-01') || each > day('2020-01-10')),
      [],
    );
    expect(seasons('spring', warm)[0]?.frost).toBe('void');
  });

  test('a record that begins in mid-season: the spring is known, the fall before it is not', () => {
    const half = record(run('2020-01-01', '2020-12-31'), ['2020-01-05', '2020-04-30', '2020-10-20']);
    expect(seasons('spring', half)).toEqual([
      { year: 2020, frost: day('2020-04-30') },
      { year: 2021, frost: 'void' },
    ]);
    expect(seasons('fall', half)).toEqual([
      { year: 2019, frost: 'void' },
      { year: 2020, frost: day('2020-10-20') },
    ]);
  });

  test('the south is the north half a year on', () => {
    const south = record(run('2020-01-24', '2021-01-23'), ['2020-05-10', '2020-09-30']);
    expect(seasons('spring', south, 'south')).toEqual([{ year: 2020, frost: day('2020-09-30') }]);
    expect(seasons('fall', south, 'south')).toEqual([{ year: 2020, frost: day('2020-05-10') }]);
  });

  test('agrees with a search day by day, in any order of the rows', () => {
    const thirtyMonths = run('2018-07-24', '2021-01-20');
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20, max: 60 }), {
          minLength: thirtyMonths.length,
          maxLength: thirtyMonths.length,
        }),
        fc.integer({ min: 10, max: 45 }),
        (lows, threshold) => {
          const order = thirtyMonths.map((_, i) => (i * 7) % thirtyMonths.length);
          const whole = {
            dates: order.map((i) => thirtyMonths[i] ?? 0),
            lows: order.map((i) => lows[i] ?? 0),
          };
          const falls = frostOfSeasons('fall', whole.dates, whole.lows, threshold, us, 'north');
          for (const { year, frost } of falls.slice(0, 2)) {
            const within = thirtyMonths.filter(
              (d) => d >= day(`${year}-07-24`) && d < day(`${year + 1}-07-24`),
            );
            const cold = within.filter((d) => (lows[thirtyMonths.indexOf(d)] ?? 99) <= threshold);
            expect(frost).toBe(cold[0] ?? 'none');
          }
        },
      ),
      { ...seeded, numRuns: 20 },
    );
  });

  /** Days in which 29 February is warm, so that a year that has none loses no frost. */
  const someFrosts = fc
    .uniqueArray(fc.integer({ min: 0, max: years.length - 1 }), { minLength: 1, maxLength: 40 })
    .map((list) => list.map((i) => isoOf(years[i] ?? 0)).filter((iso) => !iso.endsWith('02-29')));

  test('whole years shift every date by whole years, leap days or not', () => {
    fc.assert(
      fc.property(someFrosts, fc.integer({ min: 1, max: 70 }), (some, shift) => {
        const later = (iso: string): string => `${Number(iso.slice(0, 4)) + shift}${iso.slice(4)}`;
        const shifted = record(run(later('2019-07-24'), later('2022-07-23')), some.map(later));
        for (const side of ['spring', 'fall'] as const) {
          expect(seasons(side, shifted)).toEqual(
            seasons(side, record(years, some)).map(({ year, frost }) => ({
              year: year + shift,
              frost: typeof frost === 'number' ? day(later(isoOf(frost))) : frost,
            })),
          );
        }
      }),
      seeded,
    );
  });

  /**
   * From 24 July to 24 January are 184 days, as from 1 March to 1 September, and the two seasons hold the same
   * 29 February: 184 days on, a northern record is a southern one. Its spring has the same year, its fall the next.
   */
  test('north and south mirror: 184 days on, each frost is 184 days later', () => {
    const halfYear = 184;
    fc.assert(
      fc.property(someFrosts, fc.constantFrom('spring', 'fall'), (some, side) => {
        const north = record(years, some);
        const south = { ...north, dates: north.dates.map((each) => each + halfYear) };
        expect(seasons(side, south, 'south')).toEqual(
          seasons(side, north, 'north').map(({ year, frost }) => ({
            year: side === 'spring' ? year : year + 1,
            frost: typeof frost === 'number' ? frost + halfYear : frost,
          })),
        );
      }),
      seeded,
    );
  });

  test('bad input', () => {
    expect(refusalOf(() => seasons('spring', { dates: [], lows: [] }))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => seasons('spring', { dates: [100], lows: [null] }))).toEqual({ code: 'noDays' });
    expect(refusalOf(() => seasons('spring', { dates: [100, 100], lows: [30, 31] }))).toEqual({
      code: 'sameDayTwice',
      day: 100,
      row: 2,
    });
    expect(refusalOf(() => seasons('spring', { dates: [100, null], lows: [30, 31] }))).toEqual({
      code: 'dateMissing',
      row: 2,
    });
    expect(refusalOf(() => seasons('spring', { dates: [100], lows: [3000] }))).toMatchObject({
      code: 'notATemperature',
      name: 'lows',
    });
  });

  test('the working counts what was found and names what was assumed', () => {
    const { dates, lows } = record(years, frosts);
    const { steps, assumptions } = recording((recorder) =>
      frostOfSeasons('fall', dates, lows, undefined, us, undefined, recorder),
    );
    expect(steps).toMatchObject([{ step: 'firstFrosts', inputs: { none: 0, void: 0 }, result: 3 }]);
    expect(assumptions.map(({ assumed, value }) => [assumed, value])).toEqual([
      ['threshold', 32],
      ['hemisphere', 'north'],
    ]);
  });
});
