import { expect, test } from 'vitest';
import { change, plots } from '../../contract/contractWorkbook';
import { snapshotBook } from '../../excelStandIn/snapshotBook';
import { openTestWorkbook, sheetNamed, type TestWorkbook } from './openTestWorkbook';

const old = '=_xldudf_CUCURBIT_TEST_DOUBLE(B1)+1';

/** Two formulas of ours in the table, two in somebody's own sheet, and one that is not ours. */
async function opened(): Promise<TestWorkbook> {
  const test = openTestWorkbook();
  await test.workbook.apply(change({ newSheets: [plots] }));
  test.standIn.type(test.kitchen, 4, 1, '=SUM(1,CUCURBIT.TEST.DOUBLE(B1))');
  test.standIn.forgetFunctions();
  test.standIn.type(test.kitchen, 5, 1, old);
  return test;
}

const kitchenCells = { sheet: 'Kitchen', row: 2, column: 1, rows: 4, columns: 1 };
const twice = { sheet: 'Plots', row: 3, column: 2, rows: 2, columns: 1 };
const dead = { error: '#NAME?', message: null };

test('formulas that say #NAME? calculate again, on people’s own sheets too, and nothing else is touched', async () => {
  const { standIn, workbook } = await opened();
  expect((await workbook.read(kitchenCells)).values).toEqual([[84], [null], [dead], [dead]]);
  expect((await workbook.read(twice)).values).toEqual([[dead], [dead]]);
  const before = JSON.stringify(snapshotBook(standIn.book));
  expect(await workbook.reenterFormulas('again')).toEqual({ cells: 4, locked: [] });
  expect((await workbook.read(kitchenCells)).values).toEqual([[84], [null], [85], [85]]);
  expect((await workbook.read(twice)).values).toEqual([[200], [80]]);
  const written = '=CUCURBIT.TEST.DOUBLE(B1)+1';
  expect(JSON.stringify(snapshotBook(standIn.book))).toBe(before.replace(old, written));
  standIn.close();
});

test('a protected sheet is left and named, one without formulas of ours is not', async () => {
  const { standIn, workbook, kitchen } = await opened();
  sheetNamed(standIn, 'Plots').isProtected = true;
  expect(await workbook.reenterFormulas('again')).toEqual({ cells: 2, locked: ['Plots'] });
  expect((await workbook.read(kitchenCells)).values.slice(2)).toEqual([[85], [85]]);
  expect((await workbook.read(twice)).values).toEqual([[dead], [dead]]);
  sheetNamed(standIn, 'Plots').isProtected = false;
  kitchen.isProtected = true;
  expect(await workbook.reenterFormulas('again')).toEqual({ cells: 2, locked: ['Kitchen'] });
});

test('a workbook without formulas of ours is only read', async () => {
  const { standIn, workbook } = openTestWorkbook();
  const before = standIn.book.version;
  expect(await workbook.reenterFormulas('again')).toEqual({ cells: 0, locked: [] });
  expect(standIn.book.version).toBe(before);
});

test('cut off at any request, every cell holds its formula, and it can be done again', async () => {
  for (let request = 0; ; request++) {
    const { standIn, workbook } = await opened();
    const before = JSON.stringify(snapshotBook(standIn.book));
    standIn.failAt(request, 'half');
    const error = await workbook.reenterFormulas('again').catch((reason: unknown) => reason);
    const after = JSON.stringify(snapshotBook(standIn.book));
    expect([before, before.replace(old, '=CUCURBIT.TEST.DOUBLE(B1)+1')]).toContain(after);
    if (!(error instanceof Error)) break;
    expect(error).toMatchObject({ problem: { code: 'failed' } });
    standIn.failAt(null);
    expect(await workbook.reenterFormulas('again')).toEqual({ cells: 4, locked: [] });
  }
});

test('a cell being edited is said', async () => {
  const { standIn, workbook } = await opened();
  standIn.book.isCellBeingEdited = true;
  await expect(workbook.reenterFormulas('again')).rejects.toMatchObject({
    problem: { code: 'cellBeingEdited' },
  });
});
