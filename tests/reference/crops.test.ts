import { describe, expect, test } from 'vitest';
import { cropNames, crops, flowerTypes, traits, type Trait } from '../../src/reference/crops';
import { minimumGermination, seedKinds } from '../../src/reference/seedStandards';
import { english } from '../../src/texts/english';
import { sourceRecord } from './sourceRecord';

const figuresOf = (trait: Trait) =>
  crops.flatMap((crop) =>
    crop.figures[trait] === undefined ? [] : [[crop.name, crop.figures[trait]] as const],
  );

/** What can be true of a figure in its unit; the limits are judgement, wide enough for any cucurbit. */
const sane: Readonly<Record<string, readonly [number, number]>> = {
  ft: [0.5, 15],
  in: [0.25, 120],
  seeds: [1, 10],
  plants: [1, 5],
  seedsPerOz: [50, 2000],
  share: [0.5, 1],
  days: [0, 200],
  weeks: [1, 8],
  F: [32, 110],
  lbPer100Ft: [50, 1500],
};

describe('the crop types', () => {
  test('are thirteen, each named once, and no name means two crops', () => {
    expect(crops).toHaveLength(13);
    const names = crops.flatMap((crop) => [crop.name, ...crop.synonyms]).map((name) => name.toLowerCase());
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    expect(cropNames).toEqual(crops.map((crop) => crop.name));
  });

  test('are frozen to the bottom', () => {
    for (const crop of crops) {
      expect([crop, crop.synonyms, crop.spanishNames, crop.figures].every(Object.isFrozen)).toBe(true);
      for (const figure of Object.values(crop.figures)) {
        expect(Object.isFrozen(figure) && Object.isFrozen(figure.grounds)).toBe(true);
      }
    }
  });

  test('have figures of declared traits alone', () => {
    for (const crop of crops) {
      for (const trait of Object.keys(crop.figures)) expect(Object.keys(traits)).toContain(trait);
    }
  });

  test('have a species and a flower type that is one of the list', () => {
    for (const crop of crops) {
      expect(flowerTypes).toContain(crop.figures['flower type']?.text);
      expect(crop.figures.species?.text).toMatch(/^(Cucumis|Cucurbita|Citrullus) [a-z]+/);
    }
  });
});

describe.each(Object.keys(traits) as Trait[])('figures of "%s"', (trait) => {
  const { kind, unit } = traits[trait];

  test('have a declared unit that texts can say and source.json repeats', () => {
    expect(Object.keys(english.units)).toContain(unit);
    expect(sourceRecord('crops').columns[trait]).toBe(unit);
  });

  test('are words or ranges as declared, low not above high, each with its ground', () => {
    expect(figuresOf(trait).length).toBeGreaterThan(0);
    for (const [crop, figure] of figuresOf(trait)) {
      expect(figure.grounds.length, crop).toBeGreaterThan(0);
      if (figure.note !== undefined) expect(Object.keys(english.cropNotes), crop).toContain(figure.note);
      if (kind === 'text') {
        expect('text' in figure && figure.text.trim() !== '', crop).toBe(true);
        continue;
      }
      if (!('low' in figure)) throw new Error(`${crop} has words for ${trait}`);
      const [least, most] = sane[unit] ?? [Infinity, -Infinity];
      expect(figure.low, crop).toBeLessThanOrEqual(figure.high);
      expect(figure.low, crop).toBeGreaterThanOrEqual(least);
      expect(figure.high, crop).toBeLessThanOrEqual(most);
      if (kind === 'count' || kind === 'days')
        expect([figure.low, figure.high].every(Number.isInteger)).toBe(true);
    }
  });
});

