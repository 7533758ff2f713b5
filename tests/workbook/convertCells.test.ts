/** Numbers whose unit another cell of their row says. */
import { expect, it } from 'vitest';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { convertCells } from '../../src/workbook/convertCells';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { SheetTemplate, TableColumn } from '../../src/workbook/template';

const column = (header: string, more: Partial<TableColumn> = {}): TableColumn => ({
  header,
  kind: 'input',
  compute: null,
  format: 'general',
  width: 10,
  choices: [],
  note: 'a note',
  unit: null,
  ...more,
});

const template: SheetTemplate = {
  id: 'list',
  version: 1,
  sheet: 'List',
  title: 'List',
  lead: ['A list.'],
  cautions: [],
  form: [],
  tables: [
    {
      name: 'List',
      heading: '',
      grows: true,
      rows: null,
      columns: [
        column('Name'),
        column('By'),
        column('Price', { converts: { by: 'By', units: { '': 'tens', length: 'hundreds' } } }),
      ],
    },
  ],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};

it('are converted by it, and left where it says nothing of them', async () => {
  const workbook = createMemoryWorkbook({ functions: [] });
  const inputs = [
    { Name: 'blank', Price: 1 },
    { Name: 'length', By: 'length', Price: 2 },
    { Name: 'each', By: 'each', Price: 3 },
    { Name: 'text', By: 'length', Price: 'dear' },
  ];
  await fillSheets(workbook, [{ template, inputs, form: {} }], 'fill');
  const factors: Readonly<Record<string, number>> = { tens: 10, hundreds: 100 };
  const { cells, left } = await convertCells(
    workbook,
    [template],
    (value, unit) => value * (factors[unit] ?? NaN),
  );
  expect(cells.map(({ contents }) => contents)).toEqual([[[10]], [[200]]]);
  expect(left).toEqual([]);
});
