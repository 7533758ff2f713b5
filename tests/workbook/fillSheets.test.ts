import { expect, test } from 'vitest';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { column, operate } from '../../src/workbook/expressions';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { WorkbookPort } from '../../src/workbook/port';
import type { SheetTemplate } from '../../src/workbook/template';
import { formTemplate } from './formTemplate';

const hosts: readonly (readonly [string, () => WorkbookPort])[] = [
  ['file', () => createFileWorkbook({ functions: [] })],
  ['browser', () => openHeadless({ functions: [], namespace: 'CUCURBIT.', firstSheet: 'Scratch' })],
];

test.each(hosts)(
  'a sheet bears the version of the template that was last written into it: %s',
  async (_, open) => {
    const port = open();
    const fill = (version: number) =>
      fillSheets(port, [{ template: { ...formTemplate, version }, inputs: [], form: {} }], 'test');
    const marks = async () =>
      (await port.sheets()).flatMap(({ name, mark }) => (mark === null ? [] : [[name, mark.version]]));
    expect((await fill(1)).made).toEqual(['Form']);
    expect(await marks()).toEqual([['Form', 1]]);
    expect((await fill(3)).refreshed).toEqual(['Form']);
    expect(await marks()).toEqual([['Form', 3]]);
    // An older release does not take the mark of a newer one.
    await fill(2);
    expect(await marks()).toEqual([['Form', 3]]);
  },
);

/** A table that the template brings whole: each line has a name of two cells and ten times, or more, its figure. */
function fixed(names: readonly string[], times: number): SheetTemplate {
  const each = { kind: 'input', compute: null, format: 'general', width: 10, choices: [], note: '' } as const;
  return {
    ...formTemplate,
    form: [],
    tables: [
      {
        name: 'Fixed',
        heading: '',
        columns: ['Kind', 'Name', 'Figure'].map((header) => ({ ...each, header, unit: null })),
        rows: names.map((name) => [
          'bean',
          name,
          { compute: operate(operate(column('Name'), '&', ''), '&', times) },
        ]),
        grows: false,
      },
    ],
  };
}

test.each(hosts)(
  'a row of ours is renewed where it stands, and one that is gone is told: %s',
  async (_, open) => {
    const port = open();
    const fill = (template: SheetTemplate) => fillSheets(port, [{ template, inputs: [], form: {} }], 'test');
    expect((await fill(fixed(['c', 'a'], 10))).gone).toEqual([]);
    const report = await fill(fixed(['a', 'b', 'c'], 20));
    expect(report.gone).toEqual([{ sheet: 'Form', row: 'bean, b' }]);
    expect(await port.settle(20_000)).toEqual([]);
    expect((await port.readTable('Fixed'))?.rows).toEqual([
      ['bean', 'c', 'c20'],
      ['bean', 'a', 'a20'],
    ]);
  },
);