describe('storage', () => {
  // Utah Vegetable Production Guide; New England guide, table 16; University of California, Davis: 2 to 6 months.
  test.each([
    ['slicing cucumber', [50, 55], [0.8, 0.95], [7, 14]],
    ['summer squash', [45, 50], [0.8, 0.9], [7, 10]],
    ['winter squash', [50, 60], [0.5, 0.7], [2 * 30, 6 * 30]],
    ['pumpkin', [50, 60], [0.5, 0.7], [2 * 30, 6 * 30]],
    ['muskmelon', [32, 45], [0.85, 0.9], [4, 14]],
    ['watermelon', [55, 60], [0.9, 0.9], [10, 15]],
  ])('of %s: °F, humidity, days as printed', (name, temperature, humidity, days) => {
    const figures = crops.find((crop) => crop.name === name)?.figures;
    const ends = (['storage temperature', 'storage humidity', 'storage days'] as const).map((trait) => [
      figures?.[trait]?.low,
      figures?.[trait]?.high,
    ]);
    expect(ends).toEqual([temperature, humidity, days]);
  });

  test('no crop but melon and summer squash is kept under 50 °F, and gourds have no figure', () => {
    const cold = figuresOf('storage temperature').filter(([, figure]) => 'low' in figure && figure.low < 50);
    expect(cold.map(([crop]) => crop)).toEqual(['summer squash', 'muskmelon']);
    const kept = figuresOf('storage days').map(([crop]) => crop);
    expect(cropNames.filter((name) => !kept.includes(name))).toEqual(['gourd']);
  });
});

describe('figures that hang together', () => {
  test('germination standard is that of reference/seedStandards, and gourd has none', () => {
    for (const crop of crops) {
      const kind = seedKinds[crop.name];
      const standard = kind === undefined ? undefined : minimumGermination[kind];
      expect(crop.figures['germination standard']?.low, crop.name).toBe(standard);
      expect(crop.figures['germination standard']?.high, crop.name).toBe(standard);
    }
    expect(seedKinds['gourd']).toBeUndefined();
  });

  test('soil temperatures rise from minimum to maximum', () => {
    for (const { name, figures } of crops) {
      const order = (['soil minimum', 'soil optimum low', 'soil optimum high', 'soil maximum'] as const).map(
        (trait) => figures[trait]?.low,
      );
      if (order[0] === undefined) continue;
      expect(order, name).toEqual([...order].sort((a, b) => Number(a) - Number(b)));
      expect(figures['soil at planting']?.low, name).toBeGreaterThanOrEqual(order[0]);
    }
  });

  test('plants left in a hill are not more than seeds sown in it', () => {
    for (const { name, figures } of crops) {
      const plants = figures['plants per hill'];
      if (plants !== undefined)
        expect(plants.high, name).toBeLessThanOrEqual(figures['seeds per hill']?.low ?? 0);
    }
  });

  test('a crop that is judged by ripeness has no picking size, and every other has one', () => {
    for (const { name, figures } of crops) {
      const byRipeness = figures['size measured']?.text === 'ripeness';
      expect(figures['picking size'] === undefined, name).toBe(byRipeness);
    }
  });

  test('squash, pumpkin and gourd that are picked once have 0 harvest days; none without days has them', () => {
    for (const name of ['bush winter squash', 'winter squash', 'small pumpkin', 'pumpkin', 'gourd']) {
      expect(crops.find((crop) => crop.name === name)?.figures['harvest days']).toMatchObject({
        low: 0,
        high: 0,
      });
    }
  });

  test.each([
    ['slicing cucumber', 12000, 26000, 5],
    ['muskmelon', 8000, 20000, 6],
    ['pumpkin', 15000, 30000, 8],
    ['watermelon', 10000, 70000, 8],
  ])('yield of %s is %d to %d lb an acre at rows %d ft apart (hand computed)', (name, low, high, rows) => {
    const yields = crops.find((crop) => crop.name === name)?.figures['yield per 100'];
    expect([yields?.low, yields?.high]).toEqual(
      [low, high].map((perAcre) => Math.round((perAcre * rows * 100) / 43560)),
    );
  });

  test('every note has a figure', () => {
    const used = new Set(crops.flatMap(({ figures }) => Object.values(figures).map((figure) => figure.note)));
    for (const note of Object.keys(english.cropNotes)) expect(used).toContain(note);
  });
});
