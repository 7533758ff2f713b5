import { beforeEach, expect, test, vi } from 'vitest';
import type { FunctionDefinition } from '../../src/functions/define';
import type * as ToCell from '../../src/functions/toCell';

/** A definition whose outcome is given. */
const giving = (outcome: ReturnType<FunctionDefinition['run']>): FunctionDefinition => ({
  id: 'DATE.ANY',
  parameters: [],
  result: 'day',
  dateColumns: [],
  run: () => outcome,
  read: () => [],
  calculate: () => [],
  explain: () => ({ outcome, entries: [] }),
});
const pattern = 'yyyy-mm-dd';
const dates = giving({
  value: [
    [46144, 'none'],
    [46145, true],
  ],
  pattern,
});

let module: typeof ToCell;
beforeEach(async () => {
  vi.resetModules();
  module = await import('../../src/functions/toCell');
});

test('a format is left out until the program is known to take one', () => {
  expect(module.toCell(dates, [])).toEqual([
    [46144, 'none'],
    [46145, true],
  ]);
  module.formatResultsIf(() => false);
  expect(module.toCell(giving({ value: 46144, pattern }), [])).toBe(46144);
});

test('each number of a range carries the format, a word or a truth does not', () => {
  module.formatResultsIf(() => true);
  const formatted = (basicValue: number): object => ({ type: 'Double', basicValue, numberFormat: pattern });
  expect(module.toCell(dates, [])).toEqual([
    [formatted(46144), 'none'],
    [formatted(46145), true],
  ]);
  expect(module.toCell(giving({ value: 7260 }), [])).toBe(7260);
});

test('the program is asked once, and only for a result with a format', () => {
  const ask = vi.fn(() => true);
  module.formatResultsIf(ask);
  module.toCell(giving({ value: 7260 }), []);
  expect(ask).not.toHaveBeenCalled();
  module.toCell(dates, []);
  module.toCell(dates, []);
  expect(ask).toHaveBeenCalledTimes(1);
});
