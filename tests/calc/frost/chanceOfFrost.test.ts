import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOfFrost } from '../../../src/calc/frost/chanceOfFrost';
import { frostDateAtRisk } from '../../../src/calc/frost/frostDateAtRisk';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const springs = ['2019-04-20', '2020-05-02', '2021-04-30', '2022-05-10'].map(day);
const falls = ['2019-10-20', '2020-10-02', '2021-11-30', '2022-10-10'].map(day);

describe('chanceOfFrost', () => {
  test('strictly after in spring, strictly before in fall, in any year (counted by hand)', () => {
    expect(chanceOfFrost(day('2030-05-01'), springs, 'spring')).toBe(0.5);
    expect(chanceOfFrost(day('2030-05-02'), springs, 'spring')).toBe(0.25);
    expect(chanceOfFrost(day('2030-05-10'), springs, 'spring')).toBe(0);
    expect(chanceOfFrost(day('2030-04-19'), springs, 'spring')).toBe(1);
    expect(chanceOfFrost(day('2030-10-10'), falls, 'fall')).toBe(0.25);
    expect(chanceOfFrost(day('2030-10-11'), falls, 'fall')).toBe(0.5);
  });

  test('a season without frost counts, a void one and a blank do not', () => {
    expect(chanceOfFrost(day('2030-05-01'), [...springs, 'none'], 'spring')).toBe(0.4);
    expect(chanceOfFrost(day('2030-05-01'), [...springs, 'void', null], 'spring')).toBe(0.5);
    expect(chanceOfFrost(day('2030-05-01'), ['none', 'none'], 'spring')).toBe(0);
    expect(refusalOf(() => chanceOfFrost(day('2030-05-01'), ['void'], 'spring'))).toEqual({
      code: 'noSeasons',
    });
  });

  test('is at most the risk on the date of that risk, and no later date has more', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 1, max: 99 }),
        (offsets, percent) => {
          const frosts = offsets.map((offset, i) => day(`${1960 + i}-03-01`) + offset);
          const date = frostDateAtRisk('spring', frosts, percent / 100, 2030);
          const chance = chanceOfFrost(date, frosts, 'spring');
          // Of n ranked frosts at most (n - 1) risk, rounded up, lie beyond the linear quantile.
          const most = Math.ceil((frosts.length - 1) * (percent / 100) - 1e-9);
          expect(Math.round(chance * frosts.length)).toBeLessThanOrEqual(most);
          expect(chanceOfFrost(date + 1, frosts, 'spring')).toBeLessThanOrEqual(chance);
        },
      ),
      seeded,
    );
  });

  test('the south: a first frost of May and a last one of September', () => {
    const south = ['2019-09-20', '2020-10-02'].map(day);
    expect(chanceOfFrost(day('2030-09-25'), south, 'spring')).toBe(0.5);
    const fall = ['2019-05-20', '2020-04-02'].map(day);
    expect(chanceOfFrost(day('2030-05-01'), fall, 'fall')).toBe(0.5);
  });

  test('frosts of the other side of the winter are refused where the hemisphere is said, else read as the other one’s', () => {
    const date = day('2030-05-01');
    const inFall = { code: 'lastFrostsInFall', seasons: 4 };
    const inSpring = { code: 'firstFrostsInSpring', seasons: 4 };
    expect(refusalOf(() => chanceOfFrost(date, falls, 'spring', 'north'))).toEqual(inFall);
    expect(refusalOf(() => chanceOfFrost(date, springs, 'fall', 'north'))).toEqual(inSpring);
    expect(refusalOf(() => chanceOfFrost(date, springs, 'spring', 'south'))).toEqual(inFall);
    expect(refusalOf(() => chanceOfFrost(date, falls, 'fall', 'south'))).toEqual(inSpring);
    expect(refusalOf(() => frostDateAtRisk('spring', falls, 0.5, 2030, 'inc', 'north'))).toEqual(inFall);
    // A first frost of October in the north is a last one in the south.
    expect(chanceOfFrost(day('2030-10-10'), falls, 'spring')).toBe(0.5);
  });

  test('last frosts about New Year are no first ones, nor is a single one of November', () => {
    const mild = ['2019-12-10', '2021-01-15', '2021-12-12'].map(day);
    expect(chanceOfFrost(day('2030-01-01'), mild, 'spring', 'north')).toBeCloseTo(1 / 3, 12);
    expect(chanceOfFrost(day('2030-01-01'), mild, 'fall', 'north')).toBeCloseTo(2 / 3, 12);
    expect(chanceOfFrost(day('2030-01-01'), [day('2020-11-20'), 'none', 'none'], 'spring', 'north')).toBe(0);
  });

  test('the working shows what was counted', () => {
    const { value, steps } = recording((record) =>
      chanceOfFrost(day('2030-05-01'), [...springs, 'none'], 'spring', undefined, record),
    );
    expect(steps).toMatchObject([{ step: 'chanceAfter', inputs: { frosts: 2, seasons: 5 }, result: value }]);
  });
});
