import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waterNeed } from '../../../src/calc/supply/waterNeed';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// FAO paper 56, equation 58, ETc = Kc ETo; mid-season coefficients of its table 12.
test.each([
  ['cucumber', 1, 1.75],
  ['cantaloupe', 0.85, 1.4875],
  ['summer squash', 0.95, 1.6625],
])('%s at 0.25 in a day uses %d x 0.25 x 7 = %d in a week (hand computed)', (_, coefficient, depth) => {
  expect(waterNeed(0.25, coefficient, 7, undefined)).toBeCloseTo(depth, 12);
});

test('rain is taken off, and no more than all of it (hand computed)', () => {
  expect(waterNeed(0.25, 1, 7, 0.5)).toBe(1.25);
  expect(waterNeed(0.25, 1, 7, 3)).toBe(0);
  expect(waterNeed(5, 0.5, undefined, undefined)).toBe(2.5);
});

test('need and rain together cover the use; more rain never asks for more water', () => {
  const depths = fc.double({ min: 0, max: 20, noNaN: true });
  fc.assert(
    fc.property(depths, fc.double({ min: 0.1, max: 2, noNaN: true }), depths, (et, coefficient, rain) => {
      const need = waterNeed(et, coefficient, 7, rain);
      expect(need).toBeGreaterThanOrEqual(0);
      expect(need + rain).toBeGreaterThanOrEqual(et * coefficient * 7 - 1e-9);
      expect(waterNeed(et, coefficient, 7, rain + 1)).toBeLessThanOrEqual(need);
    }),
    seeded,
  );
});

test('bounds and refusals', () => {
  expect(waterNeed(0, 1, 7, 0)).toBe(0);
  expect(waterNeed(0.25, 2, 366, 0)).toBe(183);
  const wrong: readonly (readonly [readonly [number, number, number, number], string])[] = [
    [[-0.1, 1, 7, 0], 'reference_et'],
    [[0.25, 0, 7, 0], 'crop_coefficient'],
    [[0.25, 100, 7, 0], 'crop_coefficient'],
    [[0.25, 1, 0, 0], 'days'],
    [[0.25, 1, 46144, 0], 'days'],
    [[0.25, 1, 7, -1], 'rain'],
    [[NaN, 1, 7, 0], 'reference_et'],
    [[0.25, 1, 7, Infinity], 'rain'],
  ];
  for (const [given, name] of wrong) {
    expect(refusalOf(() => waterNeed(...given))).toMatchObject({ code: 'outOfRange', name });
  }
});

test('working: use, then need; what was left out is assumed; both editions of the coefficients', () => {
  const { value, steps, assumptions, remarks } = recording((record) =>
    waterNeed(0.25, 1, undefined, undefined, record),
  );
  expect(steps.map(({ step }) => step)).toEqual(['waterUsed', 'waterNeed']);
  expect(steps.at(-1)).toMatchObject({ result: value });
  expect(assumptions.map(({ assumed, value: of }) => [assumed, of])).toEqual([
    ['days', 1],
    ['rain', 0],
  ]);
  expect(remarks).toEqual(['coefficientsByStage', 'plasticShedsRain']);
});
