import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeProblems } from '../../../src/calc/homework/makeProblems';
import { drawBy, problemKinds } from '../../../src/calc/homework/problemKinds';
import { dayNumber, seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

const numbers = fc.integer({ min: 1, max: 9999 });
const counts = fc.integer({ min: 1, max: 100 });

test('the same number gives the same problems, and more of them begin with those of fewer', () => {
  fc.assert(
    fc.property(numbers, counts, counts, (number, count, other) => {
      const [few, many] = [Math.min(count, other), Math.max(count, other)];
      const problems = makeProblems(number, many);
      expect(problems).toHaveLength(many);
      expect(makeProblems(number, few)).toEqual(problems.slice(0, few));
    }),
    seeded,
  );
});

test('two numbers give two homeworks: all of 9,999 differ in their first ten problems', () => {
  const all = Array.from({ length: 9999 }, (_, i) => JSON.stringify(makeProblems(i + 1, 10)));
  expect(new Set(all).size).toBe(9999);
});

test('each kind is asked once before one comes again', () => {
  fc.assert(
    fc.property(numbers, (number) => {
      const ids = makeProblems(number, 100).map(({ id }) => id);
      const round = problemKinds.map(({ id }) => id).sort();
      expect(ids.slice(0, round.length).sort()).toEqual(round);
      expect(new Set(ids.slice(round.length, 2 * round.length)).size).toBe(
        Math.min(round.length, 100 - round.length),
      );
    }),
    seeded,
  );
});

// A promise, as that of the functions' arguments: a class has its number. Drawn by the first version.
test('homework 7 stays what it was', () => {
  expect(makeProblems(7, 3).map(({ id, args }) => [id, ...args.map(({ value }) => value)])).toEqual([
    ['HARVEST.FORECAST', 1.5, 410, 9.2],
    ['DATE.FIRSTPICK', dayNumber('2027-05-26'), 91, 'transplant', 'seed', 9],
    ['FLOWER.MALESPERFEMALE', 0.21],
  ]);
});

test('draws stay in their range, on their steps, ends included, without binary fractions', () => {
  const ends = (below: (limit: number) => number) => {
    const draw = drawBy(below);
    return [
      draw.number(4, 8, 0.5),
      draw.number(0.7, 0.95, 0.05),
      draw.number(50, 72, 22),
      draw.day(5, 10, 30),
    ];
  };
  expect(ends(() => 0)).toEqual([4, 0.7, 50, dayNumber('2027-05-10')]);
  expect(ends((limit) => limit - 1)).toEqual([8, 0.95, 72, dayNumber('2027-06-08')]);
  // 0.7 + 2 x 0.1 is 0.8999999999999999 in floating point.
  expect(drawBy(() => 2).number(0.7, 0.9, 0.1)).toBe(0.9);
});

test.each([0, 10_000, NaN, -1])('the number %d is refused', (number) => {
  expect(refusalOf(() => makeProblems(number, 10))).toMatchObject({
    code: 'outOfRange',
    name: 'homework_number',
  });
});

test.each([0, 101])('%d problems are refused', (count) => {
  expect(refusalOf(() => makeProblems(1, count))).toMatchObject({
    code: 'outOfRange',
    name: 'homework_count',
  });
});

test('a part of a number is refused', () => {
  expect(refusalOf(() => makeProblems(1.5, 10))).toMatchObject({ code: 'notWhole', name: 'homework_number' });
  expect(refusalOf(() => makeProblems(1, 1.5))).toMatchObject({ code: 'notWhole', name: 'homework_count' });
});
