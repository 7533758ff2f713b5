import { expect, test } from 'vitest';
import { afterManure, afterSpray } from '../../src/functions/dateWaits';
import { explain } from '../../src/functions/explain';
import { english } from '../../src/texts/english';
import { leftOut, run } from './run';

const workingOf = (...call: Parameters<typeof explain>): string =>
  explain(...call)
    .map((line) => Object.values(line).join(' '))
    .join('\n');

test('DATE.AFTERSPRAY: the label’s days after the day (calendar); an hour of it waits for the next', () => {
  expect(run('DATE.AFTERSPRAY', '2026-07-05', 3)).toBe('2026-07-08');
  expect(run('DATE.AFTERSPRAY', [['2026-07-05']], '0')).toBe('2026-07-05');
  expect(run('DATE.AFTERSPRAY', 46208.75, 3)).toBe('2026-07-09');
});

test('DATE.AFTERSPRAY: no days are supplied, and the label is named', () => {
  for (const nothing of leftOut) {
    expect(run('DATE.AFTERSPRAY', '2026-07-05', nothing)).toBe(
      '#VALUE! The number of days on the label is missing. Fill it in.',
    );
  }
  expect(run('DATE.AFTERSPRAY', '2026-07-05', -3)).toMatch(/at least 0 days and at most 365 days/);
  const said = workingOf(afterSpray, ['2026-07-05', 3]);
  expect(said).toContain(english.cautions.pesticides);
  expect(said).toMatch(/day of spraying 2026-07-05/);
  expect(said).not.toMatch(/[{}_]/);
});

test('DATE.AFTERMANURE: 120 and 90 days (7 CFR 205.203(c)(1))', () => {
  for (const yes of [true, 'yes', 1]) {
    expect(run('DATE.AFTERMANURE', '2026-03-02', yes)).toBe('2026-06-30');
  }
  for (const no of [false, 'no', [[false]]]) {
    expect(run('DATE.AFTERMANURE', '2026-03-02', no)).toBe('2026-05-31');
  }
});

test('DATE.AFTERMANURE: an empty cell is not a no, however it comes; the rules are named', () => {
  for (const nothing of [...leftOut, 0, [[0]]]) {
    expect(run('DATE.AFTERMANURE', '2026-03-02', nothing)).toBe(
      '#VALUE! The contact of the fruit with soil is missing. Fill it in.',
    );
  }
  expect(run('DATE.AFTERMANURE', '2026-03-02', 'maybe')).toMatch(/Answer yes or no/);
  const said = workingOf(afterManure, ['2026-03-02', true]);
  expect(said).toMatch(/7 CFR 205\.203\(c\)\(1\)[^]*organic rule[^]*Food-safety rules/);
  expect(said).not.toMatch(/[{}_]/);
});
