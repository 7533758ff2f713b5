import { afterEach, beforeEach, expect, test } from 'vitest';
import { settleMs } from '../../contract/contractWorkbook';
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
