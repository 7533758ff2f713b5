import { describe, expect, test } from 'vitest';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import type { TableRead, WorkbookPort } from '../../src/workbook/port';
import type { SheetTemplate, TableColumn } from '../../src/workbook/template';
import { valuesSheet } from '../../src/workbook/valuesSheet';

const column = (header: string, parts: Partial<TableColumn>): TableColumn => ({
  header,
  kind: 'input',
  compute: null,
  format: 'general',
  width: 10,
  choices: [],
  note: '',
  unit: null,
  ...parts,
});

const template: SheetTemplate = {
  id: 'beds',
  version: 1,
  sheet: 'Beds',
  title: 'Beds',
  lead: ['About beds.'],
  cautions: ['Mind the bees.'],
  form: [],
  tables: [
    {
      name: 'Beds',
      heading: '',
      columns: [
        column('Bed', { format: 'text' }),
        column('Sown', { format: 'date', width: 14, note: 'A day.' }),
      ],
      rows: null,
      grows: true,
    },
  ],
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: true },
};

/** Somebody put a line above the title, a column of their own into the table, and its columns in another order. */
const values = [
  ['of the west field'],
  ['Beds'],
  [null, 'About beds.'],
  [null, 'Mind the bees.'],
  [],
  ['Sown', 'Mine', 'Bed'],
  [46_144, true, '007'],
].map((row) => Array.from({ length: 3 }, (_, i) => row[i] ?? null));

const table: TableRead = {
  name: 'Beds',
  area: { sheet: 'Beds', row: 5, column: 0, rows: 2, columns: 3 },
  headers: ['Sown', 'Mine', 'Bed'],
  rows: values.slice(6),
};

const port = (found: TableRead | null): WorkbookPort => ({
  ...createFileWorkbook({ functions: [] }),
  readTable: async () => found,
});

describe('a sheet that somebody rearranged', () => {
  test('is copied as it stands, each part with its own look', async () => {
    const made = await valuesSheet(
      port(table),
      template,
      { sheet: 'Beds', values },
      'Beds values',
      'Values.',
    );
    const [block] = made.blocks;
    expect(block?.contents.map((row) => row.slice(0, 2))).toEqual([
      ['of the west field', null],
      ['Beds', null],
      [null, 'Values.'],
      [null, 'About beds.'],
      [null, 'Mind the bees.'],
      [null, null],
      ['Sown', 'Mine'],
      [46_144, true],
    ]);
    expect(made.dressings.map((each) => [each.row, each.column, each.role, each.format])).toEqual(
      expect.arrayContaining([
        [1, 0, 'title', 'general'],
        [2, 1, 'caution', 'general'],
        [3, 1, 'lead', 'general'],
        [4, 1, 'caution', 'general'],
        [6, 0, 'header', 'text'],
        [7, 0, 'input', 'date'],
        [7, 2, 'input', 'text'],
      ]),
    );
    expect(made.notes).toEqual([{ row: 6, column: 0, text: 'A day.' }]);
    // A text begins a character in.
    expect(made.widths).toEqual([14, 12, 11]);
    expect(made).toMatchObject({
      frozenRows: 7,
      frozenColumns: 1,
      mark: { template: 'beds-values', version: 1 },
    });
    expect(made.page).toMatchObject({ repeatRows: [5, 6], repeatColumns: [0, 0] });
  });

  test.each([
    [null, 'Beds'],
    [{ ...table, headers: ['Sown', 'Mine', 'Place'] }, 'Bed'],
  ])('and that lost a part is not copied', async (found, missing) => {
    const copying = valuesSheet(port(found), template, { sheet: 'Beds', values }, 'Beds values', 'Values.');
    await expect(copying).rejects.toMatchObject({
      problem: { code: 'sheetDamaged', sheet: 'Beds', missing },
    });
  });
});
