import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowInArea } from '../../../src/calc/row/rowInArea';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { measured } from '../plants/placing';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('an acre in 30 in rows: 17,424 ft of row (Penn State Extension, planting and stand assessments)', () => {
  expect(rowInArea(43_560, 2.5, us)).toBe(17_424);
});

test('an acre in 8 ft rows: 5,445 ft; a hectare in 2 m rows: 5,000 m (hand computed)', () => {
  expect(rowInArea(43_560, 8, us)).toBe(5445);
  expect(rowInArea(10_000, 2, metric)).toBe(5000);
});

test('a plot as wide as a number of rows has as many lengths of row', () => {
  fc.assert(
    fc.property(
      measured(1, 500),
      measured(1, 12),
      fc.integer({ min: 1, max: 50 }),
      (length, spacing, rows) => {
        expect(rowInArea(length * spacing * rows, spacing, us) / (length * rows)).toBeCloseTo(1, 12);
      },
    ),
    seeded,
  );
});

test('refusals name the argument', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => rowInArea(bad, 8, us))).toMatchObject({
      code: 'outOfRange',
      name: 'area',
      unit: 'sqFt',
    });
    expect(refusalOf(() => rowInArea(100, bad, metric))).toMatchObject({ name: 'row_spacing', unit: 'm' });
  }
});

test('the working has the one step', () => {
  const { value, steps } = recording((record) => rowInArea(43_560, 8, us, record));
  expect(steps).toEqual([
    { step: 'rowInArea', inputs: { area: 43_560, row_spacing: 8 }, result: value, unit: 'ft' },
  ]);
});
