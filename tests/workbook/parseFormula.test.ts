import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allOf, call, column, input, native, operate } from '../../src/workbook/expressions';
import { parseFormula, type Formula } from '../../src/workbook/parseFormula';
import type { Expression, NativeFunction, Operator } from '../../src/workbook/port';
import { printFormula } from '../../src/workbook/printFormula';

const dialect = { namespace: 'CUCURBIT.', table: 'Plots' };

/** The tree as what was printed; a notation that no expression has stays as it is. */
function expressionOf(formula: Formula): Expression | Formula {
  switch (formula.kind) {
    case 'value':
      return { value: formula.value };
    case 'ofRow':
      return { column: formula.header };
    case 'allOf':
      return { table: String(formula.table), allOf: formula.header };
    case 'name':
      return { input: formula.name };
    case 'call': {
      const args = formula.args.map((arg) => arg && expressionOf(arg));
      return formula.name.startsWith(dialect.namespace)
        ? { call: formula.name.slice(dialect.namespace.length), args: args as Expression[] }
        : { native: formula.name as NativeFunction, args: args as Expression[] };
    }
    case 'operation':
      return {
        operator: formula.operator,
        left: expressionOf(formula.left) as Expression,
        right: expressionOf(formula.right) as Expression,
      };
    default:
      return formula;
  }
}

const operators: Operator[] = ['+', '-', '*', '/', '=', '<>', '<', '<=', '>', '>=', '&'];
const header = fc
  .string({ minLength: 1, maxLength: 12, unit: 'grapheme-ascii' })
  .filter((text) => text.trim() === text);
const name = fc.stringMatching(/^[A-Z]{4,8}_[A-Z]{1,8}$/);

const { expression: anyExpression } = fc.letrec<{ expression: Expression }>((tie) => ({
  expression: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.oneof(
      fc.string().map((value) => ({ value })),
      fc.boolean().map((value) => ({ value })),
      // -0 is printed as 0.
      fc
        .double({ noNaN: true, noDefaultInfinity: true })
        .map((value) => ({ value: value === 0 ? 0 : value })),
      header.map((one) => column(one)),
      fc.tuple(name, header).map(([table, one]) => allOf(table, one)),
      name.map((one) => input(one)),
    ),
    fc
      .tuple(tie('expression'), fc.constantFrom(...operators), tie('expression'))
      .map(([left, operator, right]) => operate(left, operator, right)),
    fc.array(tie('expression'), { maxLength: 3 }).map((args) => native('IF', ...args)),
    // An argument left out at the end is not printed at all, so the last one is there.
    fc
      .tuple(fc.array(fc.option(tie('expression'), { nil: null }), { maxLength: 2 }), tie('expression'))
      .map(([args, last]) => call('SEED.NEEDED', ...args, last)),
  ),
}));

test('what is printed of an expression is read back as that expression', () => {
  fc.assert(
    fc.property(anyExpression, (expression) => {
      const read = parseFormula(printFormula(expression, dialect));
      expect(read && expressionOf(read)).toEqual(expression);
    }),
  );
});

/** Without texts, to compare shapes. */
const shape = (formula: string): unknown =>
  JSON.parse(
    JSON.stringify(parseFormula(formula), (key, value: unknown) => (key === 'text' ? undefined : value)),
  );

describe('cells', () => {
  const cells = (row: number, column: number, rows = 1, columns = 1, sheet: string | null = null) => ({
    kind: 'cells',
    sheet,
    span: { row, column, rows, columns },
  });
  test.each([
    ['=B2', cells(1, 1)],
    ['=$B$2', cells(1, 1)],
    ['=b2:D4', cells(1, 1, 3, 3)],
    ['=D4:B2', cells(1, 1, 3, 3)],
    ['=AA10', cells(9, 26)],
    ["='Joe''s list'!A1:A3", cells(0, 0, 3, 1, "Joe's list")],
    ['=Season!$B$7', cells(6, 1, 1, 1, 'Season')],
    // 1,048,576 rows and 16,384 columns: the size that vendors publish for a sheet.
    ['=B:C', cells(0, 1, 1048576, 2)],
    ['=Season!2:3', cells(1, 0, 2, 16384, 'Season')],
  ])('%s', (formula, expected) => {
    expect(shape(formula)).toEqual(expected);
  });

  test('what looks like a cell and is followed by a parenthesis is a function', () => {
    expect(shape('=LOG10(8)')).toEqual({ kind: 'call', name: 'LOG10', args: [{ kind: 'value', value: 8 }] });
  });
});

