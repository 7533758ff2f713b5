import fc from 'fast-check';
import { expect, test } from 'vitest';
import { traysNeeded } from '../../../src/calc/tray/traysNeeded';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('131 cells in trays of 72: 2; 144: 2; 145: 3; 1: 1 (hand computed)', () => {
  expect([131, 144, 145, 1].map((cells) => traysNeeded(cells, 72))).toEqual([2, 2, 3, 1]);
});

test('as many as filling one after the other takes', () => {
  const counts = fc.integer({ min: 1, max: 3000 });
  fc.assert(
    fc.property(counts, fc.integer({ min: 1, max: 300 }), (cells, perTray) => {
      let trays = 0;
      for (let left = cells; left > 0; left -= perTray) trays++;
      expect(traysNeeded(cells, perTray)).toBe(trays);
    }),
    seeded,
  );
});

test('refusals name the argument', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => traysNeeded(bad, 72))).toMatchObject({ code: 'outOfRange', name: 'cells' });
    expect(refusalOf(() => traysNeeded(131, bad))).toMatchObject({
      code: 'outOfRange',
      name: 'cells_per_tray',
    });
  }
  expect(refusalOf(() => traysNeeded(1.5, 72))).toMatchObject({ code: 'notWhole', name: 'cells' });
  expect(refusalOf(() => traysNeeded(131, 7.2))).toMatchObject({ code: 'notWhole', name: 'cells_per_tray' });
});

test('the working has the one step and its rounding', () => {
  const { value, steps } = recording((record) => traysNeeded(131, 72, record));
  expect(steps).toEqual([
    {
      step: 'traysNeeded',
      inputs: { cells: 131, cells_per_tray: 72 },
      result: value,
      unit: 'trays',
      rounded: 'up',
    },
  ]);
  expect(recording((record) => traysNeeded(144, 72, record)).steps[0]).not.toHaveProperty('rounded');
});
