import { expect, test } from 'vitest';
import { cropNames } from '../../src/reference/crops';
import { minimumGermination, seedKinds, seedStandardSource } from '../../src/reference/seedStandards';
import { sources } from '../../src/reference/sources';

test('the kinds and percentages of 7 CFR 201.31', () => {
  expect(minimumGermination).toEqual({
    cucumber: 0.8,
    melon: 0.75,
    pumpkin: 0.75,
    squash: 0.75,
    watermelon: 0.7,
    citron: 0.65,
  });
});

test('every crop but gourd has a kind, and no kind is given to a crop that is not there', () => {
  expect(cropNames.filter((name) => seedKinds[name] === undefined)).toEqual(['gourd']);
  for (const name of Object.keys(seedKinds)) expect(cropNames).toContain(name);
  for (const kind of Object.values(seedKinds)) expect(Object.keys(minimumGermination)).toContain(kind);
});

test('frozen, and the source is in the bibliography', () => {
  expect(Object.isFrozen(minimumGermination) && Object.isFrozen(seedKinds)).toBe(true);
  expect(Object.keys(sources)).toContain(seedStandardSource);
});
