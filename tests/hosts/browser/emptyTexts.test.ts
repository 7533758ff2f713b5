/** A formula that gives a text without a letter gives a text, in the calculation that makes it and in every later one. */
import { afterEach, expect, it } from 'vitest';
import { isCellError } from '../../../src/workbook/port';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

const open: TypedWorkbook[] = [];
afterEach(() => {
  for (const { workbook } of open.splice(0)) workbook.dispose();
});

async function opened(snapshot?: string): Promise<TypedWorkbook> {
  const typed = openTyped(undefined, undefined, snapshot);
  open.push(typed);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  return typed;
}

/** A1 is asked; B1 may be without a letter, C1 is what it is, and the others read one of them. */
const formulas = [
  '=IF(A1=1,"","x")',
  '=IF(A1=2,"y",INDEX(B1:B2,1))',
  '=B1+0',
  '=C1*2',
  '=ISNUMBER(C1)',
  '=ISNUMBER(INDEX(C1:C2,1))',
  '=ISBLANK(B1)',
  '=SUM(B1:C1,1)',
  '=COUNTA(B1:C1)',
  '=B1&C1&"!"',
];
/** As Excel has it; from memory. A sum passes over texts in cells, a sign between two does not. */
const inExcel = ['', '', '#VALUE!', '#VALUE!', false, false, false, 1, 2, '!'];

async function shown({ workbook }: TypedWorkbook, sheet: string) {
  const { values } = await workbook.read({ sheet, row: 0, column: 1, rows: 1, columns: formulas.length });
  return values[0]?.map((value) => (isCellError(value) ? value.error : value));
}

it('when it is typed, when it is calculated anew, and when the workbook is opened anew', async () => {
  const typed = await opened();
  const sheet = (await typed.workbook.sheets())[0]?.name ?? '';
  await typed.type(sheet, 0, 0, [[{ v: 1 }, ...formulas.map((f) => ({ f }))]]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  expect(await shown(typed, sheet)).toEqual(inExcel);

  for (const asked of [3, 1]) {
    await typed.type(sheet, 0, 0, [[{ v: asked }]]);
    expect(await typed.workbook.settle(settleMs)).toEqual([]);
  }
  expect(await shown(typed, sheet)).toEqual(inExcel);

  const anew = await opened(typed.workbook.snapshot());
  expect(await shown(anew, sheet)).toEqual(inExcel);
  await anew.type(sheet, 0, 1, [[{ f: '=IF(A1=1,"","z")' }]]);
  expect(await anew.workbook.settle(settleMs)).toEqual([]);
  expect(await shown(anew, sheet)).toEqual(inExcel);
});
