import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createFileWorkbook, type FileWorkbook } from '../../../src/hosts/file/createFileWorkbook';
import { allOf, call, column, native, operate } from '../../../src/workbook/expressions';
import type { CellContent, Change } from '../../../src/workbook/port';
import { emptyChange, functions, planChange, plotsSheet, seasonSheet } from './planSheets';

const stampAll = async (workbook: FileWorkbook): Promise<string[]> =>
  Promise.all((await workbook.sheets()).map((sheet) => workbook.stamp(sheet.name)));

describe('a change that fails', () => {
  const extraSheet = { ...seasonSheet, name: 'More', names: {}, blocks: [], dressings: [], lists: [] };
  const change: Change = {
    ...planChange,
    newSheets: [extraSheet],
    cells: [{ sheet: 'Season', row: 0, column: 1, contents: [['metric']] }],
    tableRows: [{ table: 'TestPlots', rows: [['new', 'squash', 5, null, null, null, null]] }],
  };

  it.each(['cells', 'tableRows', 'newSheets', 'pictures', 'evaluate'])(
    'at %s leaves all as it was',
    async (broken) => {
      let isBroken = false;
      const workbook = createFileWorkbook({
        functions,
        beforeStep: (step) => {
          if (isBroken && step === broken) throw new Error('broken');
        },
      });
      await workbook.apply(planChange);
      const before = await stampAll(workbook);
      isBroken = true;
      await expect(workbook.apply(change)).rejects.toMatchObject({
        problem: { code: 'failed', action: change.title },
      });
      expect(await stampAll(workbook)).toEqual(before);
      isBroken = false;
      await workbook.apply(change);
      expect((await workbook.readTable('TestPlots'))?.rows.at(-1)?.[0]).toBe('new');
      expect((await workbook.sheets()).map((sheet) => sheet.name)).toEqual(['Season', "Joe's plots", 'More']);
    },
  );

  const inTable = (contents: CellContent): Partial<Change> => ({
    cells: [{ sheet: "Joe's plots", row: 3, column: 3, contents: [[contents]] }],
  });
  it.each<[string, Partial<Change>]>([
    [
      'a row formula outside a table',
      { cells: [{ sheet: 'Season', row: 0, column: 5, contents: [[{ compute: column('Plot') }]] }] },
    ],
    ['a column that the table lacks', inTable({ compute: column('None') })],
    ['a number that is none', inTable(NaN)],
    [
      'a block that is not rectangular',
      { cells: [{ sheet: 'Season', row: 0, column: 5, contents: [[1], [1, 2]] }] },
    ],
    ['a row too narrow', { tableRows: [{ table: 'TestPlots', rows: [['new']] }] }],
    ['a sheet name that no program takes', { newSheets: [{ ...extraSheet, name: 'a/b' }] }],
  ])('refuses %s', async (_, part) => {
    const workbook = createFileWorkbook({ functions });
    await workbook.apply(planChange);
    const before = await stampAll(workbook);
    await expect(workbook.apply({ ...emptyChange, ...part })).rejects.toMatchObject({
      problem: { code: 'failed' },
    });
    expect(await stampAll(workbook)).toEqual(before);
  });
});

it('does not let a table grow into another one', async () => {
  const workbook = createFileWorkbook({ functions });
  const table = { column: 0, columns: 1, headers: ['A'], rows: 2, grows: null };
  const blank = { ...plotsSheet, name: 'Two', blocks: [], dressings: [], lists: [], notes: [] };
  const tables = [
    { ...table, name: 'Upper', row: 0 },
    { ...table, name: 'Lower', row: 3 },
  ];
  await workbook.apply({ ...emptyChange, newSheets: [{ ...blank, tables }] });
  const grow = (rows: number[][]): Promise<void> =>
    workbook.apply({ ...emptyChange, tableRows: [{ table: 'Upper', rows }] });
  await expect(grow([[1], [2]])).rejects.toMatchObject({
    problem: { code: 'cellsInTheWay', sheet: 'Two', row: 3, column: 0 },
  });
  await grow([[1]]);
  expect((await workbook.readTable('Upper'))?.rows).toEqual([[null], [1]]);
});

