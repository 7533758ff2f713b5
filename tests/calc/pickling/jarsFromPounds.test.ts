import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jarsFromPounds } from '../../../src/calc/pickling/jarsFromPounds';
import { poundsForJars } from '../../../src/calc/pickling/poundsForJars';
import { jarSizes } from '../../../src/reference/pickling';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test('USDA AIB 539: 14 lb fill 7 quarts, 9 lb 9 pints; a bushel, 48 lb, gives 16 to 24 quarts', () => {
  expect(jarsFromPounds(14, undefined)).toEqual({ usual: 7, fewest: 4 });
  expect(jarsFromPounds(9, 'pint')).toEqual({ usual: 9, fewest: 6 });
  expect(jarsFromPounds(48, 'quart')).toEqual({ usual: 24, fewest: 16 });
});

test('part of a jar is none (hand computed: 1.9 / 2, 15.9 / 2 and 15.9 / 3)', () => {
  expect(jarsFromPounds(1.9, 'quart')).toEqual({ usual: 0, fewest: 0 });
  expect(jarsFromPounds(15.9, 'quart')).toEqual({ usual: 7, fewest: 5 });
});

test('the pounds of the jars fill them, and never more than usual', () => {
  const sizes = fc.constantFrom(...jarSizes);
  fc.assert(
    fc.property(sizes, fc.double({ min: 0.1, max: 5000, noNaN: true }), (jar, pounds) => {
      const { usual, fewest } = jarsFromPounds(pounds, jar);
      expect(fewest).toBeLessThanOrEqual(usual);
      if (usual > 0) expect(poundsForJars(usual, jar).usual).toBeLessThanOrEqual(pounds * (1 + 1e-8));
      expect(poundsForJars(usual + 1, jar).usual).toBeGreaterThan(pounds);
      if (fewest > 0) expect(jarsFromPounds(poundsForJars(fewest, jar).most, jar).fewest).toBe(fewest);
    }),
    seeded,
  );
});

test('refusals', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => jarsFromPounds(bad, 'pint'))).toMatchObject({ name: 'pounds', above: 0 });
  }
});

test('working: both counts; the caution on canning travels with them', () => {
  const { value, steps, assumptions, remarks } = recording((record) => jarsFromPounds(15, undefined, record));
  expect(steps.slice(-2)).toMatchObject([
    { step: 'usualJars', result: value.usual, rounded: 'down' },
    { step: 'fewestJars', result: value.fewest, unit: 'jars' },
  ]);
  expect(assumptions).toMatchObject([{ assumed: 'jar', value: 'quart' }]);
  expect(remarks).toEqual(['cucumbersOnly', 'canning']);
});
