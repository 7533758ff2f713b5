/** Copies as values over every host, with the sheets that ship. */
import { describe, expect, test } from 'vitest';
import { demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { copyValues, type CopyReport } from '../../src/workbook/copyValues';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type Change, type ReadValue, type WorkbookPort } from '../../src/workbook/port';
import { hosts, openFile } from '../contract/openHosts';

const names = allTemplates.map(({ sheet }) => sheet);
const line = 'Values only.';
const words = { title: 'copy', nameOf: (sheet: string) => `${sheet} values`, line };
const plots = [...demoPlots.slice(0, 3), { Plot: 'odd', Crop: 'no such crop', Length: 50, Width: 20 }];

const requests = allTemplates.map((template) => ({
  template,
  inputs: template === plotsTemplate ? plots : [],
  form: demoSeason,
}));

const copy = (port: WorkbookPort): Promise<CopyReport> => copyValues(port, allTemplates, words, 20_000);

async function valuesOf(port: WorkbookPort, name: string): Promise<readonly (readonly ReadValue[])[]> {
  const used = (await port.sheets()).find((sheet) => sheet.name === name)?.used;
  if (used == null) throw new Error(`no cells in ${name}`);
  const { values, formulas } = await port.read(used);
  if (name.endsWith('values')) expect(formulas.flat().filter((each) => each !== null)).toEqual([]);
  return values;
}

/** As the copy should have it: texts of errors, nothing for empty texts. */
const plain = (value: ReadValue): ReadValue => {
  if (isCellError(value)) return value.error;
  return value === '' ? null : value;
};

describe.each(hosts)('in the %s host', (_, open) => {
  test('every cell is there as its value, in new sheets that are not taken for ours', async () => {
    const port = open();
    await fillSheets(port, requests, 'fill');
    await port.settle(20_000);
    const before = await Promise.all(names.map((name) => port.stamp(name)));
    const first = await copy(port);
    expect(first).toMatchObject({ made: names.map((name) => `${name} values`) });
    const errors = 'errors' in first ? first.errors : 0;
    // At least the crop that is not known, and what follows from it.
    expect(errors).toBeGreaterThan(3);
    await port.settle(20_000);
    for (const [i, name] of names.entries()) {
      const copied = await valuesOf(port, `${name} values`);
      const expected = (await valuesOf(port, name)).map((row) => row.map(plain));
      const width = copied[0]?.length ?? 0;
      // Where every page repeats the first column, texts stand beside it.
      expected.splice(1, 0, requests[i]?.template.page.repeatFirstColumn ? [null, line] : [line]);
      // A table without rows has a blank one, which the copy does not need.
      while (expected.at(-1)?.every((value) => value === null)) expected.pop();
      expect(copied).toEqual(
        expected.map((row) => Array.from({ length: width }, (__, column) => row[column] ?? null)),
      );
    }
    expect(await Promise.all(names.map((name) => port.stamp(name)))).toEqual(before);

    const copies = await Promise.all(names.map((name) => port.stamp(`${name} values`)));
    expect(await fillSheets(port, requests, 'again')).toMatchObject({ made: [], refreshed: names });
    expect(await Promise.all(names.map((name) => port.stamp(`${name} values`)))).toEqual(copies);
    // Once more: names in use are passed over.
    expect(await copy(port)).toEqual({ made: names.map((name) => `${name} values 2`), errors });
  });
});

/** A filled workbook whose changes are kept. */
async function watched(): Promise<{ port: WorkbookPort; changes: Change[] }> {
  const port = openFile();
  await fillSheets(port, requests, 'fill');
  const changes: Change[] = [];
  const apply: WorkbookPort['apply'] = (change, progress) => {
    changes.push(change);
    return port.apply(change, progress);
  };
  return { port: { ...port, apply }, changes };
}

describe('a copy', () => {
  test('keeps formats, notes, print set-up and widths, and tells what our functions said of errors', async () => {
    const { port, changes } = await watched();
    await copy(port);
    const sheets = Object.fromEntries((changes[0]?.newSheets ?? []).map((sheet) => [sheet.name, sheet]));
    const copied = sheets['Plots values'];
    const table = await port.readTable('Plots');
    if (copied === undefined || table === null) throw new Error('no copy');
    const column = table.headers.indexOf('First pick');
    const header = table.area.row + 1;
    expect(copied.dressings).toContainEqual({
      row: header + 1,
      column,
      rows: plots.length,
      columns: 1,
      role: 'computed',
      format: 'date',
    });
    expect(copied.notes).toContainEqual({ row: header, column, text: 'CUCURBIT.DATE.FIRSTPICK' });
    const said = copied.notes.filter(({ row }) => row === header + plots.length);
    expect(said[0]?.text).toContain('no such crop');
    expect(copied.page.repeatRows).toEqual([header - 1, header]);
    expect(copied.frozenRows).toBe(header + 1);
    const widthOf = (name: string): number | undefined =>
      plotsTemplate.tables[0]?.columns.find((each) => each.header === name)?.width;
    expect(copied.widths[column]).toBe(widthOf('First pick'));
    expect(copied).toMatchObject({ tables: [], lists: [], names: {} });

    const season = await port.locate('LAST_FROST');
    expect(sheets['Season values']?.dressings).toContainEqual({
      row: (season?.row ?? 0) + 1,
      column: 1,
      rows: 1,
      columns: 1,
      role: 'input',
      format: 'date',
    });
  });

  test('is not made while results are still to come', async () => {
    const { port, changes } = await watched();
    const unsettled = [{ sheet: 'Plots', row: 7, column: 20 }];
    expect(await copy({ ...port, settle: async () => unsettled })).toEqual({ unsettled });
    expect(changes).toEqual([]);
  });

  test('is not made of a sheet that was changed while it was read', async () => {
    const { port, changes } = await watched();
    const apply: WorkbookPort['apply'] = async (change) => {
      const area = await port.locate('LAST_FROST');
      const contents = [[46_000]];
      const typed = { ...area, sheet: 'Season', row: area?.row ?? 0, column: area?.column ?? 0, contents };
      await port.apply({ ...change, expect: [], newSheets: [], cells: [typed] });
      return port.apply(change);
    };
    await expect(copy({ ...port, apply })).rejects.toMatchObject({
      problem: { code: 'changedMeanwhile', sheet: 'Season' },
    });
    expect((await port.sheets()).map(({ name }) => name)).toEqual(names);
    expect(changes).toHaveLength(2);
  });

  test('is not made where there is no sheet of ours', async () => {
    const port = openFile();
    expect(await copy(port)).toEqual({ made: [], errors: 0 });
    expect(await port.sheets()).toEqual([]);
  });
});
