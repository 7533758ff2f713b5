import { describe, expect, test } from 'vitest';
import { cropFigure, figureBounds } from '../../../src/calc/crops/cropFigure';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { unitSystems } from '../../../src/calc/units/units';
import { crops, traits, type NumberTrait, type Trait } from '../../../src/reference/crops';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;
const numberTraits = (Object.keys(traits) as Trait[]).filter(
  (trait): trait is NumberTrait => traits[trait].kind !== 'text',
);

describe('cropFigure', () => {
  test.each([
    ['cucumber', 'row spacing', 4, 6, 'Illinois Vegetable Garden Guide: rows 48 to 72 in'],
    ['cucumber', 'plant spacing', 12, 12, 'Illinois Vegetable Garden Guide'],
    ['winter squash', 'hill spacing', 6, 6, 'Illinois Vegetable Garden Guide: hills 72 in'],
    ['summer squash', 'days to maturity', 45, 55, 'Illinois Vegetable Garden Guide'],
    ['cucumber', 'flower to pick', 8, 10, 'North Carolina AG-552, harvest'],
    ['cucumber', 'harvest days', 14, 21, 'North Carolina AG-552: two- to three-week period'],
    ['muskmelon', 'soil optimum low', 75, 75, 'Oregon State soil temperatures'],
    ['watermelon', 'germination standard', 0.7, 0.7, '7 CFR 201.31'],
    ['triploid watermelon', 'transplant weeks', 4, 6, 'Delaware table A-4'],
  ] as const)('%s, %s: %d to %d (%s)', (name, trait, low, high, _origin) => {
    expect(cropFigure(findCrop(name), trait, 'low', us)).toBe(low);
    expect(cropFigure(findCrop(name), trait, 'high', us)).toBe(high);
  });

  test('the middle: days and counts round up, lengths and weeks do not (hand computed)', () => {
    expect(cropFigure(findCrop('pickling cucumber'), 'days to maturity', 'mid', us)).toBe(53);
    expect(cropFigure(findCrop('cucumber'), 'seeds per hill', 'mid', us)).toBe(5);
    expect(cropFigure(findCrop('watermelon'), 'plants per hill', 'mid', us)).toBe(3);
    expect(cropFigure(findCrop('summer squash'), 'row spacing', 'mid', us)).toBe(3.5);
    expect(cropFigure(findCrop('watermelon'), 'transplant weeks', 'mid', us)).toBe(3.5);
  });

  test('metric (hand computed): 12 in 30.48 cm, 5 ft 1.524 m, 60 F 15.56 C, 138 lb per 100 ft 205.4 kg per 100 m', () => {
    const crop = findCrop('slicing cucumber');
    expect(cropFigure(crop, 'plant spacing', 'mid', metric)).toBe(30.48);
    expect(cropFigure(crop, 'row spacing', 'mid', metric)).toBe(1.524);
    expect(cropFigure(crop, 'soil minimum', 'mid', metric)).toBeCloseTo(15.5556, 4);
    expect(cropFigure(crop, 'seeds per weight', 'mid', metric)).toBeCloseTo(35.274, 3);
    expect(cropFigure(crop, 'yield per 100', 'low', metric)).toBeCloseTo(205.367, 3);
    expect(cropFigure(crop, 'days to maturity', 'mid', metric)).toBe(60);
  });

  test('an absent figure is refused', () => {
    expect(refusalOf(() => cropFigure(findCrop('winter squash'), 'yield per 100', 'low', us))).toEqual({
      code: 'noFigure',
      crop: 'winter squash',
      trait: 'yield per 100',
    });
  });

  test('low ≤ mid ≤ high; the last step is the value; recording changes nothing; grounds are noted', () => {
    for (const crop of crops) {
      for (const trait of numberTraits) {
        const figure = crop.figures[trait];
        if (figure === undefined) continue;
        for (const units of [us, metric]) {
          const [low = NaN, mid = NaN, high = NaN] = figureBounds.map((bound) => {
            const { value, steps, assumptions } = recording((record) =>
              cropFigure(crop, trait, bound, units, record),
            );
            expect(steps.at(-1)?.result).toBe(value);
            expect(cropFigure(crop, trait, bound, units)).toBe(value);
            const unsourced = figure.grounds.filter((ground) => /^(common|judg)/.test(ground));
            expect(assumptions.map(({ ground }) => ground)).toEqual(unsourced);
            return value;
          });
          expect(mid).toBeGreaterThanOrEqual(low);
          expect(high).toBeGreaterThanOrEqual(mid);
        }
      }
    }
  });
});
