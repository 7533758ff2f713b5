import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickingHours } from '../../../src/calc/budget/pickingHours';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('400 ft picked 11 times at 200 ft an hour: 22 hours (hand computed)', () => {
  expect(pickingHours(400, 11, 200)).toBe(22);
});

test('pick by pick the hours add up', () => {
  const lengths = fc.double({ min: 1, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(lengths, fc.integer({ min: 1, max: 100 }), lengths, (length, picks, rate) => {
      const sum = Array.from({ length: picks }, () => pickingHours(length, 1, rate)).reduce(
        (a, b) => a + b,
        0,
      );
      expect(pickingHours(length, picks, rate) / sum).toBeCloseTo(1, 9);
    }),
    seeded,
  );
});

test('refusals', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => pickingHours(bad, 11, 200))).toMatchObject({ name: 'row_length' });
    expect(refusalOf(() => pickingHours(400, bad, 200))).toMatchObject({ name: 'picks', atLeast: 1 });
    expect(refusalOf(() => pickingHours(400, 11, bad))).toMatchObject({ name: 'rate', above: 0 });
  }
  expect(refusalOf(() => pickingHours(400, 2.5, 200))).toMatchObject({ code: 'notWhole' });
});

test('the working has the one step and says what comes on top', () => {
  const { value, steps, remarks } = recording((record) => pickingHours(400, 11, 200, record));
  expect(steps).toMatchObject([{ step: 'pickingHours', result: value, unit: 'hours' }]);
  expect(remarks).toEqual(['timeYourOwnPicking']);
});
