import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import * as seedTest from '../../src/functions/seedTest';
import { leftOut, run } from './run';

const close = (value: number): unknown => expect.closeTo(value, 4);

describe('SEED.TEST', () => {
  test('320 of 400: 80 %, from 75.74 to 83.81 % (computed with other software), in one row', () => {
    const row = [[0.8, close(0.7574), close(0.8381)]];
    for (const nothing of leftOut) expect(run('SEED.TEST', 320, 400, nothing)).toEqual(row);
    expect(run('SEED.TEST', '320', [[400]], '95%')).toEqual(row);
  });

  test('none and all germinated (hand computed: 0.025^(1/10) = 0.6915)', () => {
    expect(run('SEED.TEST', 0, 10)).toEqual([[0, 0, close(0.3085)]]);
    expect(run('SEED.TEST', 10, 10)).toEqual([[1, close(0.6915), 1]]);
  });

  test('refusals', () => {
    expect(run('SEED.TEST', 401, 400)).toBe(
      '#VALUE! The number of seeds that germinated is 401. It must be at least 0 seeds and at most 400 seeds.',
    );
    expect(run('SEED.TEST', 80.5, 100)).toMatch(/germinated is 80\.5\. Give a whole number/);
    expect(run('SEED.TEST', 80, 100, 1)).toBe('#VALUE! The confidence is 1. It must be above 0 and below 1.');
    expect(run('SEED.TEST', 80, 100, 95)).toMatch(/write 95 percent as 95%/);
    expect(run('SEED.TEST', 80, null)).toMatch(/number of seeds tested is missing\. Fill it in/);
    expect(run('SEED.TEST', '80%', 'all')).toMatch(/Type digits/);
    expect(run('SEED.TEST', { error: '#REF!' }, 100)).toMatch(/Mend that cell first/);
  });
});

describe('SEED.TOLERANCE', () => {
  test('0.16 at 80 %, 0.15 at 80.5 %, which counts as 81 (7 CFR 201.55)', () => {
    expect(run('SEED.TOLERANCE', 0.8, 4)).toBe(0.16);
    expect(run('SEED.TOLERANCE', '80.5%', '4')).toBe(0.15);
    expect(run('SEED.TOLERANCE', [[0.8]], [[2]])).toBe(0.13);
  });

  test('refusals', () => {
    expect(run('SEED.TOLERANCE', 0.65, 4)).toBe(
      '#N/A There is no tolerated range here for an average of 65%: the table kept here, out of 7 CFR 201.55, runs from 70% to 99% for 4 replicates. Look it up in the regulation, or test again.',
    );
    expect(run('SEED.TOLERANCE', 0.8, 3)).toBe(
      '#VALUE! The number of replicates is "3". Choose one of: 4, 2.',
    );
    expect(run('SEED.TOLERANCE', 80, 4)).toMatch(/write 80 percent as 80%/);
    expect(run('SEED.TOLERANCE', 0.8)).toMatch(/number of replicates is missing/);
    expect(run('SEED.TOLERANCE', 'good', 4)).toMatch(/Type digits/);
    expect(run('SEED.TOLERANCE', { error: '#DIV/0!' }, 4)).toMatch(/#DIV\/0!/);
  });
});

test('the workings can be read, and cite what they stand on', () => {
  const said = (lines: ReturnType<typeof explain>): string =>
    lines.map(({ title, formula, numbersPutIn }) => `${title} ${formula} ${numbersPutIn}`).join('\n');
  const ofTest = said(explain(seedTest.test, [320, 400]));
  expect(ofTest).toMatch(/Biometrika.*from memory, check/);
  expect(ofTest).toMatch(/common practice, no source/);
  const ofTolerance = said(explain(seedTest.tolerance, [0.805, 4]));
  expect(ofTolerance).toMatch(/7 CFR 201\.55/);
  for (const text of [ofTest, ofTolerance]) expect(text).not.toMatch(/[{}_]/);
});
