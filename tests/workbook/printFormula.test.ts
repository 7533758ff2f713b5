import { describe, expect, test } from 'vitest';
import { allOf, call, column, input, native, operate } from '../../src/workbook/expressions';
import type { Expression, Operator } from '../../src/workbook/port';
import { printFormula } from '../../src/workbook/printFormula';

const print = (expression: Expression, table: string | null = 'Plots'): string =>
  printFormula(expression, { namespace: 'CUCURBIT.', table });

describe('values', () => {
  test.each<[string | number | boolean, string]>([
    [2, '=2'],
    [0.5, '=0.5'],
    [-3, '=(-3)'],
    [1e21, '=1E+21'],
    [1e-7, '=1E-7'],
    [true, '=TRUE'],
    [false, '=FALSE'],
    ['', '=""'],
    ['say "when"', '="say ""when"""'],
    ['=2+2', '="=2+2"'],
  ])('%j is printed as %s', (value, formula) => {
    expect(print({ value })).toBe(formula);
  });

  test('a number that no cell can hold is refused', () => {
    expect(() => print({ value: Number.NaN })).toThrow(RangeError);
    expect(() => print({ value: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});

describe('references', () => {
  test('what somebody typed as an argument stands as it is', () => {
    const args = [{ typed: "'Seed shed'!B2" }, null, { typed: '{1;2}' }, null];
    expect(print({ call: 'SEED.NEEDED', args })).toBe("=CUCURBIT.SEED.NEEDED('Seed shed'!B2,,{1;2})");
  });

  test('a column is the cell of the same row', () => {
    expect(print(column('Row spacing'))).toBe('=Plots[[#This Row],[Row spacing]]');
  });

  test('a column outside a table is refused', () => {
    expect(() => print(column('Length'), null)).toThrow('column Length outside a table');
  });

  test('all cells of a column of any table', () => {
    expect(print(allOf('Crops', 'row spacing'), null)).toBe('=Crops[row spacing]');
    expect(print(allOf('Pläne', 'Größe 2'), null)).toBe('=Pläne[Größe 2]');
  });

  test('special characters of a column name are escaped, and the name gets brackets of its own', () => {
    expect(print(column("a[b]#'@c"))).toBe("=Plots[[#This Row],[a'[b']'#'''@c]]");
    expect(print(allOf('Plots', "a[b]#'c"))).toBe("=Plots[[a'[b']'#''c]]");
    expect(print(allOf('Plots', 'Price, $'))).toBe('=Plots[[Price, $]]');
  });

  test('a named cell', () => {
    expect(print(input('LAST_FROST'))).toBe('=LAST_FROST');
  });
});

describe('calls', () => {
  test('ours stand under the namespace, native ones do not', () => {
    expect(print(native('ROUNDUP', call('PLANTS.DENSITY', 2, 36), 0))).toBe(
      '=ROUNDUP(CUCURBIT.PLANTS.DENSITY(2,36),0)',
    );
  });

  test('an omitted argument leaves its comma, omitted ones at the end leave none', () => {
    expect(print(call('A', 1, null, 2, null, null))).toBe('=CUCURBIT.A(1,,2)');
    expect(print(call('A', null))).toBe('=CUCURBIT.A()');
    expect(print(call('A', null, 1))).toBe('=CUCURBIT.A(,1)');
  });

  test('an operation as an argument needs no parentheses', () => {
    expect(print(native('IF', operate(column('A'), '=', ''), 1, 2))).toBe(
      '=IF(Plots[[#This Row],[A]]="",1,2)',
    );
  });
});

test('a function younger than the file format has a prefix in files, and only there', () => {
  // MINIFS came with Excel 2019. MS-XLSX lists it among the future functions, with their prefix: from memory.
  const least = native('MINIFS', allOf('Plots', 'Length'), allOf('Plots', 'Crop'), 'gourd');
  const formula = 'MINIFS(Plots[Length],Plots[Crop],"gourd")';
  expect(print(least)).toBe(`=${formula}`);
  expect(printFormula(least, { namespace: 'CUCURBIT.', table: null, isStored: true })).toBe(
    `=_xlfn.${formula}`,
  );
});

describe('operators', () => {
  const chain = (left: Operator, right: Operator): [string, string] => [
    print(operate(operate(1, left, 2), right, 3)),
    print(operate(1, left, operate(2, right, 3))),
  ];

  test.each<[Operator, Operator, string, string]>([
    ['+', '*', '=(1+2)*3', '=1+2*3'],
    ['*', '+', '=1*2+3', '=1*(2+3)'],
    ['-', '-', '=1-2-3', '=1-(2-3)'],
    ['/', '*', '=1/2*3', '=1/(2*3)'],
    ['&', '+', '=(1&2)+3', '=1&2+3'],
    ['+', '&', '=1+2&3', '=1+(2&3)'],
    ['=', '&', '=(1=2)&3', '=1=2&3'],
    ['<', '=', '=1<2=3', '=1<(2=3)'],
    ['>=', '<>', '=1>=2<>3', '=1>=(2<>3)'],
  ])('%s with %s', (left, right, grouped, nested) => {
    expect(chain(left, right)).toEqual([grouped, nested]);
  });

  test('a negative number stays apart from the operator before it', () => {
    expect(print(operate(1, '-', -2))).toBe('=1-(-2)');
  });
});
