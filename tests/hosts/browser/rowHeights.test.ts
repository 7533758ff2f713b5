import { expect, test } from 'vitest';
import { countLines, rowHeights } from '../../../src/hosts/browser/rowHeights';
import { newSheet } from '../../contract/contractWorkbook';

test.each([
  ['', 10, 1],
  ['Plot', 10, 1],
  ['Start transplants', 11, 2],
  ['Start transplants', 17, 1],
  ['Days to maturity', 8, 2],
  ['a b c', 1, 3],
  ['transplants', 6, 2],
  ['one\ntwo', 10, 2],
])('%j in %d characters takes %d lines', (text, characters, lines) => {
  expect(countLines(text, characters)).toBe(lines);
});

test('a wrapped header and a large title get the height they need, other rows keep theirs', () => {
  const sheet = newSheet('Sheet', {
    blocks: [{ row: 0, column: 0, contents: [['Title'], ['Start transplants', 'Plot'], ['a long text', 1]] }],
    dressings: [
      { row: 0, column: 0, rows: 1, columns: 1, role: 'title', format: 'general' },
      { row: 1, column: 0, rows: 1, columns: 2, role: 'header', format: 'general' },
      { row: 2, column: 0, rows: 1, columns: 2, role: 'input', format: 'general' },
    ],
    widths: [13, 13],
  });
  const heights = rowHeights(sheet, 24);
  expect([...heights.keys()]).toEqual([0, 1]);
  expect(heights.get(1)).toBe(42);
});
