import { expect, test } from 'vitest';
import { bushelForPickles, cannerLoads, jarSizes, picklingSource } from '../../src/reference/pickling';
import { sources } from '../../src/reference/sources';

test('USDA AIB 539: 14 lb for 7 quarts, 9 lb for 9 pints, a bushel of 48 lb for 16 to 24 quarts', () => {
  expect(cannerLoads).toEqual({ quart: { pounds: 14, jars: 7 }, pint: { pounds: 9, jars: 9 } });
  expect(bushelForPickles).toEqual({ pounds: 48, fewestQuarts: 16, mostQuarts: 24 });
  expect(Object.keys(cannerLoads)).toEqual([...jarSizes]);
});

test('the average of the guide, 2 lb a quart, is where the bushel gives most', () => {
  expect(bushelForPickles.pounds / bushelForPickles.mostQuarts).toBe(2);
  expect(cannerLoads.quart.pounds / cannerLoads.quart.jars).toBe(2);
});

test('frozen, and the source is in the bibliography', () => {
  expect(Object.isFrozen(cannerLoads) && Object.values(cannerLoads).every(Object.isFrozen)).toBe(true);
  expect(Object.isFrozen(bushelForPickles)).toBe(true);
  expect(Object.keys(sources)).toContain(picklingSource);
});
