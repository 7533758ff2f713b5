import { describe, expect, test } from 'vitest';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { crops } from '../../../src/reference/crops';
import { refusalOf } from '../refusal';

describe('findCrop', () => {
  test.each([
    ['zucchini', 'summer squash'],
    [' Cantaloupe ', 'muskmelon'],
    ['MELON', 'muskmelon'],
    ['cucumber', 'slicing cucumber'],
    ['gherkin', 'pickling cucumber'],
    ['Greenhouse  Cucumber', 'English cucumber'],
    ['courgette', 'summer squash'],
    ['seedless watermelon', 'triploid watermelon'],
  ])('%j is %s (trade names, common practice, no source)', (typed, name) => {
    expect(findCrop(typed).name).toBe(name);
  });

  test('every name and synonym is found in any capitals', () => {
    for (const crop of crops) {
      for (const name of [crop.name, ...crop.synonyms]) {
        expect(findCrop(name.toUpperCase())).toBe(crop);
      }
    }
  });

  test('an unknown name is refused with the nearest', () => {
    expect(refusalOf(() => findCrop(' pumkin'))).toEqual({
      code: 'unknownName',
      kind: 'crop',
      given: 'pumkin',
      nearest: expect.arrayContaining(['pumpkin']) as unknown,
    });
    expect(refusalOf(() => findCrop('tomato'))).toMatchObject({ nearest: [] });
    expect(refusalOf(() => findCrop(''))).toMatchObject({ code: 'unknownName', nearest: [] });
  });

  test('squash alone could be either: it is refused with all', () => {
    expect(refusalOf(() => findCrop('squash'))).toMatchObject({
      nearest: ['summer squash', 'bush winter squash', 'winter squash'],
    });
  });
});
