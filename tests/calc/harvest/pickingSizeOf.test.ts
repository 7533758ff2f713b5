import { expect, test } from 'vitest';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { pickingSizeOf, type PickingUse } from '../../../src/calc/harvest/pickingSizeOf';
import { refusalOf } from '../refusal';

const sizeOf = (name: string, use?: PickingUse) => pickingSizeOf(findCrop(name), name, use);

test.each([
  ['gherkin', undefined, 1.5, 4, 'length', 'USDA AIB 539'],
  ['cucumber', 'pickles', 1.5, 4, 'length', 'USDA AIB 539'],
  ['cucumber', undefined, 6, 8, 'length', '7 CFR 51.2220 from 6 in; 8 in common practice, no source'],
  ['cucumber', 'fresh', 6, 8, 'length', 'the same'],
  ['English cucumber', undefined, 12, 14, 'length', 'Florida CV268'],
  ['zucchini', undefined, 6, 8, 'length', 'common practice, no source'],
  ['  Pattypan  SQUASH', 'fresh', 3, 4, 'diameter', 'common practice, no source'],
  ['pumpkin', undefined, 9.3, 14, 'diameter', 'HortScience 58(12), medium to jumbo'],
] as const)('%s for %s: %d to %d in of %s', (name, use, low, high, measured, origin) => {
  expect(sizeOf(name, use), origin).toMatchObject({ low, high, measured });
});

test.each([
  ['butternut', 'hardRind'],
  ['pie pumpkin', 'hardRind'],
  ['gourd', 'dryStem'],
  ['cantaloupe', 'slips'],
  ['watermelon', 'groundSpot'],
  ['seedless watermelon', 'groundSpot'],
])('%s is judged by ripeness (Illinois, Iowa and Wisconsin extension): %s', (name, sign) => {
  expect(refusalOf(() => sizeOf(name))).toMatchObject({ code: 'judgedByRipeness', sign });
});

test.each([
  ['pickling cucumber', 'fresh'],
  ['English cucumber', 'pickles'],
  ['zucchini', 'pickles'],
  ['watermelon', 'pickles'],
] as const)('no size of %s for %s is known', (name, use) => {
  expect(refusalOf(() => sizeOf(name, use))).toEqual({
    code: 'noSizeForUse',
    crop: findCrop(name).name,
    use,
  });
});
