import fc from 'fast-check';
import { median } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import type { FrostFreeYear } from '../../../src/calc/frost/frostFreeYears';
import { layYears } from '../../../src/calc/frost/layYears';
import { seeded } from '../dates/calendar';

const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const season = (year: number, last: string, first: string): FrostFreeYear => ({
  year,
  lastFrost: day(last),
  firstFrost: day(first),
  days: day(first) - day(last),
});

describe('layYears', () => {
  test('dates move into one year, leap days shift nothing, the days stay (by hand)', () => {
    const { years, middleDays } = layYears(
      [
        season(2019, '2019-05-01', '2019-10-08'),
        season(2020, '2020-05-01', '2020-10-08'),
        season(2021, '2021-04-21', '2021-10-08'),
        { year: 2022, lastFrost: 'none', firstFrost: day('2022-10-08'), days: 'none' },
        { year: 2023, lastFrost: 'void', firstFrost: 'void', days: 'void' },
      ],
      2030,
      'north',
    );
    const [may1, oct8] = [day('2030-05-01'), day('2030-10-08')];
    expect(years).toEqual([
      { year: 2019, lastFrost: may1, firstFrost: oct8, days: 160, isMiddle: false },
      { year: 2020, lastFrost: may1, firstFrost: oct8, days: 160, isMiddle: true },
      { year: 2021, lastFrost: day('2030-04-21'), firstFrost: oct8, days: 170, isMiddle: false },
      { year: 2022, lastFrost: 'none', firstFrost: oct8, days: 'none', isMiddle: false },
      { year: 2023, lastFrost: 'void', firstFrost: 'void', days: 'void', isMiddle: false },
    ]);
    expect(middleDays).toBe(160);
  });

  test('in the south a season ends in the year after its spring', () => {
    const { years } = layYears([season(2020, '2020-09-20', '2021-05-02')], 2029, 'south');
    expect(years).toEqual([
      {
        year: 2020,
        lastFrost: day('2029-09-20'),
        firstFrost: day('2030-05-02'),
        days: 224,
        isMiddle: true,
      },
    ]);
  });

  test('of no season with its days there is no middle', () => {
    const none: FrostFreeYear = { year: 2022, lastFrost: 'none', firstFrost: 'none', days: 'none' };
    expect(layYears([none], 2030, 'north')).toEqual({
      years: [{ ...none, isMiddle: false }],
      middleDays: null,
    });
  });

  test('the middle is the median of another library (simple-statistics), of one season or of two', () => {
    const lengths = fc.array(fc.integer({ min: 60, max: 250 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(lengths, (all) => {
        const seasons = all.map((days, i): FrostFreeYear => {
          const lastFrost = day(`${1951 + i}-04-10`);
          return { year: 1951 + i, lastFrost, firstFrost: lastFrost + days, days };
        });
        const { years, middleDays } = layYears(seasons, 2030, 'north');
        expect(middleDays).toBe(median(all));
        const middle = years.filter(({ isMiddle }) => isMiddle).map(({ days }) => Number(days));
        expect(middle).toHaveLength(all.length % 2 === 1 ? 1 : 2);
        expect(median(middle)).toBe(middleDays);
      }),
      seeded,
    );
  });
});
