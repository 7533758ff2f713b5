/**
 * What native formulas give. Expected values are Excel's: from its documentation, or worked out by hand from the
 * rule that the group's title states. `tests/fixtures/libreoffice-7.4.7` holds what another program computes for
 * the printed formulas.
 */
import type { CellValue, Expression, NewSheet } from '../../../src/workbook/port';
import { allOf, column, input, native, operate } from '../../../src/workbook/expressions';

export const sampleRows: readonly (readonly CellValue[])[] = [
  ['A1', 10, true, null],
  ['=2+2', 20, 'x', null],
  ['007', 30, '5', null],
  ['a*b', 40, null, null],
  ['axb', 50, 2, null],
  ['<5', 4, 'TRUE', null],
  ['Zeta', 7, false, null],
  ['=x', 0, 0, null],
];
export const sampleHeaders = ['Plot', 'Length', 'Mix', 'Nothing', 'Row (ft)', "It's [1] #2"] as const;

/** Cells with names, outside of the table. */
export const sampleNames: Readonly<Record<string, CellValue>> = {
  NO_VALUE: null,
  SOME_TEXT: 'x',
  TRUE_TEXT: 'TRUE',
  SOME_NUMBER: 7,
  SOME_TRUTH: true,
  FORMULA_LIKE: '=2+2',
  NUMBER_LIKE: '007',
};

const plot = allOf('Sample', 'Plot');
const length = allOf('Sample', 'Length');
const mix = allOf('Sample', 'Mix');
const nothing = allOf('Sample', 'Nothing');
const empty = input('NO_VALUE');
const text = input('SOME_TEXT');
const division = operate(1, '/', 0);

export type Case = readonly [Expression, string | number | boolean];

