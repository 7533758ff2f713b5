import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rowYield } from '../../../src/calc/harvest/rowYield';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const lengths = fc.integer({ min: 0, max: 1e8 }).map((hundredths) => hundredths / 100);
const yields = fc.integer({ min: 0, max: 2e5 }).map((hundredths) => hundredths / 100);

describe('rowYield', () => {
  test('UF/IFAS, summer squash: 15 lb of 10 ft of row', () => {
    expect(rowYield(10, 150, undefined)).toBe(15);
  });

  test('New England Vegetable Guide, table 15, cucumber: 12,000 lb an acre, on 5 ft rows 8,712 ft long', () => {
    const per100 = (12000 * 100) / 8712;
    expect(rowYield(8712, per100, undefined)).toBeCloseTo(12000, 8);
  });

  test('250 ft at 150 lb, four fifths of it sold (hand computed)', () => {
    expect(rowYield(250, 150, 0.8)).toBeCloseTo(300, 10);
  });

  test('doubles with the row and with the yield, never exceeds the unsorted yield', () => {
    fc.assert(
      fc.property(lengths, yields, fc.integer({ min: 0, max: 100 }), (length, per100, percent) => {
        const share = percent / 100;
        const once = rowYield(length, per100, share);
        expect(rowYield(2 * length, per100, share)).toBe(2 * once);
        expect(rowYield(length, 2 * per100, share)).toBeCloseTo(2 * once, 5);
        expect(once).toBeLessThanOrEqual(rowYield(length, per100, 1));
      }),
      seeded,
    );
  });

  test('bounds: 0 is none, below it is refused, and so is NaN; 85 is not 85 %', () => {
    expect(rowYield(0, 150, 1)).toBe(0);
    expect(rowYield(100, 0, 1)).toBe(0);
    expect(rowYield(100, 150, 0)).toBe(0);
    for (const bad of [-1, NaN, Infinity]) {
      expect(refusalOf(() => rowYield(bad, 150, 1))).toMatchObject({
        code: 'outOfRange',
        name: 'row_length',
        atLeast: 0,
      });
      expect(refusalOf(() => rowYield(100, bad, 1))).toMatchObject({
        code: 'outOfRange',
        name: 'yield_per_100',
        atLeast: 0,
      });
    }
    expect(refusalOf(() => rowYield(100, 150, 85))).toEqual({
      code: 'percentForShare',
      name: 'marketable',
      value: 85,
    });
    expect(refusalOf(() => rowYield(100, 150, -0.1))).toMatchObject({
      code: 'outOfRange',
      name: 'marketable',
    });
    expect(refusalOf(() => rowYield(100, 150, NaN))).toMatchObject({
      code: 'outOfRange',
      name: 'marketable',
    });
  });

  test('the working ends in the returned yield and says what a published yield is', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      rowYield(250, 150, undefined, record),
    );
    expect(value).toBe(rowYield(250, 150, undefined));
    expect(steps.at(-1)).toMatchObject({ step: 'rowYield', result: 375 });
    expect(assumptions).toEqual([{ assumed: 'marketable', value: 1, unit: 'share', ground: 'judgement' }]);
    expect(remarks).toEqual(['yieldIsMarketable']);
    expect(recording((record) => rowYield(250, 150, 0.8, record)).remarks).toEqual([]);
  });
});
