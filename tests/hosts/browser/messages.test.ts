import { InsertRowCommand, RemoveRowCommand } from '@univerjs/sheets';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { contractFunctions, notNumber } from '../../contract/contractFunctions';
import { change, plotRow, plots, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

const refused = { error: '#VALUE!', message: notNumber };

describe('what a function said about its error', () => {
  let typed: TypedWorkbook;
  beforeEach(async () => {
    typed = openTyped();
    await typed.workbook.apply(change({ newSheets: [plots] }));
    const rows = [plotRow('bad', 'long'), plotRow('good', 1)];
    await typed.workbook.apply(change({ tableRows: [{ table: 'Plots', rows }] }));
  });
  afterEach(() => typed.workbook.dispose());

  const results = async () => {
    expect(await typed.workbook.settle(settleMs)).toEqual([]);
    return (await typed.workbook.readTable('Plots'))?.rows.map((row) => row[2]);
  };
  const wholeRow = (row: number) => ({
    unitId: typed.engine.unitId,
    subUnitId: typed.idOf('Plots'),
    range: { startRow: row, endRow: row, startColumn: 0, endColumn: 25 },
    direction: 0,
  });

  test('goes when the cell is mended, and comes when it is spoilt', async () => {
    expect(await results()).toEqual([200, 80, refused, 2]);
    await typed.type('Plots', 5, 1, [[{ v: 3 }]]);
    await typed.type('Plots', 6, 1, [[{ v: 'x' }]]);
    expect(await results()).toEqual([200, 80, 6, refused]);
    await typed.workbook.undo();
    await typed.workbook.undo();
    expect(await results()).toEqual([200, 80, refused, 2]);
  });

  test('moves with its cell when rows are inserted or deleted above it', async () => {
    await results();
    await typed.run(InsertRowCommand.id, wholeRow(1));
    expect(await results()).toEqual([200, 80, refused, 2]);
    await typed.run(RemoveRowCommand.id, wholeRow(4));
    expect(await results()).toEqual([80, refused, 2]);
    await typed.workbook.undo();
    await typed.workbook.undo();
    expect(await results()).toEqual([200, 80, refused, 2]);
  });

  test('is not said of the program’s own error in the same cell', async () => {
    await results();
    await typed.type('Plots', 5, 2, [[{ f: '=1/0', v: null }]]);
    expect((await results())?.[2]).toEqual({ error: '#DIV/0!', message: null });
    await typed.type('Plots', 5, 2, [[{ f: '="a"+1', v: null }]]);
    expect((await results())?.[2]).toEqual({ error: '#VALUE!', message: null });
  });

  test('is forgotten when the function is written so that it does not run', async () => {
    await results();
    await typed.type('Plots', 5, 2, [[{ f: '=CUCURBIT.TEST.DOUBLE(1', v: null }]]);
    expect((await results())?.[2]).toEqual({ error: '#VALUE!', message: null });
  });

  test('is forgotten when the function is handed an error instead', async () => {
    await results();
    await typed.type('Plots', 5, 1, [[{ f: '="a"+1', v: null }]]);
    expect((await results())?.[2]).toEqual({ error: '#VALUE!', message: null });
  });
});

describe('of several functions in one cell', () => {
  /** Refuses in the words it is handed. */
  const refuse = {
    id: 'TEST.REFUSE',
    run: ([said]: readonly unknown[]) => ({ error: '#VALUE!', message: String(said) }) as const,
  };
  let typed: TypedWorkbook;
  beforeEach(async () => {
    typed = openTyped(undefined, [...contractFunctions, refuse]);
    await typed.type('Kitchen', 0, 5, [[{ v: 1 }], [{ v: 0 }], [{ v: 1 }]]);
  });
  afterEach(() => typed.workbook.dispose());

  const read = async (row: number, column: number) => {
    expect(await typed.workbook.settle(settleMs)).toEqual([]);
    const area = { sheet: 'Kitchen', row, column, rows: 1, columns: 1 };
    return (await typed.workbook.read(area)).values[0]?.[0];
  };
  const a = 'CUCURBIT.TEST.REFUSE("a")';
  const b = 'CUCURBIT.TEST.REFUSE("b")';
  const said = (message: string | null, error = '#VALUE!') => ({ error, message });

  test.each([
    [`=IF(TRUE,${a},${b})`, said('a')],
    [`=IF(FALSE,${a},${b})`, said('b')],
    [`=IF(FALSE,${a},IF(FALSE,${b},CUCURBIT.TEST.REFUSE("c")))`, said('c')],
    [`=IF(TRUE,IF(FALSE,${a},${b}),CUCURBIT.TEST.REFUSE("c"))`, said('b')],
    [`=IF(${b},${a},1)`, said('b')],
    [`=IF(F2,${a},${b})`, said('b')],
    [`=IFERROR(${a},${b})`, said('b')],
    [`=IFERROR(${a},CUCURBIT.TEST.HUGE())`, said('The result is too large.', '#NUM!')],
    [`=IFNA(${b},${a})`, said('b')],
    [`=1+${b}*2`, said('b')],
    [`=-${b}`, said('b')],
    [`=${a}+${b}`, said('a')],
    [`=${b}&"x"`, said('b')],
    [`=CUCURBIT.TEST.SHOW(${b},${a})`, said('b')],
    [`=LET(x,${a},y,${b},IF(FALSE,x,y))`, said('b')],
    [`=INDEX(F1:F3,${b})`, said('b')],
    [`=SUM(1,${b})`, said('b')],
    [`=IF(TRUE,"a"+1,${a})`, said(null)],
    [`=IF(FALSE,${a},NA())`, said(null, '#N/A')],
    [`=IF(FALSE,${a},5)`, 5],
    [`=IFERROR(${a},5)`, 5],
  ])('%s', async (formula, expected) => {
    await typed.type('Kitchen', 0, 0, [[{ f: formula, v: null }]]);
    expect(await read(0, 0)).toEqual(expected);
  });

  test('each cell of a list that spills keeps its own', async () => {
    await typed.type('Kitchen', 0, 0, [[{ f: `=IF(F1:F3>0,${a},${b})`, v: null }]]);
    expect([await read(0, 0), await read(1, 0), await read(2, 0)]).toEqual([said('a'), said('b'), said('a')]);
  });

  test('a cell that passes the error of another on says nothing itself', async () => {
    await typed.type('Kitchen', 0, 0, [
      [
        { f: `=${a}`, v: null },
        { f: `=IF(TRUE,A1,${b})`, v: null },
      ],
    ]);
    expect([await read(0, 0), await read(0, 1)]).toEqual([said('a'), said(null)]);
  });

  test('another branch counts as soon as the condition changes', async () => {
    await typed.type('Kitchen', 0, 0, [[{ f: `=IF(F1>0,${a},IF(F2>0,${b},"x"+1))`, v: null }]]);
    expect(await read(0, 0)).toEqual(said('a'));
    await typed.type('Kitchen', 0, 5, [[{ v: 0 }]]);
    expect(await read(0, 0)).toEqual(said(null));
    await typed.type('Kitchen', 1, 5, [[{ v: 1 }]]);
    expect(await read(0, 0)).toEqual(said('b'));
    await typed.workbook.undo();
    await typed.workbook.undo();
    expect(await read(0, 0)).toEqual(said('a'));
  });
});
