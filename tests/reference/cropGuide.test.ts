import { expect, test } from 'vitest';
import { chosenFor, cropUses, troubles } from '../../src/reference/cropGuide';
import { cropNames, crops } from '../../src/reference/crops';
import { picklingCrops } from '../../src/reference/pickingSizes';
import { sources, unsourcedGrounds } from '../../src/reference/sources';
import { guide } from '../../src/texts/english/guide';
import { fill } from '../../src/texts/fill';
import { guide as spanishGuide } from '../../src/texts/spanish/guide';

const words = guide.crops;
const grounds = new Set<string>([...Object.keys(sources), ...unsourcedGrounds]);

test('every use and sign has crops of the reference, words and a ground; all is frozen', () => {
  for (const { use, crop, note, grounds: of } of chosenFor) {
    expect(cropUses).toContain(use);
    expect(cropNames).toContain(crop);
    if (note !== undefined) expect(Object.keys(words.useNotes)).toContain(note);
    expect(of.length > 0 && of.every((one) => grounds.has(one)), `${use} ${crop}`).toBe(true);
  }
  for (const { sign, crops: of, grounds: on } of troubles) {
    expect(Object.keys(words.troubles)).toContain(sign);
    for (const crop of of) expect(cropNames).toContain(crop);
    expect(on.length > 0 && on.every((one) => grounds.has(one)), sign).toBe(true);
  }
  expect(Object.keys(words.uses)).toEqual(cropUses);
  expect(Object.keys(words.troubles).sort()).toEqual(troubles.map(({ sign }) => sign).sort());
  for (const one of [chosenFor, troubles, ...chosenFor, ...troubles]) expect(Object.isFrozen(one)).toBe(true);
});

test('it agrees with the tables beside it: crops picked young for pickles, and the one that sets without bees', () => {
  const forPickles = chosenFor.filter(({ use }) => use === 'pickles').map(({ crop }) => crop);
  expect(forPickles).toEqual(picklingCrops);
  const underCover = chosenFor.filter(({ use }) => use === 'underCover').map(({ crop }) => crop);
  const withoutBees = crops.filter(({ figures }) => figures['flower type']?.text === 'parthenocarpic');
  expect(underCover).toEqual(withoutBees.map(({ name }) => name));
});

test('every crop has signs of trouble, bitter fruit among them', () => {
  for (const crop of cropNames) {
    const signs = troubles.filter(({ crops: of }) => of.includes(crop)).map(({ sign }) => sign);
    expect(signs, crop).toContain('bitter');
    expect(signs.length, crop).toBeGreaterThan(2);
  }
});

test('a sign of trouble and what it means have one colon between them', () => {
  for (const { trouble, troubles: signs } of [words, spanishGuide.crops])
    for (const sign of Object.values(signs)) {
      const [first] = fill(trouble, sign).split(/\. /);
      expect(first?.match(/:/g), first).toHaveLength(1);
    }
});
