import { IPermissionService } from '@univerjs/core';
import { WorksheetEditPermission } from '@univerjs/sheets';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { change, plots, readWhole, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

let typed: TypedWorkbook;
beforeEach(async () => {
  typed = openTyped();
  await typed.workbook.apply(change({ newSheets: [plots] }));
  // As pasted from a workbook that lost the add-in.
  await typed.type('Kitchen', 0, 0, [
    [{ v: 21 }, { f: '=_xldudf_CUCURBIT_TEST_DOUBLE(A1)' }, { f: '=A1+1' }],
  ]);
  await typed.workbook.settle(settleMs);
});
afterEach(() => typed.workbook.dispose());

const kitchen = { sheet: 'Kitchen', row: 0, column: 0, rows: 1, columns: 3 };

test('our formulas are entered again, in one undo step, and nothing else is touched', async () => {
  const before = await readWhole(typed.workbook);
  expect((await typed.workbook.read(kitchen)).values).toEqual([[21, { error: '#NAME?', message: null }, 22]]);
  const steps = typed.undoSteps();
  expect(await typed.workbook.reenterFormulas('again')).toEqual({ cells: 3, locked: [] });
  expect(typed.undoSteps()).toBe(steps + 1);
  await typed.workbook.settle(settleMs);
  expect(await typed.workbook.read(kitchen)).toEqual({
    values: [[21, 42, 22]],
    formulas: [[null, '=CUCURBIT.TEST.DOUBLE(A1)', '=A1+1']],
  });
  const after = await readWhole(typed.workbook);
  expect(after.sheets[1]).toEqual(before.sheets[1]);
  await typed.workbook.undo();
  expect(await readWhole(typed.workbook)).toEqual(before);
});

test('a protected sheet is left and named', async () => {
  const { accessor, unitId } = typed.engine;
  const { id } = new WorksheetEditPermission(unitId, typed.idOf('Plots'));
  accessor.get(IPermissionService).updatePermissionPoint(id, false);
  expect(await typed.workbook.reenterFormulas('again')).toEqual({ cells: 1, locked: ['Plots'] });
});
