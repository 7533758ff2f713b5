import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scrollAlong } from '../../../src/hosts/browser/scrollAlong';

/** Widths 100, 40, 60, 80, 50, the first frozen. */
const columns = { ends: [100, 140, 200, 280, 330], frozen: 1, room: 120, at: 0 };

test.each([
  ['whole in sight already', 0, 1, 2, 0],
  ['beyond the far edge', 0, 3, 3, 60],
  ['partly beyond the far edge', 0, 2, 3, 40],
  ['partly behind the frozen column, which is wider than what is before it', 60, 2, 2, 40],
  ['behind the frozen column', 110, 1, 1, 0],
  ['the last', 0, 4, 4, 110],
  ['in the frozen column: nothing moves', 77, 0, 0, 77],
  ['none, as whole rows have no columns: nothing moves', 77, NaN, NaN, 77],
  ['from the frozen column on', 77, 0, 1, 0],
  ['wider than the room: its beginning', 0, 2, 4, 40],
])('%s', (_, at, first, last, expected) => {
  expect(scrollAlong({ ...columns, at }, first, last)).toBe(expected);
});

test('whatever fits is whole in sight afterwards', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 2, maxLength: 30 }),
      fc.nat(29),
      fc.nat(29),
      fc.integer({ min: 200, max: 900 }),
      fc.nat(3000),
      (widths, index, frozenAtMost, room, at) => {
        const column = index % widths.length;
        const frozen = frozenAtMost % (column + 1);
        const sum = (count: number): number => widths.slice(0, count).reduce((all, one) => all + one, 0);
        const ends = widths.map((__, i) => sum(i + 1));
        const scrolled = scrollAlong({ ends, frozen, room, at }, column, column);
        const left = sum(column) - sum(frozen) - scrolled;
        return left >= 0 && left + (widths[column] ?? 0) <= room;
      },
    ),
  );
});
