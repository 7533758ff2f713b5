import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coverLength } from '../../../src/calc/supply/coverLength';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('4 rows of 100 ft, 3 ft buried at each end: 424 ft (hand computed)', () => {
  expect(coverLength(4, 100, 3, us)).toBe(424);
  expect(coverLength(2, 30, 0, metric)).toBe(60);
});

test('rows laid one by one add up, and the tuck is buried twice in each', () => {
  const tucks = fc.integer({ min: 0, max: 10 });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 1, max: 900 }),
      tucks,
      (n, length, tuck) => {
        const laid = Array.from({ length: n }, () => tuck + length + tuck).reduce((sum, one) => sum + one, 0);
        expect(coverLength(n, length, tuck, us)).toBe(laid);
      },
    ),
    seeded,
  );
});

test('refusals name the argument and its unit', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => coverLength(bad, 100, 3, us))).toMatchObject({ name: 'rows' });
    expect(refusalOf(() => coverLength(4, bad, 3, us))).toMatchObject({ name: 'row_length', unit: 'ft' });
  }
  expect(refusalOf(() => coverLength(4, 100, -1, metric))).toMatchObject({ name: 'end_tuck', unit: 'm' });
  expect(refusalOf(() => coverLength(4.5, 100, 3, us))).toMatchObject({ code: 'notWhole' });
});

test('the working has the one step and says that the width is another matter', () => {
  const { value, steps, remarks } = recording((record) => coverLength(4, 100, 3, us, record));
  expect(steps).toEqual([
    {
      step: 'coverLength',
      inputs: { rows: 4, row_length: 100, end_tuck: 3 },
      result: value,
      unit: 'ft',
    },
  ]);
  expect(remarks).toEqual(['coverWidthApart']);
});
