import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { bushels, sizeOfFruit } from '../../src/functions/harvestSize';
import { leftOut, run } from './run';

test('HARVEST.PICKS: 11 and 8 picks in 21 days (computed in picksInHarvest.test)', () => {
  expect(run('HARVEST.PICKS', '2026-07-05', '2026-07-26', 2)).toBe(11);
  expect(run('HARVEST.PICKS', 46208.5, [[46229]], '3')).toBe(8);
  expect(run('HARVEST.PICKS', '2026-07-26', '2026-07-05', 2)).toMatch(
    /^#VALUE! The last date \(2026-07-05\)/,
  );
  expect(run('HARVEST.PICKS', '2026-07-05', '2028-07-26', 1)).toBe(
    '#VALUE! These are 753 picks, and at most 732 are given. Check the year of each date, or take more days between.',
  );
  expect(run('HARVEST.PICKS', '2026-07-05', '2026-07-26', 0)).toMatch(
    /at least 0\.5 days and at most 366 days/,
  );
});

test('HARVEST.FORECAST: 350 lb (computed in harvestForecast.test)', () => {
  expect(run('HARVEST.FORECAST', '3.5', 200, [[0.5]])).toBe(350);
  expect(run('HARVEST.FORECAST', -1, 200, 0.5)).toBe(
    '#VALUE! The number of fruit per plant is -1. It must be at least 0.',
  );
  expect(run('HARVEST.FORECAST', 3.5, 200, '8 oz')).toMatch(/no unit/);
});

test('HARVEST.BUSHELS: 48 lb of cucumbers (USDA AIB 539)', () => {
  expect(run('HARVEST.BUSHELS', 48, 'cucumber')).toBe(1);
  expect(run('HARVEST.BUSHELS', '480', [['Pickles']])).toBe(10);
  expect(run('HARVEST.BUSHELS', '1,200', 'cucumber')).toMatch(/the comma is in the way/);
  expect(run('HARVEST.BUSHELS', 48, 'pumpkin')).toMatch(
    /^#N\/A There is no published weight of a bushel for pumpkin/,
  );
  const said = explain(bushels, [100, 'zucchini'])
    .map((line) => Object.values(line).join(' '))
    .join('\n');
  expect(said).toMatch(/Michigan State[^]*Texas A&M[^]*ask your buyer[^]*25 lb/);
  expect(said).not.toMatch(/[{}_]/);
});

test('HARVEST.SIZE: under, ready, over (bounds as in sizeVerdict.test)', () => {
  for (const nothing of leftOut) {
    expect(run('HARVEST.SIZE', 5, 'zucchini', nothing, nothing)).toBe('under');
    expect(run('HARVEST.SIZE', 7, 'zucchini', nothing, 'us')).toBe('ready');
    expect(run('HARVEST.SIZE', 9, 'zucchini', nothing)).toBe('over');
  }
  expect(run('HARVEST.SIZE', 3, 'cucumber')).toBe('under');
  expect(run('HARVEST.SIZE', 3, 'cucumber', 'Pickles')).toBe('ready');
  expect(run('HARVEST.SIZE', 20.32, 'cucumber', '', 'metric')).toBe('ready');
});

test('HARVEST.SIZE: what is judged by ripeness is told its sign', () => {
  expect(run('HARVEST.SIZE', 6, 'cantaloupe')).toBe(
    '#N/A There is no picking size for muskmelon: it is judged by ripeness. Pick it when it comes off the vine at a light pull, netting rough and ground color tan to yellow.',
  );
  expect(run('HARVEST.SIZE', 9, 'zucchini', 'pickles')).toMatch(
    /^#N\/A There is no published picking size of summer squash/,
  );
  expect(run('HARVEST.SIZE', 9, 'zucchini', 'relish')).toMatch(/Choose one of: fresh, pickles/);
  const said = explain(sizeOfFruit, [12, 'pumpkin'])
    .map((line) => Object.values(line).join(' '))
    .join('\n');
  expect(said).toMatch(/diameter of pumpkin[^]*Size is not ripeness[^]*Illinois/);
  expect(said).not.toMatch(/[{}_]/);
});
