import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hivesNeeded } from '../../../src/calc/flowers/hivesNeeded';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('one hive an acre of cucumbers (North Carolina Beekeeping Note 7B)', () => {
  expect(hivesNeeded(43_560, undefined, us)).toBe(1);
  expect(hivesNeeded(3 * 43_560, undefined, us)).toBe(3);
});

test.each([
  [43_561, 1, 2, 'a foot over an acre'],
  [100_000, 1, 3, '2.3'],
  [100_000, 2, 5, '4.6'],
  [10, 1, 1, 'a small bed still takes a whole hive'],
  [43_560, 0, 0, 'parthenocarpic: none'],
  [43_560 / 3, 3, 1, 'exactly one'],
  [43_560 * 0.1, 30, 3, '3, which is 3.0000000000000004 in binary fractions'],
])('%d sq ft at %d an acre: %d (hand computed: %s)', (area, density, hives) => {
  expect(hivesNeeded(area, density, us)).toBe(hives);
});

test('metric: per hectare; the default is the same field (1 acre = 4,046.86 sq m: 2.47 a hectare)', () => {
  expect(hivesNeeded(10_000, undefined, metric)).toBe(3);
  expect(hivesNeeded(4046.85, undefined, metric)).toBe(1);
  expect(hivesNeeded(4046.87, undefined, metric)).toBe(2);
  expect(hivesNeeded(10_000, 2, metric)).toBe(2);
});

test('enough, and one hive fewer is not; twice the density for twice the visits', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 1e8, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (area, density) => {
        const hives = hivesNeeded(area, density, us);
        const exact = (area / 43_560) * density;
        expect(hives).toBeGreaterThanOrEqual(exact * (1 - 1e-9));
        expect(hives - 1).toBeLessThan(exact);
        expect(hivesNeeded(area, 2 * density, us)).toBeLessThanOrEqual(2 * hives);
      },
    ),
    seeded,
  );
});

test('acres typed for square feet, hectares for square metres', () => {
  expect(refusalOf(() => hivesNeeded(9.99, 1, us))).toEqual({
    code: 'areaInLandUnits',
    area: 9.99,
    unit: 'sqFt',
    landUnit: 'acre',
    areaPerLand: 43_560,
  });
  expect(refusalOf(() => hivesNeeded(0.5, 1, metric))).toMatchObject({
    unit: 'sqM',
    landUnit: 'hectare',
    areaPerLand: 10_000,
  });
  expect(hivesNeeded(1, 1, metric)).toBe(1);
});

test('bounds', () => {
  for (const bad of [0, -5, NaN, Infinity]) {
    expect(refusalOf(() => hivesNeeded(bad, 1, us))).toMatchObject({
      code: 'outOfRange',
      name: 'area',
      above: 0,
    });
  }
  expect(refusalOf(() => hivesNeeded(1000, -1, us))).toMatchObject({
    name: 'hives_per_acre',
    unit: 'perAcre',
  });
  expect(refusalOf(() => hivesNeeded(1000, -1, metric))).toMatchObject({ unit: 'perHectare' });
});

test('working: the last step is the value; the default has its source', () => {
  const { value, steps, assumptions, remarks } = recording((record) =>
    hivesNeeded(100_000, undefined, us, record),
  );
  expect(steps.at(-1)).toMatchObject({ result: value, rounded: 'up' });
  expect(value).toBe(hivesNeeded(100_000, undefined, us));
  expect(assumptions).toEqual([
    { assumed: 'hives_per_acre', value: 1, unit: 'perAcre', ground: 'nc-note-7b' },
  ]);
  expect(remarks).toEqual(['hivesByFlowers', 'smallFieldsHaveBees']);
});