export const semantics: Readonly<Record<string, readonly Case[]>> = {
  'an empty cell is "", 0 and FALSE at once': [
    [operate(empty, '=', ''), true],
    [operate(empty, '=', 0), true],
    [operate(empty, '=', false), true],
    [operate(empty, '=', column('Nothing')), true],
    [operate(empty, '&', 'x'), 'x'],
    [operate(empty, '+', 1), 1],
    [empty, 0],
    [native('IF', true, empty), 0],
    [native('IF', empty, 1, 2), 2],
    [native('ISNUMBER', empty), false],
    [native('ISERROR', empty), false],
    [native('IF', operate(empty, '=', ''), '', empty), ''],
  ],
  'text compares without regard to case': [
    [operate('A', '=', 'a'), true],
    [operate('é', '=', 'É'), true],
    [operate('e', '=', 'é'), false],
    [operate('a', '<', 'B'), true],
    [operate('Z', '<', 'a'), false],
  ],
  'numbers stand before text, text before truth values': [
    [operate('5', '=', 5), false],
    [operate('a', '>', 5), true],
    [operate(2, '>', '1'), false],
    [operate(true, '>', 'z'), true],
    [operate(1, '=', true), false],
  ],
  'arithmetic takes text for the number it stands for': [
    [operate('5', '+', 1), 6],
    [operate(' 5 ', '+', 0), 5],
    [operate('50%', '+', 0), 0.5],
    [operate('1,234', '+', 0), 1234],
    [operate('2026-05-02', '+', 0), 46144],
    [operate(true, '+', 1), 2],
    [operate('x', '+', 1), '#VALUE!'],
    [operate('', '+', 1), '#VALUE!'],
    [division, '#DIV/0!'],
    [operate(1e308, '*', 10), '#NUM!'],
  ],
  '15 digits count': [
    [operate(operate(0.1, '+', 0.2), '=', 0.3), true],
    [operate(operate(0.1, '+', 0.2), '>', 0.3), false],
    [operate(operate(0.1, '+', 0.2), '-', 0.3), 0],
  ],
  'operators keep their order': [
    [operate(7, '-', operate(3, '-', 2)), 6],
    [operate(operate(7, '-', 3), '-', 2), 2],
    [operate(operate(1, '+', 2), '*', 3), 9],
    [operate(8, '/', operate(4, '/', 2)), 4],
    [operate(2, '-', -3), 5],
    [operate(operate(1, '=', 1), '=', true), true],
  ],
  '& writes numbers as General, to 15 digits': [
    [operate(operate(1, '/', 3), '&', ''), '0.333333333333333'],
    [operate(operate(0.1, '+', 0.2), '&', ''), '0.3'],
    [operate(operate(100, '*', 1.1), '&', ''), '110'],
    [operate(1e-5, '&', ''), '0.00001'],
    [operate(1e-7, '&', ''), '0.0000001'],
    [operate(-2.5, '&', ''), '-2.5'],
    [operate(true, '&', ''), 'TRUE'],
    [operate(1e21, '&', ''), '1E+21'],
    [operate(division, '&', ''), '#DIV/0!'],
  ],
  'errors go through; the left one before the right one': [
    [operate(division, '=', division), '#DIV/0!'],
    [operate(operate('x', '+', 1), '+', division), '#VALUE!'],
    [native('IF', division, 1, 2), '#DIV/0!'],
    [native('SUM', division, 1), '#DIV/0!'],
    [native('ISERROR', division), true],
    [native('IFERROR', division, 'e'), 'e'],
    [native('IFERROR', 3, 'e'), 3],
  ],
  'IF evaluates one branch': [
    [native('IF', true, 1, division), 1],
    [native('IF', false, 1), false],
    [native('IF', 'TRUE', 1, 2), 1],
    [native('IF', 'x', 1, 2), '#VALUE!'],
    [native('IF', 0.5, 1, 2), 1],
  ],
  'AND and OR: text in cells is passed over, errors are not': [
    [native('AND', mix), false],
    [native('OR', mix), true],
    [native('AND', nothing), '#VALUE!'],
    [native('AND', text), '#VALUE!'],
    [native('AND', text, true), true],
    [native('AND', 'TRUE', true), true],
    [native('AND', 'x', true), '#VALUE!'],
    [native('AND', empty, true), true],
    [native('OR', false, division), '#DIV/0!'],
    [native('OR', true, division), '#DIV/0!'],
    [native('AND', false, division), '#DIV/0!'],
  ],
  'SUM, MIN and MAX: in cells only numbers count': [
    [native('SUM', mix), 2],
    [native('SUM', length), 161],
    [native('SUM', nothing), 0],
    [native('SUM', true, '5'), 6],
    [native('SUM', 'x'), '#VALUE!'],
    [native('SUM', input('SOME_TRUTH'), input('TRUE_TEXT')), 0],
    [native('MIN', mix), 0],
    [native('MAX', mix), 2],
    [native('MIN', nothing), 0],
    [native('MIN', 3, input('SOME_NUMBER')), 3],
    [native('MAX', '7', 3), 7],
  ],
  'COUNTIF reads a text criterion': [
    [native('COUNTIF', plot, '=2+2'), 0],
    [native('COUNTIF', plot, input('FORMULA_LIKE')), 0],
    [native('COUNTIF', plot, operate('=', '&', input('FORMULA_LIKE'))), 1],
    [native('COUNTIF', plot, '<5'), 0],
    [native('COUNTIF', plot, '=<5'), 1],
    [native('COUNTIF', plot, '=x'), 0],
    [native('COUNTIF', plot, '==x'), 1],
    [native('COUNTIF', plot, 'zeta'), 1],
    [native('COUNTIF', plot, 'zeta '), 0],
    [native('COUNTIF', plot, '<>zeta'), 7],
    [native('COUNTIF', plot, 'a*b'), 2],
    [native('COUNTIF', plot, 'a~*b'), 1],
    [native('COUNTIF', plot, '?1'), 1],
    [native('COUNTIF', plot, '*'), 8],
    [native('COUNTIF', plot, input('NUMBER_LIKE')), 1],
    [native('COUNTIF', plot, 7), 1],
    [native('COUNTIF', length, '>=30'), 3],
    [native('COUNTIF', length, 30), 1],
    [native('COUNTIF', length, '30'), 1],
    [native('COUNTIF', length, empty), 1],
    [native('COUNTIF', nothing, ''), 8],
    [native('COUNTIF', mix, '<>'), 7],
    [native('COUNTIF', mix, true), 1],
    [native('COUNTIF', plot, '>b'), 1],
  ],
  MATCH: [
    [native('MATCH', 'a1', plot, 0), 1],
    [native('MATCH', '=2+2', plot, 0), 2],
    [native('MATCH', input('NUMBER_LIKE'), plot, 0), 3],
    [native('MATCH', 7, plot, 0), '#N/A'],
    [native('MATCH', 'a*b', plot, 0), 4],
    [native('MATCH', 'a~*b', plot, 0), 4],
    [native('MATCH', '?xb', plot, 0), 5],
    [native('MATCH', 'nope', plot, 0), '#N/A'],
    [native('MATCH', 30, length, 0), 3],
    [native('MATCH', '30', length, 0), '#N/A'],
    [native('MATCH', true, mix, 0), 1],
    [native('MATCH', '5', mix, 0), 3],
    [native('MATCH', division, length, 0), '#DIV/0!'],
  ],
  INDEX: [
    [native('INDEX', length, 2), 20],
    [native('INDEX', length, 2.9), 20],
    [native('INDEX', length, 2, 1), 20],
    [native('INDEX', length, 9), '#REF!'],
    [native('INDEX', length, 2, 2), '#REF!'],
    [native('INDEX', length, -1), '#VALUE!'],
    [native('INDEX', nothing, 1), 0],
    [native('INDEX', length, '2'), 20],
    [native('INDEX', length, native('MATCH', 'nope', plot, 0)), '#N/A'],
    [native('SUM', native('INDEX', length, 0)), 161],
    [native('INDEX', length, native('MATCH', 'ZETA', plot, 0)), 7],
  ],
  'DATE, YEAR and MONTH in the 1900 system': [
    [native('DATE', 2026, 5, 2), 46144],
    [native('DATE', 2026, 13, 1), 46388],
    [native('DATE', 2026, 0, 0), 45991],
    [native('DATE', 2026, 2, 30), 46083],
    [native('DATE', 26, 1, 1), 9498],
    [native('DATE', 1900, 1, 1), 1],
    [native('DATE', 1900, 3, 1), 61],
    [native('DATE', 2026.9, 5.9, 2.9), 46144],
    [native('DATE', -1, 1, 1), '#NUM!'],
    [native('DATE', 10000, 1, 1), '#NUM!'],
    [native('DATE', 'x', 1, 1), '#VALUE!'],
    [native('YEAR', 46144), 2026],
    [native('MONTH', 46144), 5],
    [native('YEAR', 46144.9), 2026],
    [native('YEAR', 0), 1900],
    [native('MONTH', 0), 1],
    [native('MONTH', 60), 2],
    [native('YEAR', -1), '#NUM!'],
    [native('YEAR', '2026-05-02'), 2026],
    [native('MONTH', 'x'), '#VALUE!'],
  ],
  "ROUND takes a half away from zero (the first seven from Excel's documentation, from memory)": [
    [native('ROUND', 2.15, 1), 2.2],
    [native('ROUND', 2.149, 1), 2.1],
    [native('ROUND', -1.475, 2), -1.48],
    [native('ROUND', 21.5, -1), 20],
    [native('ROUND', 626.3, -3), 1000],
    [native('ROUND', 1.98, -1), 0],
    [native('ROUND', -50.55, -2), -100],
    [native('ROUND', operate(operate(60, '-', 32), '/', 1.8), 0), 16],
    [native('ROUND', 'x', 0), '#VALUE!'],
    [native('ROUND', 2.5, division), '#DIV/0!'],
  ],
  "ROUNDUP goes away from zero (the first four from Excel's documentation)": [
    [native('ROUNDUP', 3.2, 0), 4],
    [native('ROUNDUP', 3.14159, 3), 3.142],
    [native('ROUNDUP', -3.14159, 1), -3.2],
    [native('ROUNDUP', 31415.92654, -2), 31500],
    [native('ROUNDUP', operate(operate(1.1, '*', 1.1), '*', 100), 0), 121],
    [native('ROUNDUP', operate(4.1, '*', 100), 0), 410],
    [native('ROUNDUP', operate(0.1, '+', 0.2), 1), 0.3],
    [native('ROUNDUP', 3.000000001, 0), 4],
    [native('ROUNDUP', 0, 0), 0],
    [native('ROUNDUP', '2.1', 0), 3],
    [native('ROUNDUP', 5, 'x'), '#VALUE!'],
    [native('ROUNDUP', 2.5, division), '#DIV/0!'],
  ],
  "INT goes down, below zero too (the first two from Excel's documentation)": [
    [native('INT', 8.9), 8],
    [native('INT', -8.9), -9],
    [native('INT', 3), 3],
    [native('INT', operate(3 - 2 ** -40, '*', 1 + 1e-9)), 3],
    [native('INT', '2.9'), 2],
    [native('INT', 'x'), '#VALUE!'],
    [native('INT', division), '#DIV/0!'],
  ],
  'columns whose names hold signs of the formula language': [
    [column('Row (ft)'), 3],
    [column("It's [1] #2"), 4],
    [native('SUM', allOf('Sample', "It's [1] #2")), 32],
    [column('row (FT)'), 3],
  ],
};

/** The sample as a sheet, with one formula in the first row of the table's last column. */
export function sampleSheet(formula: Expression): NewSheet {
  const headers = [...sampleHeaders, 'Result'];
  const names = Object.entries(sampleNames);
  const nameColumn = headers.length + 1;
  const rows = sampleRows.map((cells, row) => [...cells, 3, 4, row === 0 ? { compute: formula } : null]);
  return {
    name: 'Sample',
    mark: { template: 'sample', version: 1 },
    blocks: [
      { row: 0, column: 0, contents: [headers, ...rows] },
      { row: 0, column: nameColumn, contents: names.map(([, value]) => [value]) },
    ],
    tables: [
      {
        name: 'Sample',
        headers,
        row: 0,
        column: 0,
        rows: rows.length + 1,
        columns: headers.length,
        grows: null,
      },
    ],
    dressings: [],
    lists: [],
    notes: [],
    names: Object.fromEntries(names.map(([name], row) => [name, [row, nameColumn] as const])),
    widths: [],
    frozenRows: 0,
    frozenColumns: 0,
    page: { landscape: false, pagesWide: 1, repeatRows: null, repeatColumns: null },
  };
}
