import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestNames } from '../../../src/calc/crops/nearestNames';
import { cropNames } from '../../../src/reference/crops';

/** Edit distance by the textbook table, independent of the library. */
function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = Number(row[j - 1]) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, Number(row[j]) + 1, Number(next[j - 1]) + 1));
    }
    row = next;
  }
  return Number(row[b.length]);
}

describe('nearestNames', () => {
  test.each([
    ['pumkin', 'pumpkin'],
    ['Slicng Cucumber', 'slicing cucumber'],
    ['muskmellon', 'muskmelon'],
    ['watermellon', 'watermelon'],
    ['gord', 'gourd'],
  ])('%s: %s is nearest (typed slips, hand made)', (typed, meant) => {
    expect(nearestNames(typed, cropNames)[0]).toBe(meant);
  });

  test('a part of a name finds the names that hold it', () => {
    expect(nearestNames('squash', cropNames)).toEqual(
      expect.arrayContaining(['summer squash', 'winter squash', 'bush winter squash']),
    );
  });

  test.each([
    ['squsah', ['summer squash', 'bush winter squash', 'winter squash']],
    ['sqash', ['summer squash', 'bush winter squash', 'winter squash']],
    ['cucmber', ['pickling cucumber', 'slicing cucumber', 'English cucumber']],
  ])(
    'a slip in a word that several names share, %s, finds those (typed slips, hand made)',
    (typed, meant) => {
      expect(nearestNames(typed, cropNames)).toEqual(meant);
    },
  );

  test('a slip of the whole name comes before one of a word in it', () => {
    expect(nearestNames('punpkin', cropNames)).toEqual(['pumpkin', 'small pumpkin']);
    expect(nearestNames('lenght', ['row length', 'length'])).toEqual(['length', 'row length']);
  });

  test('nothing near: none; never more than three', () => {
    expect(nearestNames('tomato', cropNames)).toEqual([]);
    expect(nearestNames('zzzzzzzz', cropNames)).toEqual([]);
    expect(nearestNames('cucumber', cropNames)).toHaveLength(3);
    expect(nearestNames('', cropNames)).toEqual([]);
  });

  test('another plant is no slip of a crop: chayote (Sechium edule) is not ayote; from memory', () => {
    expect(nearestNames('ayotte', ['ayote'])).toEqual(['ayote']);
    for (const plant of ['chayote', 'Chayotes']) expect(nearestNames(plant, ['ayote', 'ayotes'])).toEqual([]);
  });

  test('every name within a third of its letters is nearest-first by the textbook distance', () => {
    fc.assert(
      fc.property(fc.constantFrom(...cropNames), fc.nat(), fc.constantFrom('x', ''), (name, at, slip) => {
        const i = at % name.length;
        const typed = name.slice(0, i) + slip + name.slice(i + 1);
        const found = nearestNames(typed, cropNames);
        const [first = ''] = found;
        const least = Math.min(
          ...cropNames.map((one) => slipsBetween(typed.toLowerCase(), one.toLowerCase())),
        );
        expect(slipsBetween(typed.trim().toLowerCase(), first.toLowerCase())).toBeLessThanOrEqual(least);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test('the list given is not changed', () => {
    const names = ['b', 'a'];
    nearestNames('a', names);
    expect(names).toEqual(['b', 'a']);
  });
});
