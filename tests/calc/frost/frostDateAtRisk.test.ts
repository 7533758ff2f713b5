import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { frostDateAtRisk } from '../../../src/calc/frost/frostDateAtRisk';
import type { SeasonFrost } from '../../../src/calc/frost/frostOfSeasons';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const iso = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);

/** Twenty invented last frosts, by the day of a common year. */
const ofYear = [
  98, 101, 104, 105, 107, 108, 110, 111, 112, 113, 114, 115, 116, 117, 118, 119, 121, 123, 126, 131,
];
/** In the years from 2001 on: the same date in each, so that a leap year's day is one more. */
const springs = ofYear.map((number, i) => {
  const date = iso(day('2001-01-01') + number - 1).slice(5);
  return day(`${2001 + i}-${date}`);
});

describe('frostDateAtRisk', () => {
  test('10 % in spring is the 90th percentile: 123.3 by rule 7, 125.7 by rule 6, rounded up (computed twice for the reference)', () => {
    const at = (risk: number, rule?: 'inc' | 'exc') =>
      iso(frostDateAtRisk('spring', springs, risk, 2030, rule));
    const ofDay = (number: number): string => iso(day('2030-01-01') + number - 1);
    expect(at(0.1)).toBe(ofDay(124));
    expect(at(0.1, 'exc')).toBe(ofDay(126));
    expect(at(0.5)).toBe(ofDay(114));
    expect(at(0.5, 'exc')).toBe(ofDay(114));
    expect(at(0.9)).toBe(ofDay(104));
    expect(at(0.9, 'exc')).toBe(ofDay(102));
  });

  test('10 % in fall is the 10th percentile, rounded down: 103.7 and 101.3 of the same numbers', () => {
    const falls = springs.map((spring) => spring + 180);
    const shifted = (rule: 'inc' | 'exc'): number => frostDateAtRisk('fall', falls, 0.1, 2030, rule);
    expect(shifted('inc') - day('2030-01-01') + 1 - 180).toBe(103);
    expect(shifted('exc') - day('2030-01-01') + 1 - 180).toBe(101);
  });

  test('is the quantile of jstat 1.9.6 of the days from 1 March, rounded up', () => {
    const counted = springs.map((spring, i) => spring - day(`${2001 + i}-03-01`));
    for (const risk of [0.05, 0.13, 0.31, 0.47, 0.77, 0.95]) {
      for (const [rule, parameter] of [['inc', 1] as const, ['exc', 0] as const]) {
        const expected = jStat.quantiles(counted, [1 - risk], parameter, parameter)[0] ?? NaN;
        const date = frostDateAtRisk('spring', springs, risk, 2031, rule) - day('2031-03-01');
        expect(date).toBe(Math.ceil(Number(expected.toFixed(9))));
      }
    }
  });

  test('seasons without frost share the risk: of 20 with 10 frosts, 25 % is half of those (by hand)', () => {
    const half: SeasonFrost[] = [...springs.slice(0, 10), ...Array<SeasonFrost>(10).fill('none')];
    expect(frostDateAtRisk('spring', half, 0.25, 2030)).toBe(
      frostDateAtRisk('spring', springs.slice(0, 10), 0.5, 2030),
    );
    expect(refusalOf(() => frostDateAtRisk('spring', half, 0.6, 2030))).toEqual({
      code: 'riskAboveFrost',
      risk: 0.6,
      share: 0.5,
    });
    // Void seasons and blanks count for nothing.
    expect(frostDateAtRisk('spring', [...half, 'void', null], 0.25, 2030)).toBe(
      frostDateAtRisk('spring', half, 0.25, 2030),
    );
  });

  const someFrosts = fc
    .array(fc.integer({ min: -60, max: 100 }), { minLength: 1, maxLength: 40 })
    .map((offsets) => offsets.map((offset, i) => day(`${1960 + i}-03-01`) + offset));
  const aRisk = fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100);

  test('a higher risk never gives a later spring nor an earlier fall', () => {
    fc.assert(
      fc.property(someFrosts, aRisk, aRisk, (frosts, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(frostDateAtRisk('spring', frosts, high, 2030)).toBeLessThanOrEqual(
          frostDateAtRisk('spring', frosts, low, 2030),
        );
        // From the middle of August to that of January.
        const falls = frosts.map((frost) => frost + 226);
        const fallAt = (risk: number) => frostDateAtRisk('fall', falls, risk, 2030, 'inc', 'north');
        expect(fallAt(high)).toBeGreaterThanOrEqual(fallAt(low));
      }),
      seeded,
    );
  });

  const halfYear = 184;

  test('whole years shift the date by whole years, leap or not', () => {
    fc.assert(
      fc.property(someFrosts, aRisk, fc.integer({ min: 2000, max: 2090 }), (frosts, risk, year) => {
        const offset = frostDateAtRisk('spring', frosts, risk, year) - day(`${year}-03-01`);
        expect(frostDateAtRisk('spring', frosts, risk, year + 1) - day(`${year + 1}-03-01`)).toBe(offset);
        const later = frosts.map((frost) => {
          const ofSpring = Number(iso(frost + 150).slice(0, 4));
          return frost - day(`${ofSpring}-03-01`) + day(`${ofSpring + 7}-03-01`);
        });
        expect(frostDateAtRisk('spring', later, risk, year) - day(`${year}-03-01`)).toBe(offset);
      }),
      seeded,
    );
  });

  test('north and south mirror: 184 days on, as from 1 March to 1 September', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 1, maxLength: 30 }),
        aRisk,
        (offsets, risk) => {
          const springsOf = offsets.map((offset, i) => day(`${1990 + i}-03-01`) + offset);
          const fallsOf = springsOf.map((spring) => spring + halfYear);
          const later = (dates: readonly number[]): number[] => dates.map((date) => date + halfYear);
          expect(frostDateAtRisk('spring', later(springsOf), risk, 2030)).toBe(
            frostDateAtRisk('spring', springsOf, risk, 2030) + halfYear,
          );
          // A fall of the south comes with the next calendar year.
          expect(frostDateAtRisk('fall', later(fallsOf), risk, 2031)).toBe(
            frostDateAtRisk('fall', fallsOf, risk, 2030) + halfYear,
          );
        },
      ),
      seeded,
    );
  });

  test('a last frost before New Year counts from the March after it', () => {
    const frosts = [day('2020-12-24'), day('2022-02-10'), day('2023-03-20')];
    // -67, -19, 19 days from 1 March: the middle one.
    expect(iso(frostDateAtRisk('spring', frosts, 0.5, 2030))).toBe('2030-02-10');
  });

  test('few seasons: exc says how many are needed, inc warns', () => {
    const five = springs.slice(0, 5);
    expect(refusalOf(() => frostDateAtRisk('spring', five, 0.1, 2030, 'exc'))).toEqual({
      code: 'tooFewSeasons',
      seasons: 5,
      needed: 9,
    });
    expect(() => frostDateAtRisk('spring', springs.slice(0, 9), 0.1, 2030, 'exc')).not.toThrow();
    const remarks = (frosts: readonly SeasonFrost[]) =>
      recording((record) => frostDateAtRisk('spring', frosts, 0.1, 2030, 'inc', undefined, record)).remarks;
    expect(remarks(five)).toEqual(['fewSeasons']);
    expect(remarks(springs)).toEqual([]);
    // By hand: 19 x 0.9 + 1 = 18.1, between the 18th, 123, and the 19th, 126; day 60 of a common year is 1 March.
    const { steps } = recording((record) =>
      frostDateAtRisk('spring', springs, 0.1, 2030, 'inc', undefined, record),
    );
    const ofDay = (number: number): number => day('2030-01-01') + number - 1;
    expect(steps.find(({ step }) => step === 'frostQuantile')).toMatchObject({
      inputs: {
        place: expect.closeTo(18.1, 9),
        earlierFrost: ofDay(123),
        laterFrost: ofDay(126),
        wayToLater: expect.closeTo(0.1, 9),
        countingStart: ofDay(60),
      },
      result: 64,
    });
    expect(frostDateAtRisk('spring', [day('2001-04-20')], 0.1, 2030)).toBe(day('2030-04-20'));
  });

  test('bad input', () => {
    for (const risk of [0, 1, -0.1]) {
      expect(refusalOf(() => frostDateAtRisk('spring', springs, risk, 2030))).toMatchObject({
        code: 'outOfRange',
        name: 'risk',
      });
    }
    expect(refusalOf(() => frostDateAtRisk('spring', springs, 10, 2030))).toMatchObject({
      code: 'percentForShare',
    });
    expect(refusalOf(() => frostDateAtRisk('spring', springs, 0.1, 46000))).toMatchObject({ name: 'year' });
    expect(refusalOf(() => frostDateAtRisk('spring', ['void', null], 0.1, 2030))).toEqual({
      code: 'noSeasons',
    });
    expect(refusalOf(() => frostDateAtRisk('spring', ['none', 'none'], 0.1, 2030))).toEqual({
      code: 'neverFroze',
      seasons: 2,
    });
    expect(refusalOf(() => frostDateAtRisk('spring', [1.5], 0.1, 2030))).toMatchObject({ code: 'notADate' });
  });
});
