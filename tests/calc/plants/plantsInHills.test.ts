import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hillsInPlot } from '../../../src/calc/plants/hillsInPlot';
import { plantsInHills } from '../../../src/calc/plants/plantsInHills';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured } from './placing';

const { us } = unitSystems;

describe('plantsInHills', () => {
  test('38 staggered hills of 3: 114; 40 square ones of 2: 80 (hand computed)', () => {
    expect(plantsInHills(60, 26, 6, 3, us, 'staggered')).toBe(114);
    expect(plantsInHills(60, 26, 6, 2, us)).toBe(80);
  });

  test('hills of cucumbers 3 ft each way with 3 plants: an acre holds 14,520 (43,560/9 x 3)', () => {
    // Spacing of the Illinois Vegetable Garden Guide, cucumber; 198 ft x 220 ft is an acre. 66 x 73 hills fit.
    expect(plantsInHills(198, 220, 3, 3, us)).toBe(66 * 73 * 3);
    expect(plantsInHills(198, 220, 3, 3, us)).toBeLessThanOrEqual(14520);
  });

  test('plants go with the hills', () => {
    fc.assert(
      fc.property(
        measured(8, 80),
        measured(8, 80),
        measured(1, 8),
        fc.integer({ min: 1, max: 9 }),
        (l, w, h, each) => {
          expect(plantsInHills(l, w, h, each, us, 'staggered')).toBe(
            each * hillsInPlot(l, w, h, us, 'staggered'),
          );
        },
      ),
      seeded,
    );
  });

  test('plants per hill: whole, 1 or more', () => {
    expect(plantsInHills(60, 26, 6, 1, us)).toBe(40);
    expect(refusalOf(() => plantsInHills(60, 26, 6, 2.5, us))).toEqual({
      code: 'notWhole',
      name: 'plants_per_hill',
      value: 2.5,
    });
    for (const bad of [0, -1, NaN]) {
      expect(refusalOf(() => plantsInHills(60, 26, 6, bad, us))).toMatchObject({
        code: 'outOfRange',
        name: 'plants_per_hill',
        atLeast: 1,
      });
    }
  });

  test('the working ends in the returned plants', () => {
    const { value, steps } = recording((record) =>
      plantsInHills(60, 26, 6, 3, us, 'staggered', undefined, record),
    );
    expect(value).toBe(plantsInHills(60, 26, 6, 3, us, 'staggered'));
    expect(steps.at(-1)).toEqual({
      step: 'plantsInHills',
      inputs: { hills: 38, plants_per_hill: 3 },
      result: 114,
      unit: 'plants',
    });
  });
});
