import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeProblems } from '../../../src/calc/homework/makeProblems';
import { drawBy, problemKinds } from '../../../src/calc/homework/problemKinds';
import { dayNumber, seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

const numbers = fc.integer({ min: 1, max: 9999 });
const counts = fc.integer({ min: 1, max: 100 });
const systems = fc.constantFrom('us' as const, 'metric' as const);

test('the same number gives the same problems, and more of them begin with those of fewer', () => {
  fc.assert(
    fc.property(numbers, counts, counts, systems, (number, count, other, units) => {
      const [few, many] = [Math.min(count, other), Math.max(count, other)];
      const problems = makeProblems(number, many, units);
      expect(problems).toHaveLength(many);
      expect(makeProblems(number, few, units)).toEqual(problems.slice(0, few));
    }),
    seeded,
  );
});

test('in both unit systems a number asks the same things, in figures of each, but for what is in pounds alone', () => {
  const inPounds = ['HARVEST.BUSHELS', 'PICKLE.JARS', 'PICKLE.POUNDS'];
  fc.assert(
    fc.property(numbers, (number) => {
      const idsIn = (units: 'us' | 'metric'): string[] =>
        makeProblems(number, 100, units).map(({ id }) => id);
      const inBoth = idsIn('us').filter((id) => !inPounds.includes(id));
      expect(idsIn('metric').slice(0, inBoth.length)).toEqual(inBoth);
      expect(idsIn('metric').filter((id) => inPounds.includes(id))).toEqual([]);
    }),
    seeded,
  );
  const drawn = (units: 'us' | 'metric'): number =>
    drawBy(() => 1, units).measure([4, 8, 0.5], [1.2, 2.4, 0.1]);
  expect([drawn('us'), drawn('metric')]).toEqual([4.5, 1.3]);
});

test('two numbers give two homeworks: all of 9,999 differ in their first ten problems', () => {
  const all = Array.from({ length: 9999 }, (_, i) => JSON.stringify(makeProblems(i + 1, 10, 'us')));
  expect(new Set(all).size).toBe(9999);
});

test('each kind is asked once before one comes again', () => {
  fc.assert(
    fc.property(numbers, (number) => {
      const ids = makeProblems(number, 100, 'us').map(({ id }) => id);
      const round = problemKinds.map(({ id }) => id).sort();
      expect(ids.slice(0, round.length).sort()).toEqual(round);
      expect(new Set(ids.slice(round.length, 2 * round.length)).size).toBe(
        Math.min(round.length, 100 - round.length),
      );
    }),
    seeded,
  );
});

// A promise, as that of the functions' arguments: a class has its number. Drawn by the first version with all families.
test('homework 7 stays what it was', () => {
  expect(makeProblems(7, 3, 'us').map(({ id, args }) => [id, ...args.map(({ value }) => value)])).toEqual([
    ['PICKLE.JARS', 26, 'quart'],
    ['BUDGET.PICKHOURS', 270, 11, 130],
    ['SUPPLY.FERTILIZER', 20_500, 40, 0.15],
  ]);
});

test('draws stay in their range, on their steps, ends included, without binary fractions', () => {
  const ends = (below: (limit: number) => number) => {
    const draw = drawBy(below, 'us');
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
  expect(drawBy(() => 2, 'us').number(0.7, 0.9, 0.1)).toBe(0.9);
});

test.each([0, 10_000, NaN, -1])('the number %d is refused', (number) => {
  expect(refusalOf(() => makeProblems(number, 10, 'us'))).toMatchObject({
    code: 'outOfRange',
    name: 'homework_number',
  });
});

test.each([0, 101])('%d problems are refused', (count) => {
  expect(refusalOf(() => makeProblems(1, count, 'us'))).toMatchObject({
    code: 'outOfRange',
    name: 'homework_count',
  });
});

test('a part of a number is refused', () => {
  expect(refusalOf(() => makeProblems(1.5, 10, 'us'))).toMatchObject({
    code: 'notWhole',
    name: 'homework_number',
  });
  expect(refusalOf(() => makeProblems(1, 1.5, 'us'))).toMatchObject({
    code: 'notWhole',
    name: 'homework_count',
  });
});
