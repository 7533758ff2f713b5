import fc from 'fast-check';
import { dbinom } from 'lib-r-math.js';
import { expect, test } from 'vitest';
import { chanceOfNoPollenizer } from '../../../src/calc/flowers/chanceOfNoPollenizer';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  [2, 0.1, 0.81],
  [29, 0.1, 0.9 ** 29],
  [1, 0.25, 0.75],
  [5, 0, 1],
  [5, 1, 0],
])('%d plants at %d: %d (hand computed)', (plants, share, chance) => {
  expect(chanceOfNoPollenizer(plants, share)).toBeCloseTo(chance, 14);
});

test('dbinom of lib-r-math.js 2.0.3; no digits lost with a small share and many plants', () => {
  for (const share of [0.01, 0.1, 0.15, 0.5]) {
    for (const plants of [1, 7, 40, 300]) {
      const expected = dbinom(0, plants, share) as number;
      expect(chanceOfNoPollenizer(plants, share) / expected).toBeCloseTo(1, 10);
    }
  }
  // (1 - 1e-9)^1e9 is 1/e up to half a part in 1e9, by its series.
  expect(chanceOfNoPollenizer(1e9, 1e-9) / (Math.exp(-1) * (1 - 0.5e-9))).toBeCloseTo(1, 12);
});

test('two groups: chances multiply; more plants or a larger share, less chance', () => {
  const share = fc.double({ min: 0.001, max: 0.5, noNaN: true });
  const plants = fc.integer({ min: 1, max: 100 });
  fc.assert(
    fc.property(plants, plants, share, share, (one, two, s, t) => {
      const both = chanceOfNoPollenizer(one + two, s);
      expect(both / (chanceOfNoPollenizer(one, s) * chanceOfNoPollenizer(two, s))).toBeCloseTo(1, 10);
      expect(both).toBeLessThan(chanceOfNoPollenizer(one, s));
      const [low, high] = [Math.min(s, t), Math.max(s, t)];
      expect(chanceOfNoPollenizer(one, high)).toBeLessThanOrEqual(chanceOfNoPollenizer(one, low));
    }),
    seeded,
  );
});

test('bounds', () => {
  expect(refusalOf(() => chanceOfNoPollenizer(0, 0.1))).toMatchObject({ name: 'plants', atLeast: 1 });
  expect(refusalOf(() => chanceOfNoPollenizer(2.5, 0.1))).toMatchObject({ code: 'notWhole' });
  expect(refusalOf(() => chanceOfNoPollenizer(NaN, 0.1))).toMatchObject({ code: 'outOfRange' });
  expect(refusalOf(() => chanceOfNoPollenizer(2, -0.1))).toMatchObject({ name: 'share', atLeast: 0 });
  expect(refusalOf(() => chanceOfNoPollenizer(2, 10))).toMatchObject({ code: 'percentForShare' });
});

test('working: the last step is the value', () => {
  const { value, steps } = recording((record) => chanceOfNoPollenizer(29, 0.1, record));
  expect(steps.at(-1)?.result).toBe(value);
  expect(value).toBe(chanceOfNoPollenizer(29, 0.1));
});
