import { expect, test } from 'vitest';
import { beetleThreshold } from '../../../src/calc/beetles/beetleThreshold';
import { cropNames } from '../../../src/reference/crops';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  ['cucumber', 1, 'Purdue'],
  ['pickles', 1, 'Purdue'],
  ['cantaloupe', 1, 'Purdue'],
  ['watermelon', 5, 'Purdue'],
  ['seedless watermelon', 5, 'Purdue'],
  ['zucchini', 1, 'Ontario'],
  ['pumpkin', 1, 'Ontario'],
  ['gourd', 1, 'judgement'],
])('%s: %d a plant (%s)', (crop, threshold) => {
  expect(beetleThreshold(crop, undefined)).toBe(threshold);
});

test('what the grower says of the type counts: 1 when prone, 5 when not (Purdue), for any crop', () => {
  for (const crop of cropNames) {
    expect(beetleThreshold(crop, true)).toBe(1);
    expect(beetleThreshold(crop, false)).toBe(5);
  }
});

test('an unknown crop is refused', () => {
  expect(refusalOf(() => beetleThreshold('tomato', true))).toMatchObject({ code: 'unknownName' });
});

test('working: whether the crop is prone, on what ground; the label and the bees', () => {
  const gourd = recording((record) => beetleThreshold('gourd', undefined, record));
  expect(gourd.steps).toMatchObject([
    { step: 'wiltProne', result: true },
    { step: 'beetleThreshold', result: gourd.value, unit: 'beetlesPerPlant' },
  ]);
  expect(gourd.assumptions).toMatchObject([{ assumed: 'wilt_prone', value: true, ground: 'judgement' }]);
  expect(gourd.remarks).toEqual(['squashDiffer', 'pesticides']);
  const said = recording((record) => beetleThreshold('zucchini', false, record));
  expect(said.steps.map(({ step }) => step)).toEqual(['beetleThreshold']);
  expect(said.assumptions).toEqual([]);
});
