import { expect, test } from 'vitest';
import { cropGrounds } from '../../../src/calc/crops/cropGrounds';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { refusalOf } from '../refusal';

test('a published figure has its source, another the words for none', () => {
  expect(cropGrounds(findCrop('cucumber'), 'flower to pick').grounds).toEqual(['nc-ag-552-harvest']);
  expect(cropGrounds(findCrop('gourd'), 'hill spacing').grounds).toEqual(['common practice, no source']);
  expect(cropGrounds(findCrop('summer squash'), 'yield per 100').grounds).toHaveLength(2);
});

test('an absent figure is refused', () => {
  expect(refusalOf(() => cropGrounds(findCrop('gourd'), 'germination standard'))).toEqual({
    code: 'noFigure',
    crop: 'gourd',
    trait: 'germination standard',
  });
});
