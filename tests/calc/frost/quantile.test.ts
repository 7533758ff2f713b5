import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { quantile } from '../../../src/calc/frost/quantile';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

const values = fc
  .array(fc.integer({ min: -100, max: 200 }), { minLength: 2, maxLength: 60 })
  .map((list) => list.sort((a, b) => a - b));
const share = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000);

describe('quantile', () => {
  test('of 98 to 131: 103.7, 113.5, 123.3 and 101.3, 113.5, 125.7 (computed with other software for the reference)', () => {
    const list = [
      98, 101, 104, 105, 107, 108, 110, 111, 112, 113, 114, 115, 116, 117, 118, 119, 121, 123, 126, 131,
    ];
    const at = (rule: 'inc' | 'exc') =>
      [0.1, 0.5, 0.9].map((p) => Number(quantile(list, p, rule).toFixed(9)));
    expect(at('inc')).toEqual([103.7, 113.5, 123.3]);
    expect(at('exc')).toEqual([101.3, 113.5, 125.7]);
  });

  test('is jstat 1.9.6 with alpha and beta 1 (inc) and 0 (exc)', () => {
    fc.assert(
      fc.property(values, share, (list, p) => {
        expect(quantile(list, p, 'inc')).toBeCloseTo(jStat.quantiles(list, [p], 1, 1)[0] ?? NaN, 9);
        const edge = 1 / (list.length + 1);
        if (p >= edge && p <= 1 - edge) {
          expect(quantile(list, p, 'exc')).toBeCloseTo(jStat.quantiles(list, [p], 0, 0)[0] ?? NaN, 9);
        } else {
          expect(refusalOf(() => quantile(list, p, 'exc'))).toMatchObject({ code: 'tooFewSeasons' });
        }
      }),
      seeded,
    );
  });

  test('as many as it says are enough for exc, one fewer is not', () => {
    fc.assert(
      fc.property(share, (p) => {
        const refusal = refusalOf(() => quantile([1], p === 0.5 ? 0.25 : p, 'exc'));
        const needed = refusal.code === 'tooFewSeasons' ? refusal.needed : NaN;
        const list = (count: number): number[] => Array.from({ length: count }, (_, i) => i);
        const at = p === 0.5 ? 0.25 : p;
        expect(() => quantile(list(needed), at, 'exc')).not.toThrow();
        expect(refusalOf(() => quantile(list(needed - 1), at, 'exc'))).toMatchObject({ seasons: needed - 1 });
      }),
      seeded,
    );
  });

  test('the ends and a single value', () => {
    expect(quantile([3, 5, 9], 0, 'inc')).toBe(3);
    expect(quantile([3, 5, 9], 1, 'inc')).toBe(9);
    expect(quantile([3], 0.3, 'inc')).toBe(3);
    expect(quantile([3], 0.5, 'exc')).toBe(3);
    // 1/(n + 1) itself, which binary fractions put a hair outside.
    expect(quantile([3, 5, 9, 10, 12], 1 / 6, 'exc')).toBe(3);
    expect(quantile([3, 5, 9, 10, 12], 5 / 6, 'exc')).toBe(12);
    expect(refusalOf(() => quantile([3, 5], 1.5, 'inc'))).toMatchObject({ code: 'percentForShare' });
  });
});
