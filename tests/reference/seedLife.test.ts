import { expect, test } from 'vitest';
import { seedLife } from '../../src/reference/seedLife';
import { minimumGermination } from '../../src/reference/seedStandards';
import { sources } from '../../src/reference/sources';

test('the years of an old manual and of a list of 2023; where they differ, both ends', () => {
  const manual = { cucumber: 5, melon: 5, squash: 3, watermelon: 5 };
  const list = { cucumber: 5, melon: 5, pumpkin: 4, squash: 4, watermelon: 4 };
  const ends = Object.fromEntries(
    Object.keys(list).map((kind) => {
      const years = [manual, list].flatMap((one) => (one as Record<string, number>)[kind] ?? []);
      return [kind, [Math.min(...years), Math.max(...years)]];
    }),
  );
  expect(
    Object.fromEntries(Object.entries(seedLife).map(([kind, one]) => [kind, [one?.low, one?.high]])),
  ).toEqual(ends);
});

test('of kinds that the regulation has, each with grounds of the bibliography, frozen', () => {
  for (const [kind, life] of Object.entries(seedLife)) {
    expect(Object.keys(minimumGermination)).toContain(kind);
    expect(life?.grounds.length).toBeGreaterThan(0);
    for (const ground of life?.grounds ?? []) expect(Object.keys(sources)).toContain(ground);
    expect(Object.isFrozen(life) && Object.isFrozen(life?.grounds)).toBe(true);
  }
  expect(Object.isFrozen(seedLife)).toBe(true);
});
