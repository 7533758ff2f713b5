/** What another library reads out of a workbook of ours, against what our own host holds. */
import exceljs from 'exceljs';
import { expect, test } from 'vitest';
import { functions } from '../../../src/functions';
import { createMemoryWorkbook } from '../../../src/hosts/file/createMemoryWorkbook';
import { demoFilling } from '../../../src/templates/demoGarden';
import { fillSheets } from '../../../src/workbook/fillSheets';
import { isCellError, type ReadValue } from '../../../src/workbook/port';

/** What that library has of a cell: of a formula its result; an empty text is nothing, a date a number. */
function bare(cell: exceljs.Cell): unknown {
  const value = cell.type === exceljs.ValueType.Formula ? cell.result : cell.value;
  if (value === null || value === undefined || value === '') return null;
  if (value instanceof Date) return value.getTime() / 86_400_000 + 25_569;
  return typeof value === 'object' && 'error' in value ? value.error : value;
}
const ours = (value: ReadValue): unknown => (isCellError(value) ? value.error : value === '' ? null : value);

test('each sheet of the demo garden is read back by another library, cell by cell, with its tables', async () => {
  const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
  await fillSheets(workbook, demoFilling, 'demo');
  const read = new exceljs.Workbook();
  await read.xlsx.load((await workbook.bytes()).buffer as ArrayBuffer);
  for (const { name, used } of await workbook.sheets()) {
    const there = read.getWorksheet(name);
    if (there === undefined || used === null) throw new Error(`no sheet ${name}`);
    const { values } = await workbook.read(used);
    const found = values.map((cells, row) =>
      cells.map((_, column) => bare(there.getCell(used.row + row + 1, used.column + column + 1))),
    );
    expect(found, name).toEqual(values.map((cells) => cells.map(ours)));
  }
  const tables = demoFilling.flatMap(({ template }) => template.tables.map(({ name }) => name));
  const inSheet = (sheet: exceljs.Worksheet): string[] => tables.filter((name) => sheet.getTable(name));
  expect(read.worksheets.flatMap(inSheet)).toEqual(tables);
});
