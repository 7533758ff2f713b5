import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plantsInBeds } from '../../../src/calc/plants/plantsInBeds';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured, positions } from './placing';

const { us, metric } = unitSystems;

describe('plantsInBeds', () => {
  test.each([
    [100, 40, 4, 2, 2, 12, us, 1400, '7 beds (7 x 4 + 6 x 2 = 40) x 2 rows x 100'],
    [100, 39.99, 4, 2, 2, 12, us, 1200, '6 beds'],
    [100, 4, 4, 2, 1, 12, us, 100, 'one bed, no path'],
    [100, 40, 4, 0, 2, 12, us, 2000, '10 beds without paths'],
    [6, 3.3, 0.9, 0.3, 1, 20, metric, 90, '3 beds (2.7 + 0.6 m) x 30, whole but for binary fractions'],
  ] as const)(
    '%d x %d: beds %d, paths %d, %d rows, plants %d',
    (l, w, bed, path, rows, plant, units, expected, _origin) => {
      // Hand computed, as the last column says.
      expect(plantsInBeds(l, w, bed, path, rows, plant, units)).toBe(expected);
    },
  );

  test('as many beds as laid out one by one', () => {
    fc.assert(
      fc.property(
        measured(4, 80),
        measured(4, 80),
        measured(1.5, 4),
        measured(0, 4),
        fc.integer({ min: 1, max: 4 }),
        (l, w, bed, path, rows) => {
          const beds = positions(0, w - bed, bed + path).length;
          const inRow = positions(0.5, l - 0.5, 1).length;
          expect(plantsInBeds(l, w, bed, path, rows, 12, us)).toBe(beds * rows * inRow);
        },
      ),
      seeded,
    );
  });

  test('wider paths never leave more beds, more rows a bed hold more plants', () => {
    fc.assert(
      fc.property(measured(4, 80), measured(1.5, 4), measured(0, 4), (w, bed, path) => {
        const plants = plantsInBeds(50, w, bed, path, 2, 12, us);
        expect(plantsInBeds(50, w, bed, path + 0.5, 2, 12, us)).toBeLessThanOrEqual(plants);
        expect(plantsInBeds(50, w, bed, path, 4, 12, us)).toBe(2 * plants);
      }),
      seeded,
    );
  });

  test('no bed and no plant fits', () => {
    expect(refusalOf(() => plantsInBeds(100, 3.9, 4, 2, 2, 12, us))).toEqual({
      code: 'noBedFits',
      width: 3.9,
      bedWidth: 4,
      unit: 'ft',
    });
    expect(refusalOf(() => plantsInBeds(0.9, 40, 4, 2, 2, 12, us))).toMatchObject({ code: 'noPlantFits' });
  });

  test('zero, a negative, NaN and half a row name the argument', () => {
    const good = [100, 40, 4, 2, 2, 12] as const;
    const names = ['length', 'width', 'bed_width', 'path_width', 'rows_per_bed', 'plant_spacing'];
    names.forEach((name, i) => {
      for (const bad of name === 'path_width' ? [-0.01, NaN, Infinity] : [0, -1, NaN, Infinity]) {
        const args = good.map((one, k) => (k === i ? bad : one)) as [
          number,
          number,
          number,
          number,
          number,
          number,
        ];
        expect(refusalOf(() => plantsInBeds(...args, us))).toMatchObject({ code: 'outOfRange', name });
      }
    });
    expect(refusalOf(() => plantsInBeds(100, 40, 4, 2, 1.5, 12, us))).toEqual({
      code: 'notWhole',
      name: 'rows_per_bed',
      value: 1.5,
    });
  });

  test('rows as close as 4 in or 10 cm, no closer (judgement)', () => {
    expect(plantsInBeds(100, 4, 4, 2, 12, 12, us)).toBe(1200);
    expect(refusalOf(() => plantsInBeds(100, 4, 4, 2, 13, 12, us))).toMatchObject({
      code: 'rowsTooClose',
      rows: 13,
      bedWidth: 4,
      least: 4,
    });
    expect(plantsInBeds(30, 1.2, 1.2, 0.5, 12, 30, unitSystems.metric)).toBe(1200);
    expect(refusalOf(() => plantsInBeds(30, 1.2, 1.2, 0.5, 13, 30, unitSystems.metric))).toMatchObject({
      code: 'rowsTooClose',
      least: 10,
    });
  });

  test('the working ends in the returned plants', () => {
    const { value, steps } = recording((record) => plantsInBeds(100, 41, 4, 2, 2, 12, us, record));
    expect(value).toBe(plantsInBeds(100, 41, 4, 2, 2, 12, us));
    expect(steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
      ['bedsInWidth', 7, 'down'],
      ['plantsInRowInset', 100, undefined],
      ['plantsInBeds', 1400, undefined],
    ]);
  });
});
