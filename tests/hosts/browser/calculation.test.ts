import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openHeadless } from '../../../src/hosts/browser/openHeadless';
import { operate } from '../../../src/workbook/expressions';
import { change, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

let typed: TypedWorkbook;
beforeEach(() => {
  typed = openTyped();
});
afterEach(() => typed.workbook.dispose());

test('a cell that still holds the result of older figures counts as not settled', async () => {
  await typed.type('Kitchen', 0, 0, [[{ v: 21 }, { f: '=A1*2' }]]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  await typed.type('Kitchen', 0, 0, [[{ v: 30 }]]);
  expect(await typed.workbook.settle(0)).toEqual([{ sheet: 'Kitchen', row: 0, column: 1 }]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  const read = await typed.workbook.read({ sheet: 'Kitchen', row: 0, column: 1, rows: 1, columns: 1 });
  expect(read.values).toEqual([[60]]);
});

test('a workbook without a screen calculates in a browser as well', async () => {
  // By this the engine tells the two apart.
  vi.stubGlobal('process', { ...process, versions: {} });
  const workbook = openHeadless({ functions: [], namespace: 'CUCURBIT.', firstSheet: 'Kitchen' });
  vi.unstubAllGlobals();
  const area = { sheet: 'Kitchen', row: 0, column: 0, rows: 1, columns: 1 };
  await workbook.apply(change({ cells: [{ ...area, contents: [[{ compute: operate(2, '*', 21) }]] }] }));
  expect(await workbook.settle(settleMs)).toEqual([]);
  expect((await workbook.read(area)).values).toEqual([[42]]);
  workbook.dispose();
});
