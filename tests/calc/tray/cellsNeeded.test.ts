import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellsNeeded } from '../../../src/calc/tray/cellsNeeded';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { exactShortfall } from '../stand/oracles';

describe('cellsNeeded', () => {
  test.each([
    [100, 0.85, 1, 0.05, undefined, 124, '100/0.8075 = 123.8'],
    [100, 0.85, 2, 0.05, undefined, 108, '100/(0.9775 x 0.95) = 107.7'],
    [100, 0.85, undefined, undefined, undefined, 118, '100/0.85 = 117.6'],
    [21, 0.7, 1, 0, undefined, 30, '21/0.7, whole but for binary fractions'],
    [72, 1, 3, 0, undefined, 72, 'every cell stands'],
    [100, 0.5, 2, 0, undefined, 134, '100/0.75 = 133.3'],
  ] as const)(
    '%d at %d, %s a cell, culls %s, %s: %d (hand computed: %s)',
    (n, g, s, culls, sure, expected, _why) => {
      expect(cellsNeeded(n, g, s, culls, sure)).toBe(expected);
    },
  );

  test('with an assurance of 0.9: 131 cells, 111 with two seeds (exact sums in whole numbers)', () => {
    expect(cellsNeeded(100, 0.85, 1, 0.05, 0.9)).toBe(131);
    expect(exactShortfall(100, 131, 8075, 10_000)).toBeLessThanOrEqual(0.1);
    expect(exactShortfall(100, 130, 8075, 10_000)).toBeGreaterThan(0.1);
    expect(cellsNeeded(100, 0.85, 2, 0.05, 0.9)).toBe(111);
    expect(exactShortfall(100, 111, 928_625, 1_000_000)).toBeLessThanOrEqual(0.1);
    expect(exactShortfall(100, 110, 928_625, 1_000_000)).toBeGreaterThan(0.1);
  });

  test('the share of cells, by leaving out every way in which all seeds of a cell fail', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, fc.integer({ min: 1, max: 6 }), (g, inCell) => {
        let allFail = 1;
        for (let i = 0; i < inCell; i++) allFail *= 1 - g;
        const { steps } = recording((record) => cellsNeeded(50, g, inCell, 0, undefined, record));
        expect(steps[0]?.result).toBeCloseTo(1 - allFail, 12);
      }),
      seeded,
    );
  });

  test('more seeds a cell never need more cells, more culls never fewer, never fewer cells than plants', () => {
    const share = fc.double({ min: 0.05, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        share,
        fc.integer({ min: 1, max: 4 }),
        share,
        fc.option(share, { nil: undefined }),
        (plants, g, inCell, culls, assurance) => {
          const cells = cellsNeeded(plants, g, inCell, culls, assurance);
          expect(cells).toBeGreaterThanOrEqual(plants);
          expect(cellsNeeded(plants, g, inCell + 1, culls, assurance)).toBeLessThanOrEqual(cells);
          expect(cellsNeeded(plants, g, inCell, culls + 0.05, assurance)).toBeGreaterThanOrEqual(cells);
        },
      ),
      seeded,
    );
  });

  test('every bound, just in and just out', () => {
    for (const bad of [0, -1, NaN]) {
      expect(refusalOf(() => cellsNeeded(bad, 0.85))).toMatchObject({ code: 'outOfRange', name: 'plants' });
      expect(refusalOf(() => cellsNeeded(100, bad))).toMatchObject({
        code: 'outOfRange',
        name: 'germination',
      });
      expect(refusalOf(() => cellsNeeded(100, 0.85, bad))).toMatchObject({
        code: 'outOfRange',
        name: 'seeds_per_cell',
      });
    }
    expect(refusalOf(() => cellsNeeded(100, 0.85, 1.5))).toMatchObject({
      code: 'notWhole',
      name: 'seeds_per_cell',
    });
    expect(refusalOf(() => cellsNeeded(100, 85))).toMatchObject({
      code: 'percentForShare',
      name: 'germination',
    });
    expect(refusalOf(() => cellsNeeded(100, 0.85, 1, 5))).toMatchObject({
      code: 'percentForShare',
      name: 'culls',
    });
    for (const bad of [-0.01, 1, NaN]) {
      expect(refusalOf(() => cellsNeeded(100, 0.85, 1, bad))).toMatchObject({
        code: 'outOfRange',
        name: 'culls',
        atLeast: 0,
        below: 1,
      });
    }
    expect(cellsNeeded(1, 1, 1, 0.999)).toBe(1000);
    expect(refusalOf(() => cellsNeeded(100, 0.85, 1, 0.05, 1))).toEqual({ code: 'assuranceOfOne' });
  });

  test('the working ends in the returned cells and names the defaults', () => {
    const average = recording((record) => cellsNeeded(100, 0.85, undefined, undefined, undefined, record));
    expect(average.value).toBe(118);
    expect(average.steps.map(({ step }) => step)).toEqual(['cellSprouts', 'cellStands', 'cellsOnAverage']);
    expect(average.steps.at(-1)).toMatchObject({ result: 118, rounded: 'up', unit: 'cells' });
    expect(average.assumptions.map(({ assumed, value }) => [assumed, value])).toEqual([
      ['seeds_per_cell', 1],
      ['culls', 0],
    ]);
    expect(average.remarks).toEqual(['averageFallsShort']);
    const sure = recording((record) => cellsNeeded(100, 0.85, 2, 0.05, 0.9, record));
    expect(sure.steps.at(-1)).toMatchObject({ step: 'cellsForAssurance', result: 111 });
    expect(sure.remarks).toEqual([]);
    // (1 - 0.15^2) 0.95 = 0.928625 by hand.
    expect(sure.steps.at(-1)?.inputs).toMatchObject({
      chanceOfThese: expect.closeTo(1 - exactShortfall(100, 111, 928_625, 1_000_000), 8),
      chanceOfOneFewer: expect.closeTo(1 - exactShortfall(100, 110, 928_625, 1_000_000), 8),
    });
  });
});
