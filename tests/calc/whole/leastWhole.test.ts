import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastWhole } from '../../../src/calc/whole/leastWhole';
import { seeded } from '../dates/calendar';

test('the least square root of 50 or more is 8 (hand computed)', () => {
  for (const guess of [-5, 1, 7.4, 8, 9, 1000, 5000]) {
    expect(leastWhole(1, 1000, guess, (n) => n * n >= 50)).toBe(8);
  }
});

test('the ends of the range, and none at all', () => {
  expect(leastWhole(3, 10, 7, () => true)).toBe(3);
  expect(leastWhole(3, 10, 7, (n) => n >= 10)).toBe(10);
  expect(leastWhole(3, 10, 7, () => false)).toBeNull();
  expect(leastWhole(5, 5, 5, (n) => n >= 5)).toBe(5);
});

test('what a count one by one finds, from any guess, without a test outside the range', () => {
  const bound = fc.integer({ min: 0, max: 300 });
  fc.assert(
    fc.property(
      bound,
      bound,
      bound,
      fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      (a, b, answer, guess) => {
        const [lowest, highest] = [Math.min(a, b), Math.max(a, b)];
        let counted: number | null = null;
        for (let n = highest; n >= lowest && n >= answer; n--) counted = n;
        const found = leastWhole(lowest, highest, guess, (n) => {
          expect(n).toBeGreaterThanOrEqual(lowest);
          expect(n).toBeLessThanOrEqual(highest);
          return n >= answer;
        });
        expect(found).toBe(counted);
      },
    ),
    seeded,
  );
});

test('a near guess costs few tests, a far one a few dozen', () => {
  const testsFrom = (guess: number): number => {
    let tests = 0;
    leastWhole(1, Number.MAX_SAFE_INTEGER, guess, (n) => {
      tests += 1;
      return n >= 1_000_000;
    });
    return tests;
  };
  expect(testsFrom(1_000_000)).toBeLessThan(4);
  expect(testsFrom(1_000_100)).toBeLessThan(20);
  expect(testsFrom(1)).toBeLessThan(60);
  expect(testsFrom(1e15)).toBeLessThan(120);
});