describe('tables', () => {
  const ofRow = (header: string, table: string | null = null) => ({ kind: 'ofRow', table, header });
  const allOfColumn = (header: string, table: string | null = null) => ({ kind: 'allOf', table, header });
  test.each([
    ['=Plots[[#This Row],[Row spacing]]', ofRow('Row spacing', 'Plots')],
    ['=Plots[[#This Row], [Row spacing] ]', ofRow('Row spacing', 'Plots')],
    ['=Plots[@Length]', ofRow('Length', 'Plots')],
    ['=[@Length]', ofRow('Length')],
    ['=[@[Row spacing]]', ofRow('Row spacing')],
    ["=[@[Price '[lb']]]", ofRow('Price [lb]')],
    ['=Plots[Length]', allOfColumn('Length', 'Plots')],
    ['=[Length]', allOfColumn('Length')],
    ['=Plots[[#Data],[Row spacing]]', allOfColumn('Row spacing', 'Plots')],
    ['=Plots[#All]', { kind: 'other', parts: [] }],
    ['=Plots[[Length]:[Width]]', { kind: 'other', parts: [] }],
  ])('%s', (formula, expected) => {
    expect(shape(formula)).toEqual(expected);
  });
});

describe('what is written by hand', () => {
  const value = (one: unknown) => ({ kind: 'value', value: one });
  test.each([
    ['=80%', { kind: 'operation', operator: '/', left: value(80), right: value(100) }],
    ['= - 3 ', value(-3)],
    ['=-B2', { kind: 'operation', operator: '-', left: value(0), right: shape('=B2') }],
    ['=+2', value(2)],
    ['=.5', value(0.5)],
    ['=1e3', value(1000)],
    ['=true', value(true)],
    [
      '={1,"b";-2,TRUE}',
      {
        kind: 'array',
        rows: [
          [1, 'b'],
          [-2, true],
        ],
      },
    ],
    ['=_xlfn.MINIFS(A1)', { kind: 'call', name: 'MINIFS', args: [shape('=A1')] }],
    [
      '=cucurbit.seed.needed( 1 ,, 2 )',
      { kind: 'call', name: 'CUCURBIT.SEED.NEEDED', args: [value(1), null, value(2)] },
    ],
    ['=NA()', { kind: 'call', name: 'NA', args: [] }],
    ['=F(,)', { kind: 'call', name: 'F', args: [null, null] }],
    ['=2^3', { kind: 'other', parts: [value(2), value(3)] }],
    ['=2*3^2', { kind: 'operation', operator: '*', left: value(2), right: shape('=3^2') }],
    ['=A1#', { kind: 'other', parts: [shape('=A1')] }],
    ['=@A1', { kind: 'other', parts: [shape('=A1')] }],
    ['=INDEX(A1):B2', { kind: 'other', parts: [shape('=INDEX(A1)'), shape('=B2')] }],
    ['=#N/A', { kind: 'other', parts: [] }],
    ['=[1]Season!B2', { kind: 'other', parts: [] }],
    ["='[plan.xlsx]Season'!B2", { kind: 'other', parts: [] }],
    ['=Season!FROSTS', { kind: 'other', parts: [] }],
  ])('%s', (formula, expected) => {
    expect(shape(formula)).toEqual(expected);
  });

  test('a part knows how it is written', () => {
    const read = parseFormula('=IF( (A1 + 2) * 3 > 4, "x", Plots[Length])');
    expect(read).toMatchObject({
      text: 'IF( (A1 + 2) * 3 > 4, "x", Plots[Length])',
      args: [
        { text: '(A1 + 2) * 3 > 4', left: { left: { text: 'A1 + 2' } } },
        { text: '"x"' },
        { text: 'Plots[Length]' },
      ],
    });
  });

  test.each(['', 'A1', '=', '=A1 B2', '=(A1', '=F(1', '=1+', '=A1,B2', '={1,A1}', '="open'])(
    '%s is no formula',
    (text) => {
      expect(parseFormula(text)).toBeNull();
    },
  );
});
