import { expect, test } from 'vitest';
import { poundsPerJar } from '../../../src/calc/pickling/poundsPerJar';
import { recording } from '../recording';

test('USDA AIB 539: an average of 2 lb a quart and 1 lb a pint; a bushel that gives 16 quarts takes 3 lb', () => {
  expect(poundsPerJar('quart')).toEqual({ usual: 2, most: 3 });
  // Half a quart is a pint (NIST Handbook 44).
  expect(poundsPerJar('pint')).toEqual({ usual: 1, most: 1.5 });
});

test('working: both weights, with the numbers of the guide', () => {
  const { steps } = recording((record) => poundsPerJar('pint', record));
  expect(steps).toMatchObject([
    { step: 'usualPerJar', inputs: { loadPounds: 9, loadJars: 9 }, result: 1 },
    { step: 'mostPerJar', inputs: { bushel: 48, fewestJars: 32 }, result: 1.5 },
  ]);
});
