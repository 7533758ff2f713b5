import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { packs } from '../../src/functions/seedPacks';
import { run } from './run';

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe('SEED.PACKS', () => {
  const order = [
    [100, 2, 7],
    [1000, 1, 20],
    ['total', 3, 27],
  ];

  test('a row for each size to buy, then the total (hand computed in cheapestPacks.test)', () => {
    expect(run('SEED.PACKS', 1200, column(100, 500, 1000), column(3.5, 12, 20))).toEqual(order);
    expect(run('SEED.PACKS', '1200', [[100, 500, 1000]], [[3.5, 12, 20]])).toEqual(order);
    expect(run('SEED.PACKS', [[3]], 1, '0.1')).toEqual([
      [1, 3, 0.3],
      ['total', 3, 0.3],
    ]);
  });

  test('blank lines of the price list are passed over, whatever a host makes of them', () => {
    for (const blank of [null, undefined, '', 0, '  ']) {
      const sizes = column(100, blank, 500, 1000, blank);
      expect(run('SEED.PACKS', 1200, sizes, column(3.5, blank, 12, 20, blank))).toEqual(order);
    }
  });

  test('refusals say which line is at fault and what to do', () => {
    const prices = column(3.5, 12);
    expect(run('SEED.PACKS', 1200, column(0, 500), prices)).toBe(
      '#VALUE! The size of a pack is 0. It must be at least 1 seed and at most 10000000 seeds.',
    );
    expect(run('SEED.PACKS', 1200, column(100, 500), column(-3.5, 12))).toBe(
      '#VALUE! The price of a pack is -3.5. It must be above 0 and at most 100000.',
    );
    expect(run('SEED.PACKS', 1200, column(100, 500), column(3.5, ''))).toBe(
      '#VALUE! The price of a pack is missing. Fill it in.',
    );
    expect(run('SEED.PACKS', 1200, column(100, 500, 1000), prices)).toBe(
      '#VALUE! The range of pack sizes has 3 cells and the range of pack prices has 2. Give ranges of equal length.',
    );
    expect(run('SEED.PACKS', 1200, column('', null), column('', null))).toBe(
      '#VALUE! The range of pack sizes is missing. Fill it in.',
    );
    expect(run('SEED.PACKS', 1200, column(100), column(10 / 3))).toBe(
      '#VALUE! The price of a pack is 3.33333. Give it with at most 4 decimals, such as 3.95.',
    );
    const many = Array.from({ length: 21 }, (_, i) => [i + 1]);
    expect(run('SEED.PACKS', 1200, many, many)).toBe(
      '#VALUE! There are 21 packs to choose from. Give at most 20: leave out those that cost more per seed than a smaller one.',
    );
    expect(run('SEED.PACKS', 2_000_000, column(100), column(3))).toBe(
      '#VALUE! The number of seeds is 2000000. It must be at least 1 seed and at most 1000000 seeds.',
    );
    expect(run('SEED.PACKS', 1200, column('small'), column(3))).toMatch(/"small", which is not a number/);
    expect(run('SEED.PACKS', 1200, column(100), column({ error: '#REF!' }))).toMatch(
      /itself an error \(#REF!\)/,
    );
  });

  test('the working can be read', () => {
    const lines = explain(packs, [1200, column(100, 500, 1000), column(3.5, 12, 20)]);
    expect(lines.map(({ title, formula, result }) => [title, formula, result])).toEqual([
      ['cost of one size', 'packs of 100 seeds × price of a pack', '7'],
      ['cost of one size', 'packs of 1000 seeds × price of a pack', '20'],
      ['cost of the order', expect.stringMatching(/^the cheapest packs/), '27'],
      ['arithmetic, no source', '', ''],
    ]);
    for (const { formula, numbersPutIn } of lines) expect(formula + numbersPutIn).not.toMatch(/[{}_]/);
  });
});
