import fc from 'fast-check';
import { expect, test } from 'vitest';
import { trellisPosts } from '../../../src/calc/supply/trellisPosts';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test.each([
  [100, 8, 1, 14, '12.5 gaps are 13, and a post more'],
  [96, 8, 1, 13, '12 gaps'],
  [5, 8, 1, 2, 'one gap, a post at each end'],
  [100, 8, 3, 42, 'three rows'],
  [2.1, 0.7, 1, 4, '3 gaps, which are 3.0000000000000004 in binary fractions'],
])('%d ft, a post every %d ft, %d rows: %d (hand computed: %s)', (length, spacing, rows, posts) => {
  expect(trellisPosts(length, spacing, rows, us)).toBe(posts);
});

test('posts set one by one: no gap is wider than the spacing, and one post fewer makes one', () => {
  const lengths = fc.double({ min: 0.1, max: 2000, noNaN: true });
  fc.assert(
    fc.property(lengths, fc.double({ min: 0.5, max: 30, noNaN: true }), (length, spacing) => {
      const posts = trellisPosts(length, spacing, undefined, metric);
      expect(length / (posts - 1)).toBeLessThanOrEqual(spacing * (1 + 1e-8));
      if (posts > 2) expect(length / (posts - 2)).toBeGreaterThan(spacing);
      expect(trellisPosts(length, spacing, 3, metric)).toBe(3 * posts);
    }),
    seeded,
  );
});

test('refusals name the argument and its unit', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => trellisPosts(bad, 8, 1, us))).toMatchObject({ name: 'row_length', unit: 'ft' });
    expect(refusalOf(() => trellisPosts(100, bad, 1, metric))).toMatchObject({
      name: 'post_spacing',
      unit: 'm',
    });
    expect(refusalOf(() => trellisPosts(100, 8, bad, us))).toMatchObject({ name: 'rows' });
  }
  expect(refusalOf(() => trellisPosts(100, 8, 1.5, us))).toMatchObject({ code: 'notWhole' });
});

test('working: a row, then all rows; the rounding is told where one happened', () => {
  const { value, steps, assumptions } = recording((record) => trellisPosts(100, 8, undefined, us, record));
  expect(steps).toMatchObject([
    { step: 'postsInRow', result: 14, rounded: 'up' },
    { step: 'trellisPosts', result: value, unit: 'posts' },
  ]);
  expect(assumptions).toMatchObject([{ assumed: 'rows', value: 1 }]);
  const even = recording((record) => trellisPosts(96, 8, 2, us, record));
  expect(even.steps[0]).not.toHaveProperty('rounded');
  expect(even.assumptions).toEqual([]);
});
