import { expect, test } from 'vitest';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { speciesOfCrop } from '../../../src/calc/crops/speciesOfCrop';
import { cropNames } from '../../../src/reference/crops';
import { recording } from '../recording';

const cucumber = ['Cucumis sativus'];
const pepo = ['Cucurbita pepo'];
const melons = ['Citrullus lanatus'];
const all: Readonly<Record<string, readonly string[]>> = {
  'pickling cucumber': cucumber,
  'slicing cucumber': cucumber,
  'English cucumber': cucumber,
  'bush cucumber': cucumber,
  'summer squash': pepo,
  'bush winter squash': ['Cucurbita pepo', 'Cucurbita maxima'],
  'winter squash': ['Cucurbita maxima', 'Cucurbita moschata', 'Cucurbita pepo'],
  'small pumpkin': pepo,
  pumpkin: pepo,
  gourd: ['Cucurbita pepo', 'Lagenaria siceraria'],
  muskmelon: ['Cucumis melo'],
  watermelon: melons,
  'triploid watermelon': melons,
};

test('the species of every crop of the reference, read off its phrase by hand', () => {
  expect(Object.fromEntries(cropNames.map((name) => [name, speciesOfCrop(findCrop(name))]))).toEqual(all);
});

test('each is a genus and a species written out', () => {
  for (const name of Object.values(all).flat()) expect(name).toMatch(/^[A-Z][a-z]{3,} [a-z]+$/);
});

test('the working cites the phrase', () => {
  const { steps } = recording((record) => speciesOfCrop(findCrop('gourd'), record));
  expect(steps).toMatchObject([{ step: 'cropText', inputs: { crop: 'gourd', trait: 'species' } }]);
});
