import { describe, expect, it } from 'vitest';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { weatherRecordTemplate } from '../../src/templates/weather';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { TableRead, WorkbookPort } from '../../src/workbook/port';
import { replaceRows } from '../../src/workbook/replaceRows';
import type { InputRow, TableTemplate } from '../../src/workbook/template';

const table = weatherRecordTemplate.tables[0] as TableTemplate;
const days = (first: number, count: number): InputRow[] =>
  Array.from({ length: count }, (_, i) => ({ Date: first + i, High: 20 + i, Low: i === 1 ? null : 10 }));

async function filled(inputs: readonly InputRow[]): Promise<WorkbookPort> {
  const workbook = createMemoryWorkbook({ functions: [] });
  await fillSheets(workbook, [{ template: weatherRecordTemplate, inputs, form: {} }], '');
  return workbook;
}

async function replace(workbook: WorkbookPort, inputs: readonly InputRow[]): Promise<TableRead['rows']> {
  const rows = await replaceRows(workbook, table, inputs);
  if (rows === null) throw new Error('no table');
  await workbook.apply({ title: '', newSheets: [], pictures: [], marks: [], ...rows });
  return (await workbook.readTable(table.name))?.rows ?? [];
}

describe('rows in place of others', () => {
  it('as many take their cells', async () => {
    expect(await replace(await filled(days(44000, 2)), days(45000, 2))).toEqual([
      [45000, 20, 10],
      [45001, 21, null],
    ]);
  });

  it('more lengthen the table', async () => {
    expect(await replace(await filled(days(44000, 1)), days(45000, 3))).toEqual([
      [45000, 20, 10],
      [45001, 21, null],
      [45002, 22, 10],
    ]);
  });

  it('fewer leave the rest empty', async () => {
    expect(await replace(await filled(days(44000, 3)), days(45000, 1))).toEqual([
      [45000, 20, 10],
      [null, null, null],
      [null, null, null],
    ]);
  });

  it('are refused when somebody typed meanwhile', async () => {
    const workbook = await filled(days(44000, 2));
    const rows = await replaceRows(workbook, table, days(45000, 2));
    if (rows === null) throw new Error('no table');
    await replace(workbook, days(46000, 2));
    const late = workbook.apply({ title: '', newSheets: [], pictures: [], marks: [], ...rows });
    await expect(late).rejects.toMatchObject({ problem: { code: 'changedMeanwhile' } });
  });

  it('need the table, and each of its columns', async () => {
    expect(await replaceRows(createMemoryWorkbook({ functions: [] }), table, [])).toBeNull();
    const columns = table.columns.map((column, i) => (i === 0 ? { ...column, header: 'Day' } : column));
    await expect(replaceRows(await filled(days(44000, 1)), { ...table, columns }, [])).rejects.toMatchObject({
      problem: { code: 'sheetDamaged', missing: 'Day' },
    });
  });
});
