import { expect, test } from 'vitest';
import { cellNameOf, printMark, readCellName, readMark } from '../../src/workbook/sheetMark';

test('a mark comes back from a name of an .xlsx and from one read as a formula', () => {
  const mark = { template: 'plots', version: 12 };
  expect(printMark(mark)).toBe('"plots 12"');
  expect(readMark(printMark(mark))).toEqual(mark);
  expect(readMark(`=${printMark(mark)}`)).toEqual(mark);
});

test.each(['', '=1', '="plots"', '="plots x"', '=Season!$A$1', '="a b 1"'])('%s is no mark', (formula) => {
  expect(readMark(formula)).toBeNull();
});

test.each(['plots', 'plots.es', 'crop-ranges ñ', '_x_'])(
  'the mark of %s comes back from the name of a cell',
  (template) => {
    const mark = { template, version: 3 };
    // Letters, digits, periods and underscores are what a name may hold (Excel's rule, from memory).
    expect(cellNameOf(mark)).toMatch(/^[A-Za-z_][\w.]*$/);
    expect(readCellName(cellNameOf(mark))).toEqual(mark);
  },
);

test.each(['', 'LAST_FROST', '_made_by_template', '_made_by_template.plots', '_made_by_template.plots.x'])(
  'a cell named "%s" marks nothing',
  (name) => {
    expect(readCellName(name)).toBeNull();
  },
);
