import { expect, test } from 'vitest';
import { leftOut, run } from './run';

/** 2026-07-07, by the spreadsheet's own count: 46023 is 2026-01-01, plus 187 days. */
const lastPlanting = 46_210;

test('STAND.COUNT: 66 plants on 100 ft meant a foot apart are 0.66, 12 on 6 m at 40 cm 0.8 (hand computed)', () => {
  for (const nothing of leftOut) expect(run('STAND.COUNT', 66, 100, 12, nothing)).toBe(0.66);
  expect(run('STAND.COUNT', '12', [[6]], 40, 'metric')).toBeCloseTo(0.8, 12);
  expect(run('STAND.COUNT', 0, 100, 12)).toBe(0);
});

test('STAND.REPLANT: three words (the least stand is judgement)', () => {
  for (const nothing of leftOut) {
    expect(run('STAND.REPLANT', 0.8, '2026-07-01', '2026-07-07', nothing)).toBe('keep');
    expect(run('STAND.REPLANT', 0.6, '2026-07-07', '2026-07-07', nothing)).toBe('fill gaps');
    expect(run('STAND.REPLANT', 0.6, '2026-07-08', '2026-07-07', nothing)).toBe('too late');
  }
  expect(run('STAND.REPLANT', '60%', [['2026-07-08']], '2026-07-07', '50%')).toBe('keep');
});

test('any hour of the last day is in time', () => {
  expect(run('STAND.REPLANT', 0.6, lastPlanting + 0.9, lastPlanting)).toBe('fill gaps');
  expect(run('STAND.REPLANT', 0.6, lastPlanting + 1, lastPlanting + 0.9)).toBe('too late');
});

test('refusals say what to do', () => {
  expect(run('STAND.COUNT', 66, 0, 12)).toBe('#VALUE! The row length is 0. It must be above 0 ft.');
  expect(run('STAND.COUNT', -1, 100, 12)).toMatch(/plants standing is -1\. It must be at least 0 plants/);
  expect(run('STAND.REPLANT', 66, '2026-07-01', '2026-07-07')).toMatch(/write 66 percent as 66%/);
  expect(run('STAND.REPLANT', 0.6, 'now', '2026-07-07')).toMatch(
    /date of today is "now", which is not a date/,
  );
  expect(run('STAND.REPLANT', 0.6, '2026-07-01')).toMatch(/last planting date is missing/);
  expect(run('STAND.REPLANT', 0.6, '2026-07-01', '2026-07-07', 0)).toMatch(
    /share worth keeping is 0\. It must be above 0/,
  );
  expect(run('STAND.REPLANT', { error: '#DIV/0!' }, '2026-07-01', '2026-07-07')).toMatch(/#DIV\/0!/);
});
