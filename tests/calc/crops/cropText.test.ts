import { expect, test } from 'vitest';
import { cropText } from '../../../src/calc/crops/cropText';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  ['English cucumber', 'flower type', 'parthenocarpic', 'University of Florida CV268'],
  ['cucumber', 'days counted from', 'seed', 'Illinois Vegetable Garden Guide'],
  ['muskmelon', 'species', 'Cucumis melo', 'from memory, check: Robinson and Decker-Walters'],
] as const)('%s, %s: %s (%s)', (name, trait, expected, _origin) => {
  const { value, steps } = recording((record) => cropText(findCrop(name), trait, record));
  expect(value).toBe(expected);
  expect(steps.at(-1)?.result).toBe(value);
  expect(cropText(findCrop(name), trait)).toBe(value);
});

test('absent words are refused', () => {
  const bare = { name: 'made up', synonyms: [], spanishNames: [], figures: {} };
  expect(refusalOf(() => cropText(bare, 'species'))).toEqual({
    code: 'noFigure',
    crop: 'made up',
    trait: 'species',
  });
});
