/** Formulas that read themselves: an error in every cell of the circle, as in the file, never a number. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { change, plots, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('a circle of formulas', () => {
  let typed: TypedWorkbook;
  beforeEach(() => {
    typed = openTyped();
  });
  afterEach(() => typed.workbook.dispose());

  const circle = { error: '#CYCLE!', message: null };
  const type = (row: number, column: number, ...formulas: readonly (string | number)[]) =>
    typed.type('Kitchen', row, column, [
      formulas.map((each) => (typeof each === 'number' ? { v: each } : { f: each })),
    ]);
  const row = async (at: number, columns = 4): Promise<unknown> => {
    await typed.workbook.settle(settleMs);
    const area = { sheet: 'Kitchen', row: at, column: 0, rows: 1, columns };
    return (await typed.workbook.read(area)).values[0];
  };

  test('is an error in its cells and in what reads them, and in nothing else', async () => {
    await type(3, 0, '=B4*2', '=A4*2+1', '=A4+1', '=D1+1');
    expect(await row(3)).toEqual([circle, circle, circle, 1]);
    await type(0, 3, 5);
    expect(await row(3)).toEqual([circle, circle, circle, 6]);
  });

  test('is one when its last cell is typed, whatever the others held', async () => {
    await type(3, 0, 7, '=A4*2', '=B4*2', '=C4+1');
    expect(await row(3)).toEqual([7, 14, 28, 29]);
    await type(3, 0, '=C4/4');
    expect(await row(3)).toEqual([circle, circle, circle, circle]);
  });

  test('stays one while a cell that it reads changes, and keeps its formulas', async () => {
    await type(3, 0, '=B4*2+D1', '=IFERROR(A4,0)+1');
    await type(0, 3, 5);
    expect(await row(3, 2)).toEqual([circle, circle]);
    const { formulas } = await typed.workbook.read({
      sheet: 'Kitchen',
      row: 3,
      column: 0,
      rows: 1,
      columns: 2,
    });
    expect(formulas).toEqual([['=B4*2+D1', '=IFERROR(A4,0)+1']]);
  });

  test('is calculated once it is broken, and is one again after undo', async () => {
    await type(3, 0, '=B4*2', '=A4*2+1', '=B4+1');
    await type(3, 0, 10);
    expect(await row(3, 3)).toEqual([10, 21, 22]);
    await typed.workbook.undo();
    expect(await row(3, 3)).toEqual([circle, circle, circle]);
    await typed.workbook.redo();
    expect(await row(3, 3)).toEqual([10, 21, 22]);
  });

  test('may be a cell that reads itself, or a range around it', async () => {
    await type(3, 0, '=A4+1', '=SUM(A5:C5)', '=B4+A4');
    await type(4, 0, 1, 2, '=SUM(A5:C5)');
    expect(await row(3, 3)).toEqual([circle, circle, circle]);
    expect(await row(4, 3)).toEqual([1, 2, circle]);
  });

  test('is one after the workbook was left and opened again', async () => {
    await type(3, 0, '=B4*2', '=A4*2+1');
    await row(3);
    const left = typed.workbook.snapshot();
    typed.workbook.dispose();
    typed = openTyped(undefined, undefined, left);
    expect(await row(3, 2)).toEqual([circle, circle]);
    await type(3, 0, 10);
    expect(await row(3, 2)).toEqual([10, 21]);
  });

  test('in a table is none for the lines beside it', async () => {
    await typed.workbook.apply(change({ newSheets: [plots] }));
    await typed.type('Plots', 3, 1, [[{ f: '=C4' }]]);
    await typed.workbook.settle(settleMs);
    expect((await typed.workbook.readTable('Plots'))?.rows).toEqual([
      ['north', circle, circle],
      ['007', 40, 80],
    ]);
  });
});
