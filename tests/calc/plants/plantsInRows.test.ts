import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plantsInRows } from '../../../src/calc/plants/plantsInRows';
import { plantsPerLand } from '../../../src/calc/plants/plantsPerLand';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured, positions } from './placing';

const { us, metric } = unitSystems;

describe('plantsInRows', () => {
  test.each([
    [30, 4, 5, 12, us, 'onedge', 31, '1 row of 30 + 1'],
    [30, 22, 5, 12, us, 'inset', 120, '4 rows of 30'],
    [30, 22, 5, 12, us, 'onedge', 155, '5 rows of 31'],
    [30, 5, 5, 12, us, 'inset', 30, 'one row that just fits'],
    [1.2, 0.6, 0.2, 20, metric, 'inset', 18, '3 rows of 6, both whole but for binary fractions'],
    [0.1, 0.1, 5, 12, us, 'onedge', 1, 'one plant in the corner'],
  ] as const)(
    '%d x %d, rows %d, plants %d: (%s) %s',
    (length, width, row, plant, units, edge, expected, _origin) => {
      // Hand computed.
      expect(plantsInRows(length, width, row, plant, units, edge)).toBe(expected);
    },
  );

  test('an acre planted to its margin holds the published 7,260 at 2 ft x 36 in', () => {
    // 198 ft x 220 ft is an acre; Farm and Garden Rule-Book: 110 rows of 66.
    expect(plantsInRows(198, 220, 2, 36, us)).toBe(110 * 66);
    expect(plantsPerLand(2, 36, us)).toBe(110 * 66);
  });

  test('as many as rows and plants set out one by one', () => {
    fc.assert(
      fc.property(
        measured(0.5, 60),
        measured(0.5, 60),
        measured(0.1, 8),
        measured(2, 90),
        fc.constantFrom(us, metric),
        (length, width, row, plant, units) => {
          const spacing = plant / units.spacingPerLength;
          const onEdge = positions(0, width, row).length * positions(0, length, spacing).length;
          expect(plantsInRows(length, width, row, plant, units, 'onedge')).toBe(onEdge);
          const inset =
            positions(row / 2, width - row / 2, row).length *
            positions(spacing / 2, length - spacing / 2, spacing).length;
          if (inset > 0) expect(plantsInRows(length, width, row, plant, units)).toBe(inset);
          else expect(() => plantsInRows(length, width, row, plant, units)).toThrow(/noRowFits|noPlantFits/);
        },
      ),
      seeded,
    );
  });

  test('inset plants never exceed the density of the land, a longer or wider plot never holds fewer', () => {
    fc.assert(
      fc.property(
        measured(10, 200),
        measured(10, 200),
        measured(1, 9),
        measured(5, 90),
        (l, w, row, plant) => {
          const plants = plantsInRows(l, w, row, plant, us);
          expect(plants).toBeLessThanOrEqual(((l * w) / 43560) * plantsPerLand(row, plant, us) + 1e-6);
          expect(plantsInRows(l + 1, w, row, plant, us)).toBeGreaterThanOrEqual(plants);
          expect(plantsInRows(l, w + 1, row, plant, us)).toBeGreaterThanOrEqual(plants);
        },
      ),
      seeded,
    );
  });

  test('a row or plant that does not fit is refused with its sizes', () => {
    expect(refusalOf(() => plantsInRows(30, 4.99, 5, 12, us))).toEqual({
      code: 'noRowFits',
      width: 4.99,
      rowSpacing: 5,
      unit: 'ft',
    });
    expect(refusalOf(() => plantsInRows(0.29, 3, 1, 30, metric))).toEqual({
      code: 'noPlantFits',
      length: 0.29,
      plantSpacing: 30,
      unit: 'm',
      spacingUnit: 'cm',
    });
    expect(plantsInRows(0.3, 3, 1, 30, metric)).toBe(3);
  });

  test('zero, a negative and NaN name the argument', () => {
    const names = ['length', 'width', 'row_spacing', 'plant_spacing'];
    for (const bad of [0, -1, NaN, Infinity]) {
      names.forEach((name, i) => {
        const args = [30, 22, 5, 12].map((good, k) => (k === i ? bad : good)) as [
          number,
          number,
          number,
          number,
        ];
        expect(refusalOf(() => plantsInRows(...args, us))).toMatchObject({
          code: 'outOfRange',
          name,
          above: 0,
        });
      });
    }
  });

  test('the working ends in the returned plants, says the default and a rounding where one happened', () => {
    const { value, steps, assumptions } = recording((record) =>
      plantsInRows(30, 22, 5, 12, us, undefined, record),
    );
    expect(value).toBe(120);
    expect(steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
      ['rowsInset', 4, 'down'],
      ['plantsInRowInset', 30, undefined],
      ['plantsInRows', 120, undefined],
    ]);
    expect(assumptions).toEqual([{ assumed: 'edge', value: 'inset', unit: 'none', ground: 'judgement' }]);
    const onEdge = recording((record) => plantsInRows(30, 22, 5, 12, us, 'onedge', record));
    expect(onEdge.steps.map(({ step }) => step)).toEqual(['rowsOnEdge', 'plantsInRowOnEdge', 'plantsInRows']);
    expect(onEdge.assumptions).toEqual([]);
  });
});
