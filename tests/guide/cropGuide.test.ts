import { afterEach, describe, expect, test, vi } from 'vitest';
import { cropGuide } from '../../src/guide/cropGuide';
import { cropNames, crops, traits } from '../../src/reference/crops';
import { english } from '../../src/texts/english';
import { guide } from '../../src/texts/english/guide';

const us = cropGuide('us');
const metric = cropGuide('metric');
const of = (guide: typeof us, name: string, heading: string) =>
  guide.crops.find((crop) => crop.name === name)?.said[heading] ?? [];

describe('the crop guide', () => {
  test('has every crop with every figure of the reference, and no other', () => {
    expect(us.crops.map(({ name }) => name)).toEqual(cropNames);
    for (const { name, figures } of crops) {
      for (const trait of Object.keys(traits)) {
        expect(of(us, name, trait), `${name} ${trait}`).toHaveLength(trait in figures ? 1 : 0);
      }
    }
  });

  test('says ranges with units, as published', () => {
    // University of Illinois Extension, Illinois Vegetable Garden Guide.
    const [spacing] = of(us, 'pickling cucumber', 'row spacing');
    expect(spacing?.text).toBe('4 to 6 ft');
    expect(spacing?.remark).toBe('Common practice, no source: rows 4 to 5 ft, 12 to 18 in in the row.');
    expect(spacing?.source).toContain('Illinois Vegetable Garden Guide');
    expect(of(us, 'pickling cucumber', 'plant spacing')[0]?.text).toBe('12 in');
    // 7 CFR 201.31.
    expect(of(us, 'watermelon', 'germination standard')[0]?.text).toBe('70%');
    expect(of(us, 'watermelon', 'species')[0]?.text).toMatch(/^Citrullus/);
  });

  test('says them in metric: 4 ft are 1.2192 m, 12 in 30.48 cm, 60 °F 15.6 °C', () => {
    expect(of(metric, 'pickling cucumber', 'row spacing')[0]?.text).toBe('1.22 to 1.83 m');
    expect(of(metric, 'pickling cucumber', 'plant spacing')[0]?.text).toBe('30.5 cm');
    expect(of(metric, 'pickling cucumber', 'soil minimum')[0]?.text).toBe('15.6 °C');
    expect(of(metric, 'pickling cucumber', 'days to maturity')[0]?.text).toBe('50 to 55 days');
  });

  test('says what has no source where it stands', () => {
    const [margin] = of(us, 'gourd', 'frost margin');
    expect([margin?.remark.startsWith('judgement'), margin?.source]).toEqual([true, '']);
  });

  test('says when to pick: by size, young for pickles, or by ripeness', () => {
    const { picking } = guide.crops.headings;
    // USDA AIB 539: 1 1/2 to 4 in.
    expect(of(us, 'slicing cucumber', picking).map(({ text }) => text)).toEqual([
      '6 to 8 in long',
      '1.5 to 4 in for pickles',
    ]);
    expect(of(us, 'pickling cucumber', picking).map(({ text }) => text)).toEqual(['1.5 to 4 in long']);
    expect(of(us, 'gourd', picking)[0]?.text).toBe(english.ripeness.dryStem);
    for (const name of cropNames) expect(of(us, name, picking), name).not.toEqual([]);
  });

  test('says at how many beetles to act, what a bushel weighs, how long seed keeps', () => {
    const { beetles, bushel, seedLife } = guide.crops.headings;
    // Purdue: 1 on cucumber, 5 on watermelon. USDA AIB 539: 48 lb; Illinois: to 50.
    expect(of(us, 'slicing cucumber', beetles)[0]?.text).toBe('1 a plant');
    expect(of(us, 'watermelon', beetles)[0]?.text).toBe('5 a plant');
    expect(of(us, 'gourd', beetles)).toEqual([]);
    expect(of(us, 'slicing cucumber', bushel).map(({ text }) => text)).toEqual(['48 lb', '50 lb']);
    expect(of(metric, 'slicing cucumber', bushel)[0]?.text).toBe('21.8 kg');
    expect(of(us, 'summer squash', seedLife)[0]?.text).toBe('3 to 4 years');
  });

  test('carries the cautions', () => {
    const { bitterFruit, treatedSeed, pesticides, canning } = english.cautions;
    expect(us.cautions).toEqual([bitterFruit, treatedSeed, pesticides, canning]);
  });
});

describe('the crop guide in Spanish', () => {
  afterEach(() => {
    globalThis.cucurbitLanguage = undefined;
    vi.resetModules();
  });

  test('says headings, figures that are words, and the lack of a source in Spanish', async () => {
    globalThis.cucurbitLanguage = 'es';
    vi.resetModules();
    const spanish = (await import('../../src/guide/cropGuide')).cropGuide('us');
    expect(spanish.headings).toHaveLength(us.headings.length);
    const same = spanish.headings.filter((heading) => us.headings.includes(heading));
    expect(same).toEqual([]);
    const texts = spanish.crops.flatMap(({ said }) =>
      Object.values(said).flatMap((lines) => lines.flatMap(({ text, remark }) => [text, remark])),
    );
    expect(texts.length).toBeGreaterThan(500);
    const inEnglish =
      /judgement|common practice|\b(seed|length|diameter|ripeness|or)\b|oecious|parthenocarpic|triploid\b/;
    expect(texts.filter((text) => inEnglish.test(text))).toEqual([]);
  });
});
