import { expect, test } from 'vitest';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { planting } from '../../../src/calc/flowers/planting';

test.each([
  ['cucumber', ' Gynoecious ', 'gynoecious'],
  ['cucumber', null, 'monoecious'],
  ['cucumber', 'dioecious', 'monoecious'],
  ['English cucumber', undefined, 'parthenocarpic'],
  ['watermelon', 'triploid', 'triploid'],
  ['seedless watermelon', 'monoecious', 'triploid'],
] as const)('%s given as %s is %s (project convention)', (crop, given, flowerType) => {
  expect(planting(findCrop(crop), given)).toEqual({ crop: findCrop(crop), flowerType });
});

test('a crop of no known flower type is taken for monoecious', () => {
  expect(planting({ name: 'made up', synonyms: [], spanishNames: [], figures: {} }, null).flowerType).toBe(
    'monoecious',
  );
});
