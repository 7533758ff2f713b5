import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeProblems, type Problem } from '../../../src/calc/homework/makeProblems';
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

test('in both unit systems a number asks the same things, in figures of each, but for what is in bushels', () => {
  fc.assert(
    fc.property(numbers, counts, (number, count) => {
      const [us, metric] = [makeProblems(number, count, 'us'), makeProblems(number, count, 'metric')];
      const isHarvest = ({ id }: Problem): boolean => id.startsWith('HARVEST.');
      expect(metric.map((one) => (isHarvest(one) ? 'HARVEST' : one.id))).toEqual(
        us.map((one) => (isHarvest(one) ? 'HARVEST' : one.id)),
      );
      expect(metric.map(({ id }) => id)).not.toContain('HARVEST.BUSHELS');
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

/** As problemFamilies has it, told apart from it: what stands before the point, and the seed test. */
const familyOf = ({ id }: { readonly id: string }): string =>
  id === 'SEED.TEST' ? id : id.slice(0, id.indexOf('.'));
const families = [...new Set(problemKinds.map(familyOf))];

function countsOf(all: readonly string[]): ReadonlyMap<string, number> {
  const counted = new Map<string, number>();
  for (const one of all) counted.set(one, (counted.get(one) ?? 0) + 1);
  return counted;
}

test('a homework of twenty has a problem of each family', () => {
  expect(families).toHaveLength(20);
  for (const family of ['FROST', 'HEAT', 'ROTATION', 'HARVEST', 'SEED.TEST', 'PICKLE']) {
    expect(families).toContain(family);
  }
  for (let number = 1; number <= 9999; number++) {
    const asked = makeProblems(number, 20, number % 2 === 0 ? 'us' : 'metric').map(familyOf);
    expect(new Set(asked).size, `homework ${number}`).toBe(20);
  }
});

test('families are asked as evenly as their number allows, and a kind again when the rest of its family was', () => {
  fc.assert(
    fc.property(numbers, counts, systems, (number, count, units) => {
      const problems = makeProblems(number, count, units);
      const perFamily = countsOf(problems.map(familyOf));
      for (const family of families) {
        const asked = perFamily.get(family) ?? 0;
        expect([Math.floor(count / 20), Math.ceil(count / 20)]).toContain(asked);
        const kinds = problemKinds
          .filter((kind) => familyOf(kind) === family)
          .filter(({ isUsOnly }) => units === 'us' || isUsOnly !== true);
        const perKind = countsOf(problems.filter((one) => familyOf(one) === family).map(({ id }) => id));
        for (const { id } of kinds) {
          const often = asked / kinds.length;
          expect([Math.floor(often), Math.ceil(often)], id).toContain(perKind.get(id) ?? 0);
        }
      }
    }),
    seeded,
  );
});

test('no problem is asked twice in a homework of a hundred', () => {
  for (let number = 1; number <= 1500; number++) {
    const problems = makeProblems(number, 100, number % 2 === 0 ? 'us' : 'metric');
    expect(new Set(problems.map((one) => JSON.stringify(one))).size, `homework ${number}`).toBe(100);
  }
});

test('over the numbers each kind is asked, the first of a homework as well', () => {
  const first = new Set(Array.from({ length: 9999 }, (_, i) => makeProblems(i + 1, 1, 'us')[0]?.id));
  expect([...first].sort()).toEqual(problemKinds.map(({ id }) => id).sort());
});

// A promise, as that of the functions' arguments: a class has its number. Drawn by the first version with families in
// rounds.
test('homework 7 stays what it was', () => {
  expect(makeProblems(7, 4, 'us').map(({ id, args }) => [id, ...args.map(({ value }) => value)])).toEqual([
    ['SEED.WEIGHT', 900, 650],
    ['BUDGET.BREAKEVENPRICE', 690, 500],
    ['BEETLE.THRESHOLD', 'slicing cucumber', 'yes'],
    [
      'FROST.CHANCE',
      dayNumber('2027-10-11'),
      ['2022-10-11', '2023-10-15', '2024-10-04', '2025-10-24', '2026-09-24'].map(dayNumber),
      'fall',
    ],
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
