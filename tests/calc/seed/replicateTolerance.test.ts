import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { replicateTolerance } from '../../../src/calc/seed/replicateTolerance';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

describe('replicateTolerance', () => {
  test.each([
    [0.99, 4, 0.05],
    [0.9, 4, 0.12],
    [0.8, 4, 0.16],
    [0.81, 4, 0.15],
    [0.7, 4, 0.18],
    [0.97, 2, 0.06],
    [0.8, 2, 0.13],
    [0.71, 2, 0.14],
  ])('%d of %d replicates: %d (7 CFR 201.55, table)', (mean, replicates, tolerance) => {
    expect(replicateTolerance(mean, replicates)).toBe(tolerance);
  });

  test('replicates 84, 78, 88, 72 have a mean of 80.5 and a range of 16: a retest at 81 %, none at 80 %', () => {
    const mean = (0.84 + 0.78 + 0.88 + 0.72) / 4;
    const range = (88 - 72) / 100;
    expect(range).toBeGreaterThan(replicateTolerance(mean, 4));
    expect(range).toBeLessThanOrEqual(replicateTolerance(0.8, 4));
  });

  test('every mean of four replicates rounds its half up, however binary fractions hold it', () => {
    for (let quarters = 280; quarters < 398; quarters++) {
      // In whole numbers: per cent are quarters / 4, a half up.
      const percent = Math.floor((quarters + 2) / 4);
      const expected = replicateTolerance(percent / 100, 4);
      expect(replicateTolerance(quarters / 400, 4), `${quarters / 4} %`).toBe(expected);
      // As a spreadsheet's average of shares leaves it.
      const shares = [0, 1, 2, 3].map((i) => Math.floor((quarters + i) / 4) / 100);
      const average = shares.reduce((sum, one) => sum + one, 0) / 4;
      expect(replicateTolerance(average, 4), `${quarters / 4} %`).toBe(expected);
    }
  });

  test('0.695 counts as 70 %, 0.6949 is outside, 0.9949 counts as 99 %, 0.995 is outside', () => {
    expect(replicateTolerance(0.695, 4)).toBe(0.18);
    expect(replicateTolerance(0.9949, 4)).toBe(0.05);
    for (const outside of [0, 0.3, 0.6949, 0.995, 1]) {
      expect(refusalOf(() => replicateTolerance(outside, 4))).toMatchObject({
        code: 'noTolerance',
        from: 70,
        to: 99,
      });
    }
  });

  test('two replicates: the copy that was read has 71 to 97 %', () => {
    for (const outside of [0.7, 0.98]) {
      expect(refusalOf(() => replicateTolerance(outside, 2))).toMatchObject({ from: 71, to: 97 });
    }
  });

  test('a lower average never tolerates less, and two replicates never more than four', () => {
    const percent = fc.integer({ min: 7100, max: 9700 }).map((parts) => parts / 10_000);
    fc.assert(
      fc.property(percent, percent, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(replicateTolerance(low, 4)).toBeGreaterThanOrEqual(replicateTolerance(high, 4));
        expect(replicateTolerance(low, 2)).toBeGreaterThanOrEqual(replicateTolerance(high, 2));
        expect(replicateTolerance(low, 2)).toBeLessThan(replicateTolerance(low, 4));
      }),
      seeded,
    );
  });

  test('bad input', () => {
    expect(refusalOf(() => replicateTolerance(80, 4))).toMatchObject({ code: 'percentForShare' });
    expect(refusalOf(() => replicateTolerance(-0.1, 4))).toMatchObject({ code: 'outOfRange', name: 'mean' });
    expect(refusalOf(() => replicateTolerance(NaN, 4))).toMatchObject({ code: 'outOfRange' });
    for (const count of [3, 400, 0, NaN]) {
      expect(refusalOf(() => replicateTolerance(0.8, count))).toMatchObject({
        code: 'notAChoice',
        name: 'replicates',
        choices: ['4', '2'],
      });
    }
  });

  test('the working shows the rounding and ends in the tolerance', () => {
    const { value, steps } = recording((record) => replicateTolerance(0.805, 4, record));
    expect(value).toBe(replicateTolerance(0.805, 4));
    expect(steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
      ['meanInPercent', 81, 'up'],
      ['replicateTolerance', value, undefined],
    ]);
    const down = recording((record) => replicateTolerance(0.8025, 4, record));
    expect(down.steps[0]).toMatchObject({ result: 80, rounded: 'down' });
    expect(recording((record) => replicateTolerance(0.8, 4, record)).steps[0]?.rounded).toBeUndefined();
  });
});
