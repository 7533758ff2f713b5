import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeAnswer } from '../../../src/calc/check/judgeAnswer';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const verdictOn = (...args: Parameters<typeof judgeAnswer>): string => judgeAnswer(...args).verdict;

// The rules are a project convention; the differences are hand computed.
describe('numbers', () => {
  test.each([
    [133, 133, 'right'],
    [132, 133, 'tooLow'],
    [134, 133, 'tooHigh'],
    [133.4, 133, 'tooHigh'],
    [46_159, 46_158, 'tooHigh'],
    [0, 0, 'right'],
    [-3, -3, 'right'],
    [-4, -3, 'tooLow'],
  ])('%d for the count or date %d: %s', (answer, correct, verdict) => {
    expect(verdictOn(answer, correct, undefined)).toBe(verdict);
  });

  test.each([
    [0.1825, 0.1825, 'right'],
    [0.183, 0.1825, 'right'],
    [0.1816, 0.1825, 'right'],
    [0.1835, 0.1825, 'tooHigh'],
    [0.18, 0.1825, 'tooLow'],
    [-0.1835, -0.1825, 'tooLow'],
    [1.004e-10, 1e-10, 'right'],
    [0, 1e-10, 'tooLow'],
  ])('%d for %d: %s, half a per cent off at most', (answer, correct, verdict) => {
    expect(verdictOn(answer, correct, undefined)).toBe(verdict);
  });

  test('how far off: 145 for 133 is 12 too high, 9.02 %; 0 has no share', () => {
    expect(judgeAnswer(145, 133, undefined)).toEqual({ verdict: 'tooHigh', difference: 12, share: 12 / 133 });
    expect(judgeAnswer(-90, -100, undefined)).toEqual({ verdict: 'tooHigh', difference: 10, share: 0.1 });
    expect(judgeAnswer(2, 0, undefined)).toEqual({ verdict: 'tooHigh', difference: 2 });
  });

  test('a tolerance holds for whole numbers too, its bound included; 0 is exact', () => {
    expect(verdictOn(95, 100, 0.05)).toBe('right');
    expect(verdictOn(94, 100, 0.05)).toBe('tooLow');
    expect(verdictOn(0.1826, 0.1825, 0)).toBe('tooHigh');
    expect(verdictOn(0.1825, 0.1825, 0)).toBe('right');
  });

  test('rounding error of binary fractions is none: 0.1 + 0.2 for 0.3, 3 for 0.6 / 0.2', () => {
    expect(verdictOn(0.1 + 0.2, 0.3, 0)).toBe('right');
    expect(verdictOn(3, 0.6 / 0.2, undefined)).toBe('right');
    expect(verdictOn(0.6 / 0.2, 3, undefined)).toBe('right');
  });

  test('any number is right for itself; too high one way is too low the other; the signs change places', () => {
    const numbers = fc.double({ noNaN: true, min: -1e9, max: 1e9 });
    fc.assert(
      fc.property(
        numbers,
        numbers,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (answer, correct, tolerance) => {
          expect(verdictOn(correct, correct, tolerance)).toBe('right');
          const verdict = verdictOn(answer, correct, tolerance);
          const mirrored = { right: 'right', tooHigh: 'tooLow', tooLow: 'tooHigh' } as Record<string, string>;
          expect(verdictOn(-answer, -correct, tolerance)).toBe(mirrored[verdict]);
          if (verdict === 'tooHigh') expect(answer).toBeGreaterThan(correct);
          if (verdict === 'tooLow') expect(answer).toBeLessThan(correct);
        },
      ),
      seeded,
    );
  });
});

describe('words', () => {
  test('capitals and outer spaces do not count', () => {
    expect(verdictOn(' Fill Gaps', 'fill gaps', undefined)).toBe('right');
    expect(verdictOn('keep', 'fill gaps', undefined)).toBe('otherWord');
    expect(verdictOn(true, 'TRUE', undefined)).toBe('right');
    expect(verdictOn(false, true, undefined)).toBe('otherWord');
  });

  test('a word for a number and a number for a word', () => {
    expect(verdictOn('many', 133, undefined)).toBe('numberWanted');
    expect(verdictOn(133, 'pumpkin', undefined)).toBe('wordWanted');
  });
});

test('a tolerance is a share from 0 to 1', () => {
  expect(refusalOf(() => judgeAnswer(1, 1, 5))).toEqual({
    code: 'percentForShare',
    name: 'tolerance',
    value: 5,
  });
  for (const bad of [-0.1, 101, NaN, Infinity]) {
    expect(refusalOf(() => judgeAnswer(1, 1, bad))).toMatchObject({ code: 'outOfRange', name: 'tolerance' });
  }
});

test('the working has the difference and the tolerance assumed', () => {
  const { steps, assumptions } = recording((record) => judgeAnswer(145, 133, undefined, record));
  expect(steps).toEqual([
    { step: 'answerOff', inputs: { answer: 145, correct: 133 }, result: 12, unit: 'none' },
  ]);
  expect(assumptions).toEqual([{ assumed: 'tolerance', value: 0, unit: 'share', ground: 'judgement' }]);
  expect(recording((record) => judgeAnswer(1.5, 1.6, undefined, record)).assumptions).toMatchObject([
    { value: 0.005 },
  ]);
});
