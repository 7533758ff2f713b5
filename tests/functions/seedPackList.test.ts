import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { packCost } from '../../src/functions/seedPackList';
import { run } from './run';

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

/** The packs of seedPacks.test.ts among those of other crops, one of them spoiled in every cell. */
const list = [
  column('cantaloupe', 'zucchini', 'Melon', 'no such crop', null, 'muskmelon', 'pumpkin'),
  column(100, 'many', 500, 0, '', 1000, 50),
  column(3.5, '$4,50', 12, { error: '#REF!' }, '', '20', 0),
];
const cost = (seeds: unknown, crop: unknown): unknown => run('SEED.PACKCOST', seeds, crop, ...list);
const packs = (seeds: unknown, crop: unknown): unknown => run('SEED.PACKLIST', seeds, crop, ...list);

describe('SEED.PACKCOST and SEED.PACKLIST', () => {
  test('as SEED.PACKS of the lines of the crop, whatever stands on the others', () => {
    expect(run('SEED.PACKS', 1200, column(100, 500, 1000), column(3.5, 12, 20))).toEqual([
      [100, 2, 7],
      [1000, 1, 20],
      ['total', 3, 27],
    ]);
    expect(cost(1200, 'muskmelon')).toBe(27);
    expect(packs(1200, 'muskmelon')).toBe('2 of 100, 1 of 1000');
    expect(packs('1', [['cantaloupe']])).toBe('1 of 100');
    expect(run('SEED.PACKCOST', 3, 'gourd', 'gourd', 1, '0.1')).toBe(0.3);
  });

  test('a crop without a line is said', () => {
    for (const answer of [cost(10, 'gourd'), packs(10, 'gourd')]) {
      expect(answer).toBe(
        '#N/A No pack of gourd is on the price list. Add one with its seeds and its price.',
      );
    }
    expect(cost(10, 'zuchini')).toMatch(/^#N\/A .*zucchini/);
  });

  test('what is wrong on a line of the crop is said, never free and never without end', () => {
    expect(cost(10, 'zucchini')).toBe(
      '#VALUE! The size of a pack is "many", which is not a number. Type digits with a decimal point and no unit.',
    );
    const one = (size: unknown, price: unknown): unknown =>
      run('SEED.PACKCOST', 10, 'zucchini', column('gourd', 'zucchini'), column(9, size), column(9, price));
    expect(one(100, '$4,50')).toMatch(/price of a pack is "\$4,50"\. Take the currency sign out/);
    expect(one('1,000', 4.5)).toMatch(/size of a pack is "1,000", and the comma is in the way/);
    expect(one(0, 4.5)).toMatch(/size of a pack is 0\. It must be at least 1 seed/);
    expect(one(100, 0)).toMatch(/price of a pack is 0\. It must be above 0/);
    expect(one(100, '')).toBe('#VALUE! The price of a pack is missing. Fill it in.');
    expect(one('', 4.5)).toBe('#VALUE! The size of a pack is missing. Fill it in.');
    expect(one(100, { error: '#DIV/0!' })).toMatch(/itself an error \(#DIV\/0!\)/);
    expect(one('', '')).toBe('#VALUE! The range of pack sizes is missing. Fill it in.');
  });

  test('ranges of unequal length are refused', () => {
    expect(run('SEED.PACKCOST', 10, 'gourd', column('gourd', 'gourd'), column(5), column(1, 2))).toMatch(
      /range of all crops has 2 cells and the range of pack sizes has 1/,
    );
  });

  test('the working is that of the packs', () => {
    const lines = explain(packCost, [1200, 'melon', ...list]);
    expect(lines.map(({ title, result }) => [title, result])).toEqual([
      ['cost of one size', '7'],
      ['cost of one size', '20'],
      ['cost of the order', '27'],
      ['arithmetic, no source', ''],
    ]);
  });
});
