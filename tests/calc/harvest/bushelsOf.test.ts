import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bushelsOf } from '../../../src/calc/harvest/bushelsOf';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  ['cucumber', 48, 'USDA AIB 539'],
  ['gherkins', 48, 'USDA AIB 539'],
  ['zucchini', 40, 'Michigan State 01600150'],
  ['butternut', 50, 'from memory, check'],
  ['cantaloupe', 60, 'from memory, check'],
])('a bushel of %s: %d lb (%s)', (crop, pounds) => {
  expect(bushelsOf(pounds, crop)).toBe(1);
});

test('AG-552, table 11: 688 bushels an acre are 33,024 lb (hand computed at 48 lb)', () => {
  expect(bushelsOf(33_024, 'pickling cucumber')).toBe(688);
});

test('harvests add up', () => {
  const pounds = fc.double({ min: 0, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(pounds, pounds, (one, other) => {
      const together = bushelsOf(one + other, 'cucumber');
      expect(bushelsOf(one, 'cucumber') + bushelsOf(other, 'cucumber')).toBeCloseTo(together, 6);
    }),
    seeded,
  );
});

test('refusals: what goes by the piece has no bushel', () => {
  for (const crop of ['pumpkin', 'pie pumpkin', 'watermelon', 'seedless watermelon', 'gourd']) {
    expect(refusalOf(() => bushelsOf(100, crop))).toMatchObject({ code: 'noBushel' });
  }
  expect(refusalOf(() => bushelsOf(100, 'tomato'))).toMatchObject({ code: 'unknownName' });
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => bushelsOf(bad, 'cucumber'))).toMatchObject({ code: 'outOfRange', name: 'pounds' });
  }
  expect(bushelsOf(0, 'cucumber')).toBe(0);
});

test('the working has the weight of each source; a weight without one is an assumption', () => {
  const { value, steps, assumptions, remarks } = recording((record) => bushelsOf(100, 'zucchini', record));
  expect(steps.map(({ step, result }) => [step, result])).toEqual([
    ['bushelWeight', 40],
    ['otherBushelWeight', 44],
    ['otherBushelWeight', 25],
    ['bushelsOf', value],
  ]);
  expect(assumptions).toMatchObject([{ value: 44, ground: 'common practice, no source' }]);
  expect(remarks).toEqual(['bushelsDiffer']);
});
