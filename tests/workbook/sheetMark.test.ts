import { expect, test } from 'vitest';
import { printMark, readMark } from '../../src/workbook/sheetMark';

test('a mark comes back from a name of an .xlsx and from one read as a formula', () => {
  const mark = { template: 'plots', version: 12 };
  expect(printMark(mark)).toBe('"plots 12"');
  expect(readMark(printMark(mark))).toEqual(mark);
  expect(readMark(`=${printMark(mark)}`)).toEqual(mark);
});

test.each(['', '=1', '="plots"', '="plots x"', '=Season!$A$1', '="a b 1"'])('%s is no mark', (formula) => {
  expect(readMark(formula)).toBeNull();
});
