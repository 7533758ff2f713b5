import { InsertRowCommand, RemoveRowCommand } from '@univerjs/sheets';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { notNumber } from '../../contract/contractFunctions';
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
