import { expect, test } from 'vitest';
import { leastGermination } from '../../../src/calc/crops/leastGermination';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  ['cucumber', 0.8],
  ['English cucumber', 0.8],
  ['cantaloupe', 0.75],
  ['pumpkin', 0.75],
  ['zucchini', 0.75],
  ['winter squash', 0.75],
  ['watermelon', 0.7],
  ['seedless watermelon', 0.7],
])('%s: %d (7 CFR 201.31)', (crop, standard) => {
  const { value, steps, remarks } = recording((record) => leastGermination(crop, record));
  expect(value).toBe(standard);
  expect(steps.at(-1)?.result).toBe(value);
  expect(remarks).toContain('belowStandardMayBeSold');
  expect(leastGermination(crop)).toBe(value);
});

test('gourd is not listed and squash is not lent to it; an unknown crop is another matter', () => {
  expect(refusalOf(() => leastGermination('gourd'))).toEqual({ code: 'noSeedStandard', crop: 'gourd' });
  expect(refusalOf(() => leastGermination('tomato'))).toMatchObject({ code: 'unknownName' });
});
