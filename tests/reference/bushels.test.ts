import { expect, test } from 'vitest';
import { bushelKinds, bushelWeights } from '../../src/reference/bushels';
import { cropNames } from '../../src/reference/crops';
import { sources, unsourcedGrounds } from '../../src/reference/sources';

test('USDA AIB 539: cucumbers 48 lb; Michigan: summer squash 40; and what other sources have', () => {
  // Illinois 48 to 50; a retail table 40 to 44; Texas 25. Winter squash and muskmelon: from memory, check.
  const pounds = Object.entries(bushelWeights).map(([kind, weight]) => [
    kind,
    [weight, ...weight.elsewhere].map((one) => one.pounds),
  ]);
  expect(Object.fromEntries(pounds)).toEqual({
    cucumber: [48, 50],
    'summer squash': [40, 44, 25],
    'winter squash': [50],
    muskmelon: [60],
  });
});

test('crops of the reference, known grounds, frozen', () => {
  const grounds = [...Object.keys(sources), ...unsourcedGrounds];
  for (const [crop, kind] of Object.entries(bushelKinds)) {
    expect(cropNames).toContain(crop);
    expect(Object.keys(bushelWeights)).toContain(kind);
  }
  for (const weight of Object.values(bushelWeights)) {
    for (const one of [weight, ...weight.elsewhere]) {
      expect(grounds).toContain(one.ground);
      expect(Object.isFrozen(one)).toBe(true);
    }
    expect(Object.isFrozen(weight.elsewhere)).toBe(true);
  }
  expect(Object.isFrozen(bushelKinds)).toBe(true);
});
