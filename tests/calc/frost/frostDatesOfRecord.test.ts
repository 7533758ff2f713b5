import { describe, expect, it } from 'vitest';
import { frostDateAtRisk } from '../../../src/calc/frost/frostDateAtRisk';
import { frostDatesOfRecord } from '../../../src/calc/frost/frostDatesOfRecord';
import { frostOfSeasons } from '../../../src/calc/frost/frostOfSeasons';
import { unitSystems } from '../../../src/calc/units/units';
import { refusalOf } from '../refusal';

/** By the calendar of JavaScript alone. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

/** Lows of 40 F, and of 30 F on the days named. */
function record(from: string, to: string, frosts: readonly string[]) {
  const cold = new Set(frosts.map(day));
  const dates = Array.from({ length: day(to) - day(from) + 1 }, (_, i) => day(from) + i);
  return { dates, lows: dates.map((one) => (cold.has(one) ? 30 : 40)) };
}
const north = record('2019-07-24', '2022-07-23', [
  '2019-10-05',
  '2020-04-20',
  '2020-10-15',
  '2021-05-10',
  '2021-10-25',
  '2022-04-30',
]);

describe('frostDatesOfRecord', () => {
  it('gives both dates at a risk, and how many seasons they are out of (by hand: the middle ones)', () => {
    expect(frostDatesOfRecord(north.dates, north.lows, 0.5, 2030, unitSystems.us, 'north')).toEqual({
      lastFrost: day('2030-04-30'),
      firstFrost: day('2030-10-15'),
      springs: 3,
      falls: 3,
    });
  });

  it('gives what the functions of each side give', () => {
    const [last, first] = (['spring', 'fall'] as const).map((side) =>
      frostOfSeasons(side, north.dates, north.lows, undefined, unitSystems.us, 'north').map(
        ({ frost }) => frost,
      ),
    );
    for (const risk of [0.05, 0.3, 0.9]) {
      expect(frostDatesOfRecord(north.dates, north.lows, risk, 2027, unitSystems.us, 'north')).toMatchObject({
        lastFrost: frostDateAtRisk('spring', last ?? [], risk, 2027),
        firstFrost: frostDateAtRisk('fall', first ?? [], risk, 2027),
      });
    }
  });

  it('gives the fall of the next year in the south, half a year away from the north', () => {
    const { dates, lows } = record('2020-01-24', '2022-01-23', [
      '2020-05-04',
      '2020-09-10',
      '2021-05-06',
      '2021-09-12',
    ]);
    // Of two the mean. Springs 9 and 11 days from 1 September; falls 246 (over 29 February 2020) and 247, so 246.5,
    // rounded to the earlier day: 4 May 2028, over 29 February again.
    expect(frostDatesOfRecord(dates, lows, 0.5, 2027, unitSystems.us, 'south')).toMatchObject({
      lastFrost: day('2027-09-11'),
      firstFrost: day('2028-05-04'),
    });
  });

  it('refuses where it never froze, and where no season is whole', () => {
    const warm = record('2019-07-24', '2021-07-23', []);
    const of = ({ dates, lows }: { dates: number[]; lows: number[] }) =>
      refusalOf(() => frostDatesOfRecord(dates, lows, 0.5, 2027, unitSystems.us, 'north'));
    expect(of(warm)).toEqual({ code: 'neverFroze', seasons: 2 });
    expect(of(record('2020-01-01', '2020-04-01', ['2020-02-01']))).toEqual({ code: 'noSeasons' });
  });
});