it('gives rows put under a table its looks, its list and its place in the file', async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'file-host-')), 'plan.xlsx');
  const workbook = createFileWorkbook({ functions });
  await workbook.apply({ ...planChange, pictures: [] });
  const rows = [['new', 'squash', 5, null, null, null, null]];
  await workbook.apply({
    ...emptyChange,
    tableRows: [
      { table: 'TestPlots', rows },
      { table: 'testplots', rows },
    ],
  });
  await workbook.save(path, { replace: false });
  const parts = unzipSync(new Uint8Array(readFileSync(path)));
  const part = (name: string): string => strFromU8(parts[name] ?? new Uint8Array());
  expect(part('xl/tables/table1.xml')).toContain('ref="A3:G14"');
  const sheet = part('xl/worksheets/sheet2.xml');
  expect(sheet).toContain('sqref="B4:B14"');
  const styleOf = (cell: string): string | undefined =>
    new RegExp(`<c r="${cell}" s="(\\d+)"`).exec(sheet)?.[1];
  expect(styleOf('C14')).toBe(styleOf('C12'));
  expect(styleOf('C14')).toBeDefined();
});

it('lets a long text run over several lines in a row that is high enough', async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'file-host-')), 'plan.xlsx');
  const workbook = createFileWorkbook({ functions });
  const long = 'far longer than its column of fourteen characters';
  const cells = [{ sheet: plotsSheet.name, row: 3, column: 0, contents: [[long]] }];
  await workbook.apply(planChange);
  await workbook.apply({ ...emptyChange, cells });
  await workbook.save(path, { replace: false });
  const sheet = strFromU8(
    unzipSync(new Uint8Array(readFileSync(path)))['xl/worksheets/sheet2.xml'] ?? new Uint8Array(),
  );
  // "far longer", "than its", "column of", "fourteen", "characters": five lines of 15 points.
  expect(/<row r="4"[^>]*>/.exec(sheet)?.[0]).toContain('ht="75"');
  expect(/<row r="6"[^>]*>/.exec(sheet)?.[0]).not.toContain('ht=');
});

it('computes each of 1,000 rows of 30 columns once, however the columns lean on one another', async () => {
  const headers = ['Key', ...Array.from({ length: 29 }, (_, index) => `Column ${index + 1}`)];
  const key = column('Key');
  const place = native('MATCH', key, allOf('Big', 'Key'), 0);
  const compute = (index: number): CellContent => {
    if (index === 1) return { compute: native('COUNTIF', allOf('Big', 'Key'), operate('=', '&', key)) };
    if (index % 2 === 0) return { compute: native('INDEX', allOf('Big', headers[index - 1] ?? ''), place) };
    return { compute: call('NEXT', column(headers[index - 1] ?? '')) };
  };
  const rows = Array.from({ length: 1000 }, (_, row) =>
    headers.map((_, index): CellContent => (index === 0 ? `plot ${row}` : compute(index))),
  );
  let calls = 0;
  const next = (args: unknown[]): { value: number } => {
    calls += 1;
    return { value: Number(args[0]) + 1 };
  };
  const workbook = createFileWorkbook({ functions: [{ id: 'NEXT', run: next }] });
  await workbook.apply({
    ...emptyChange,
    newSheets: [
      {
        ...plotsSheet,
        name: 'Big',
        blocks: [{ row: 0, column: 0, contents: [headers, ...rows] }],
        tables: [{ name: 'Big', headers, row: 0, column: 0, rows: 1001, columns: 30, grows: null }],
        dressings: [],
        lists: [],
        notes: [],
      },
    ],
  });
  // The count is 1 for each key; every second column after it adds 1: (29 - 1) / 2 = 14.
  expect((await workbook.readTable('Big'))?.rows.at(-1)?.at(-1)).toBe(15);
  expect(calls).toBe(14 * 1000);
});
