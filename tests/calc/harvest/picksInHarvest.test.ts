import { eachDayOfInterval } from 'date-fns';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { picksInHarvest } from '../../../src/calc/harvest/picksInHarvest';
import { anyDay, dayNumber, seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const first = dayNumber('2026-07-05');

test.each([
  [21, 2, 11],
  [21, 3, 8],
  [21, 7 / 3, 10],
  [0, 2, 1],
  [1, 2, 1],
  [21, 0.7, 31],
])('%d days, a pick every %d: %d (hand computed)', (days, every, picks) => {
  expect(picksInHarvest(first, first + days, every)).toBe(picks);
});

test('agrees with picking day by day (date-fns eachDayOfInterval with a step)', () => {
  const gaps = fc.integer({ min: 1, max: 60 });
  fc.assert(
    fc.property(anyDay, fc.integer({ min: 0, max: 300 }), gaps, (start, days, every) => {
      const epoch = new Date(0);
      const end = new Date(days * 86_400_000);
      const picked = eachDayOfInterval({ start: epoch, end }, { step: every });
      expect(picksInHarvest(start, start + days, every)).toBe(picked.length);
    }),
    seeded,
  );
});

test('bounds and refusals', () => {
  expect(picksInHarvest(first, first + 365, 0.5)).toBe(731);
  expect(refusalOf(() => picksInHarvest(first, first + 366, 0.5))).toEqual({
    code: 'tooManyPicks',
    count: 733,
    most: 732,
  });
  expect(refusalOf(() => picksInHarvest(first, first - 1, 2))).toEqual({
    code: 'lastBeforeFirst',
    firstDay: first,
    lastDay: first - 1,
  });
  for (const bad of [0, 0.4, -1, 367, NaN, Infinity]) {
    expect(refusalOf(() => picksInHarvest(first, first + 21, bad))).toMatchObject({
      code: 'outOfRange',
      name: 'every_days',
      atLeast: 0.5,
    });
  }
  expect(refusalOf(() => picksInHarvest(NaN, first, 2))).toMatchObject({ name: 'first_pick' });
  expect(refusalOf(() => picksInHarvest(first, 0.5, 2))).toMatchObject({ name: 'last_pick' });
});

test('the working has the one step, its rounding, and why to pick clean', () => {
  const { value, steps, remarks } = recording((record) => picksInHarvest(first, first + 21, 2, record));
  expect(steps).toMatchObject([{ step: 'picksInHarvest', result: value, unit: 'picks', rounded: 'down' }]);
  expect(remarks).toEqual(['leftFruitStopsSet']);
});
