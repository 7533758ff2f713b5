/** Cells that go to another row, as Excel takes them: what people typed comes out of its cells, not out of a change. */
import { expect, test } from 'vitest';
import { change, plots } from '../../contract/contractWorkbook';
import { openTestWorkbook, sheetNamed } from './openTestWorkbook';

test('own formulas name their new row, texts stay texts, errors stay errors', async () => {
  const { standIn, workbook } = openTestWorkbook();
  await workbook.apply(change({ newSheets: [plots] }));
  const sheet = sheetNamed(standIn, 'Plots');
  standIn.type(sheet, 3, 1, '=LEN(A4)*Kitchen!B1+$B$5');
  standIn.type(sheet, 3, 3, "'007");
  standIn.type(sheet, 4, 3, '=NA()');
  const line = (carriedFrom: number) => Array.from({ length: 4 }, () => ({ carriedFrom }));
  await workbook.apply(
    change({
      cells: [{ sheet: 'Plots', row: 3, column: 0, contents: [line(4), line(3)] }],
      tableRows: [{ table: 'Plots', rows: [['south', ...line(3).slice(1, 3)]] }],
    }),
  );
  const { values, formulas } = await workbook.read({
    sheet: 'Plots',
    row: 3,
    column: 0,
    rows: 3,
    columns: 4,
  });
  expect(formulas.map((row) => row[1])).toEqual([
    null,
    '=LEN(A5)*Kitchen!B1+$B$5',
    '=LEN(A6)*Kitchen!B1+$B$5',
  ]);
  expect(values.map((row) => row[0])).toEqual(['007', 'north', 'south']);
  expect(values[0]?.[3]).toMatchObject({ error: '#N/A' });
  expect(values[1]?.[3]).toBe('007');
});
