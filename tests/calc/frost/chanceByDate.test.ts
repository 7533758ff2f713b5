import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceByDate } from '../../../src/calc/frost/chanceByDate';
import { chanceOfFrost } from '../../../src/calc/frost/chanceOfFrost';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

describe('chanceByDate', () => {
  test('a step at each frost, on the day itself in spring and a day after it in fall (counted by hand)', () => {
    const springs = ['2019-04-20', '2020-05-02', '2021-05-02', '2022-05-10'].map(day);
    expect(chanceByDate('spring', springs, 2030)).toEqual([
      { day: day('2030-04-19'), chance: 1 },
      { day: day('2030-04-20'), chance: 0.75 },
      { day: day('2030-05-02'), chance: 0.25 },
      { day: day('2030-05-10'), chance: 0 },
    ]);
    const falls = [day('2019-10-20'), day('2020-10-02'), 'none', 'none', 'void', null] as const;
    expect(chanceByDate('fall', falls, 2030)).toEqual([
      { day: day('2030-10-02'), chance: 0 },
      { day: day('2030-10-03'), chance: 0.25 },
      { day: day('2030-10-21'), chance: 0.5 },
    ]);
  });

  test('is what FROST.CHANCE counts on and before each step, in either hemisphere', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 1, maxLength: 8 }),
        fc.constantFrom('spring' as const, 'fall' as const),
        fc.boolean(),
        (offsets, side, isNorth) => {
          const middle = (side === 'spring') === isNorth ? '04-15' : '10-20';
          const frosts = offsets.map((offset, i) => day(`${1960 + i}-${middle}`) + Math.trunc(offset / 2));
          const steps = chanceByDate(side, frosts, 2030);
          for (const [i, { day: from, chance }] of steps.entries()) {
            expect(chanceOfFrost(from, frosts, side)).toBe(chance);
            const next = steps[i + 1];
            if (next !== undefined) expect(chanceOfFrost(next.day - 1, frosts, side)).toBe(chance);
          }
          const [first] = steps;
          expect(chanceOfFrost((first?.day ?? NaN) - 1, frosts, side)).toBe(first?.chance);
        },
      ),
      seeded,
    );
  });

  test('never froze: no step; no season at all: refused', () => {
    expect(chanceByDate('spring', ['none', 'void'], 2030)).toEqual([]);
    expect(refusalOf(() => chanceByDate('spring', ['void'], 2030))).toEqual({ code: 'noSeasons' });
  });
});
