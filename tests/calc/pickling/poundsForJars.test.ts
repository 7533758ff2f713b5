import { expect, test } from 'vitest';
import { poundsForJars } from '../../../src/calc/pickling/poundsForJars';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// The property that joins it to jarsFromPounds stands in jarsFromPounds.test.
test('USDA AIB 539: 7 quarts take 14 lb, 9 pints 9 lb; 16 quarts as much as a bushel, 48 lb', () => {
  expect(poundsForJars(7, undefined)).toEqual({ usual: 14, most: 21 });
  expect(poundsForJars(9, 'pint')).toEqual({ usual: 9, most: 13.5 });
  expect(poundsForJars(16, 'quart')).toEqual({ usual: 32, most: 48 });
});

test('refusals', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => poundsForJars(bad, 'quart'))).toMatchObject({ name: 'jars', atLeast: 1 });
  }
  expect(refusalOf(() => poundsForJars(7.5, 'quart'))).toMatchObject({ code: 'notWhole' });
});

test('working: both weights; the caution on canning travels with them', () => {
  const { value, steps, assumptions, remarks } = recording((record) => poundsForJars(7, undefined, record));
  expect(steps.slice(-2)).toMatchObject([
    { step: 'usualPounds', result: value.usual, unit: 'lb' },
    { step: 'mostPounds', result: value.most, unit: 'lb' },
  ]);
  expect(assumptions).toMatchObject([{ assumed: 'jar', value: 'quart' }]);
  expect(remarks).toEqual(['cucumbersOnly', 'canning']);
});
