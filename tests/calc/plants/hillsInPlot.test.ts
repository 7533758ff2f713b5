import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hillsInPlot } from '../../../src/calc/plants/hillsInPlot';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured, positions } from './placing';

const { us } = unitSystems;

interface Hill {
  readonly x: number;
  readonly y: number;
}

/** Staggered hills set out one by one, half a hill spacing inside every edge. */
function setOut(length: number, width: number, h: number, pitch: number): Hill[] {
  return positions(h / 2, width - h / 2, pitch).flatMap((y, i) =>
    positions(i % 2 === 0 ? h / 2 : h, length - h / 2, h).map((x) => ({ x, y })),
  );
}

describe('hillsInPlot', () => {
  test.each([
    [60, 26, 6, 'staggered', undefined, 38, 'rows at 3, 8.20, 13.39, 18.59: 10 + 9 + 10 + 9'],
    [60, 40, 6, 'staggered', undefined, 67, '7 rows, 4 x 10 + 3 x 9'],
    [60, 26, 6, 'square', undefined, 40, '4 rows of 10'],
    [96, 48, 3, 'square', 8, 192, '6 rows of 32'],
    [96, 48, 3, 'staggered', 8, 189, 'rows from 1.5 to 41.5: 3 x 32 + 3 x 31'],
    [6, 6, 6, 'square', undefined, 1, 'one hill that just fits'],
    [6, 6, 6, 'staggered', undefined, 1, 'one hill that just fits'],
    [6, 12, 6, 'staggered', undefined, 1, 'a second row has no room for its shifted hill'],
    [40, 4, 6, 'square', 4, 6, 'one row in a narrow strip'],
    [0.6, 0.6, 0.2, 'square', undefined, 9, 'whole but for binary fractions'],
  ] as const)(
    '%d x %d, hills %d, %s, rows %s: %d (hand computed: %s)',
    (l, w, h, pattern, row, expected, _origin) => {
      expect(hillsInPlot(l, w, h, us, pattern, row)).toBe(expected);
    },
  );

  test('square hills as many as set out one by one', () => {
    fc.assert(
      fc.property(measured(8, 80), measured(8, 80), measured(0.5, 8), measured(0.5, 8), (l, w, h, row) => {
        const along = positions(h / 2, l - h / 2, h).length;
        expect(hillsInPlot(l, w, h, us)).toBe(along * positions(h / 2, w - h / 2, h).length);
        expect(hillsInPlot(l, w, h, us, 'square', row)).toBe(
          along * positions(row / 2, w - row / 2, row).length,
        );
      }),
      seeded,
    );
  });

  test('staggered hills as many as set out one by one, none nearer than the spacing', () => {
    fc.assert(
      fc.property(measured(8, 40), measured(8, 40), measured(2, 8), measured(0.5, 8), (l, w, h, row) => {
        const hills = setOut(l, w, h, (h * Math.sqrt(3)) / 2);
        expect(hillsInPlot(l, w, h, us, 'staggered')).toBe(hills.length);
        expect(hillsInPlot(l, w, h, us, 'staggered', row)).toBe(setOut(l, w, h, row).length);
        hills.forEach((one, i) =>
          hills.slice(i + 1).forEach((other) => {
            expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(h - 1e-6);
          }),
        );
      }),
      { ...seeded, numRuns: 100 },
    );
  });

  test('a large plot holds 2/sqrt(3) times as many staggered hills (the hexagonal lattice)', () => {
    const square = hillsInPlot(3000, 3000, 3, us);
    expect(hillsInPlot(3000, 3000, 3, us, 'staggered') / square).toBeCloseTo(2 / Math.sqrt(3), 2);
  });

  test('a spacing wider than a side, and rows wider than the plot', () => {
    for (const pattern of ['square', 'staggered'] as const) {
      expect(refusalOf(() => hillsInPlot(60, 26, 72, us, pattern))).toEqual({
        code: 'noHillFits',
        side: 26,
        hillSpacing: 72,
        unit: 'ft',
      });
      expect(refusalOf(() => hillsInPlot(5.99, 26, 6, us, pattern, 4))).toMatchObject({
        code: 'noHillFits',
        side: 5.99,
      });
    }
    expect(refusalOf(() => hillsInPlot(60, 5.9, 6, us, 'staggered', 4))).toMatchObject({
      code: 'noHillFits',
    });
    expect(refusalOf(() => hillsInPlot(60, 26, 6, us, 'square', 96))).toEqual({
      code: 'noHillRowFits',
      width: 26,
      rowSpacing: 96,
      unit: 'ft',
    });
    expect(hillsInPlot(60, 26, 6, us, 'staggered', 96)).toBe(10);
  });

  test('zero, a negative and NaN name the argument', () => {
    const names = ['length', 'width', 'hill_spacing'];
    for (const bad of [0, -1, NaN, Infinity]) {
      names.forEach((name, i) => {
        const args = [60, 26, 6].map((good, k) => (k === i ? bad : good)) as [number, number, number];
        expect(refusalOf(() => hillsInPlot(...args, us))).toMatchObject({ code: 'outOfRange', name });
      });
      expect(refusalOf(() => hillsInPlot(60, 26, 6, us, 'square', bad))).toMatchObject({
        code: 'outOfRange',
        name: 'row_spacing',
      });
    }
  });

  test('the working ends in the returned hills and names what was assumed', () => {
    const square = recording((record) => hillsInPlot(60, 26, 6, us, undefined, undefined, record));
    expect(square.value).toBe(40);
    expect(square.steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
      ['rowsOfHills', 4, 'down'],
      ['hillsInRow', 10, undefined],
      ['hillsSquare', 40, undefined],
    ]);
    expect(square.assumptions.map(({ assumed, value }) => [assumed, value])).toEqual([
      ['pattern', 'square'],
      ['row_spacing', 6],
    ]);
    const staggered = recording((record) => hillsInPlot(60, 26, 6, us, 'staggered', undefined, record));
    expect(staggered.value).toBe(38);
    expect(staggered.steps.map(({ step }) => step)).toEqual([
      'staggeredPitch',
      'rowsStaggered',
      'hillsInRow',
      'hillsInEvenRow',
      'hillsStaggered',
    ]);
    expect(staggered.steps.at(-1)?.result).toBe(38);
    expect(staggered.assumptions).toEqual([]);
  });
});
