import { describe, expect, test } from 'vitest';
import { packsOfCrop } from '../../../src/calc/seed/packsOfCrop';
import { refusalOf } from '../refusal';

const crops = ['zucchini', 'Cantaloupe', null, 'summer squash', 'squish'];
const sizes = [100, 200, 300, 400, 500];
const prices = [1, 2, 3, 4, 5];

describe('packsOfCrop', () => {
  test('takes the trade’s names, passes over lines without a known one, and keeps the order', () => {
    expect(packsOfCrop('summer squash', crops, sizes, prices)).toEqual({ sizes: [100, 400], prices: [1, 4] });
    expect(packsOfCrop(' Melon ', crops, sizes, prices)).toEqual({ sizes: [200], prices: [2] });
  });

  test('leaves its lists as they are', () => {
    const before = JSON.stringify([crops, sizes, prices]);
    packsOfCrop('zucchini', crops, sizes, prices);
    expect(JSON.stringify([crops, sizes, prices])).toBe(before);
  });

  test('bad input', () => {
    expect(refusalOf(() => packsOfCrop('zuchini', crops, sizes, prices))).toMatchObject({
      code: 'unknownName',
      nearest: expect.arrayContaining(['zucchini']),
    });
    expect(refusalOf(() => packsOfCrop('gourd', crops, sizes, prices))).toEqual({
      code: 'noPackListed',
      crop: 'gourd',
    });
    expect(refusalOf(() => packsOfCrop('gourd', [], [], []))).toMatchObject({ code: 'noPackListed' });
    expect(refusalOf(() => packsOfCrop('zucchini', crops, sizes.slice(1), prices))).toEqual({
      code: 'unequalLists',
      name: 'all_crops',
      count: 5,
      otherName: 'pack_sizes',
      otherCount: 4,
    });
    expect(refusalOf(() => packsOfCrop('zucchini', crops, sizes, []))).toMatchObject({
      otherName: 'pack_prices',
    });
  });
});
