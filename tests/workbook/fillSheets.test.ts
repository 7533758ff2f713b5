import { expect, test } from 'vitest';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { WorkbookPort } from '../../src/workbook/port';
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
