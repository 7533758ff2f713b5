import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowYield } from '../../../src/calc/harvest/rowYield';
import { rowForDemand } from '../../../src/calc/row/rowForDemand';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('UF/IFAS, summer squash: 10 ft of row bear 15 lb, which is 5 lb a week for 3 weeks', () => {
  expect(rowForDemand(5, 150, 3)).toBe(10);
});

test('30 lb a week for 4 weeks at 150 lb per 100 ft: 80 ft (hand computed: 120 / 150 x 100)', () => {
  expect(rowForDemand(30, 150, 4)).toBe(80);
});

test('what that row bears is what was wanted, week by week', () => {
  const amounts = fc.integer({ min: 1, max: 1e5 }).map((hundredths) => hundredths / 100);
  const weeks = fc.integer({ min: 1, max: 52 });
  fc.assert(
    fc.property(amounts, amounts, weeks, (perWeek, per100, picked) => {
      let left = rowYield(rowForDemand(perWeek, per100, picked), per100, 1);
      for (let week = 0; week < picked; week++) left -= perWeek;
      expect(Math.abs(left) / (perWeek * picked)).toBeLessThan(1e-9);
    }),
    seeded,
  );
});

test('bounds: 52 weeks are in, more, none and anything below are out', () => {
  expect(rowForDemand(1, 52, 52)).toBe(100);
  for (const bad of [0, -1, NaN, Infinity, 52.5]) {
    expect(refusalOf(() => rowForDemand(30, 150, bad))).toMatchObject({
      code: 'outOfRange',
      name: 'picking_weeks',
      above: 0,
      atMost: 52,
    });
  }
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => rowForDemand(bad, 150, 4))).toMatchObject({ name: 'wanted_per_week', above: 0 });
    expect(refusalOf(() => rowForDemand(30, bad, 4))).toMatchObject({ name: 'yield_per_100', above: 0 });
  }
});

test('the working has the demand of the season, the row, and what the yield is', () => {
  const { value, steps, remarks } = recording((record) => rowForDemand(30, 150, 4, record));
  expect(steps.map(({ step, result }) => [step, result])).toEqual([
    ['wantedInSeason', 120],
    ['rowForDemand', value],
  ]);
  expect(remarks).toEqual(['picksAreUneven']);
});
