import { describe, expect, test } from 'vitest';
import { leftOut, run } from './run';

const south = ['2026-10-05', '2027-04-10'] as const;

describe('SEASON.DAYS', () => {
  test('north, and south over New Year (hand computed)', () => {
    expect(run('SEASON.DAYS', '2026-05-02', '2026-10-10')).toBe(161);
    expect(run('SEASON.DAYS', ...south)).toBe(187);
    expect(run('SEASON.DAYS', [[46144]], { type: 'Double', basicValue: 46305 })).toBe(161);
  });

  test('a fraction of a day makes the season shorter, not longer', () => {
    expect(run('SEASON.DAYS', 46144.25, 46305.75)).toBe(160);
  });

  test('reversed dates get the advice for the southern hemisphere, a wrong year its own', () => {
    expect(run('SEASON.DAYS', '2026-10-05', '2026-04-10')).toBe(
      '#VALUE! The first frost (2026-04-10) must come after the last frost (2026-10-05). South of the equator the first frost of fall is in the next calendar year: type its year too.',
    );
    expect(run('SEASON.DAYS', '2026-05-02', '2026-05-02')).toMatch(
      /^#VALUE! The first frost .* must come after/,
    );
    expect(run('SEASON.DAYS', '2026-05-02', '2027-10-10')).toBe(
      '#VALUE! The last frost (2026-05-02) and the first frost (2027-10-10) are 526 days apart, a whole year or more. Check the year of each date: the first frost is the next one after the last frost.',
    );
  });

  test('missing, no date, an error', () => {
    for (const nothing of leftOut) {
      expect(run('SEASON.DAYS', '2026-05-02', nothing)).toBe(
        '#VALUE! The first frost is missing. Fill it in.',
      );
    }
    expect(run('SEASON.DAYS', 'May', '2026-10-10')).toMatch(/Type a date such as 2026-05-02/);
    expect(run('SEASON.DAYS', '2026-05-02', { error: '#N/A' })).toBe(
      '#VALUE! The first frost is itself an error (#N/A). Mend that cell first.',
    );
  });
});

describe('SEASON.SPARE', () => {
  test('to spare, none, short (hand computed)', () => {
    expect(run('SEASON.SPARE', '2026-05-02', '2026-10-10', 95)).toBe(66);
    expect(run('SEASON.SPARE', ...south, ' 187 ')).toBe(0);
    expect(run('SEASON.SPARE', '2026-05-02', '2026-10-10', [[170]])).toBe(-9);
  });

  test('refusals say what to do', () => {
    expect(run('SEASON.SPARE', '2026-10-10', '2026-05-02', 95)).toMatch(/^#VALUE! .*South of the equator/);
    expect(run('SEASON.SPARE', '2026-05-02', '2026-10-10', 46300)).toBe(
      '#VALUE! The number of days needed is 46300. It must be at least 0 days and at most 730 days.',
    );
    expect(run('SEASON.SPARE', '2026-05-02', '2026-10-10', 'long')).toMatch(
      /^#VALUE! .*not a number\. Type digits/,
    );
    for (const nothing of leftOut) {
      expect(run('SEASON.SPARE', '2026-05-02', '2026-10-10', nothing)).toMatch(/is missing\. Fill it in\.$/);
    }
    expect(run('SEASON.SPARE', { error: '#VALUE!' }, '2026-10-10', 95)).toMatch(/Mend that cell first/);
  });
});
