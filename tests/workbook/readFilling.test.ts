/** What people put into our sheets, read back out of a workbook that was filled and typed into. */
import { beforeEach, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { demoFilling, demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { allTemplates } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellContent, WorkbookPort } from '../../src/workbook/port';
import { readFilling, type FillingRead } from '../../src/workbook/readFilling';
import { call, operate } from '../../src/workbook/expressions';
import { change, newSheet } from '../contract/contractWorkbook';

const empty = () => createMemoryWorkbook({ functions: [...functions.values()] });
const read = (workbook: WorkbookPort, daysToAdd = 0) =>
  readFilling({ ...workbook, daysToAdd }, allTemplates, empty);

const plotsOf = (filling: FillingRead | null) =>
  filling?.requests.find(({ template }) => template.id === 'plots');

describe('the filling of a workbook', () => {
  let workbook: WorkbookPort;
  beforeEach(async () => {
    workbook = empty();
    await fillSheets(workbook, demoFilling, 'fill');
  });

  const put = async (table: string, row: string, header: string, content: CellContent): Promise<void> => {
    const there = await workbook.readTable(table);
    if (there === null) throw new Error(`no ${table}`);
    const index = there.rows.findIndex(([name]) => name === row);
    const at = { row: there.area.row + 1 + index, column: there.area.column + there.headers.indexOf(header) };
    const cell = { sheet: there.area.sheet, ...at, contents: [[content]] };
    await workbook.apply(change({ cells: [cell] }));
  };

  it('is what it was filled with', async () => {
    const filling = await read(workbook);
    expect(plotsOf(filling)?.inputs).toEqual(demoPlots);
    expect(filling?.requests.map(({ template, inputs }) => [template, inputs])).toEqual(
      demoFilling.map(({ template, inputs }) => [template, inputs]),
    );
    // What the garden does not say is as the template says it.
    expect(filling?.requests[0]?.form).toMatchObject({ ...demoSeason, UNITS: 'us', FROST_MARGIN: null });
    expect(plotsOf(filling)).toMatchObject({ problems: [] });
    expect(filling?.typedOver).toBe(0);
    const { area } = (await workbook.readTable('Plots')) ?? {};
    expect(plotsOf(filling)?.lines).toEqual(demoPlots.map((_, index) => (area?.row ?? 0) + 2 + index));
  });

  it('has the rows typed right under a table that did not grow over them', async () => {
    const plots = await workbook.readTable('Plots');
    if (plots === null) throw new Error('no Plots');
    const { sheet, row, rows, column } = plots.area;
    const typed = plots.headers.map((header) =>
      header === 'Plot' ? 'Typed under it' : header === 'Crop' ? 'gourd' : header === 'Length' ? 32 : null,
    );
    await workbook.apply(change({ cells: [{ sheet, row: row + rows, column, contents: [typed] }] }));
    const filling = plotsOf(await read(workbook));
    expect(filling?.inputs).toEqual([...demoPlots, { Plot: 'Typed under it', Crop: 'gourd', Length: 32 }]);
    expect(filling?.lines.at(-1)).toBe(row + rows + 1);
  });

  it('has what was typed over a figure of ours, whichever figure it was, and fills it again', async () => {
    await put('Crops', 'pumpkin', 'row spacing', 11);
    // Where the reference has none.
    await put('Crops', 'gourd', 'germination standard', 0.66);
    await put('Crops', 'zucchini', 'row spacing', {
      compute: call('CROP.VALUE', { value: 'gourd' }, { value: 'row spacing' }),
    });
    const filling = await read(workbook);
    expect(filling?.typedOver).toBe(2);
    const again = empty();
    await fillSheets(again, filling?.requests ?? [], 'again');
    expect(await again.readTable('Crops')).toEqual(await filledWithout('zucchini'));
  });

  /** The Crops table as it is, with our own formula in the row that has another. */
  const filledWithout = async (crop: string) => {
    const fresh = empty();
    await fillSheets(fresh, demoFilling, 'fresh');
    const own = await fresh.readTable('Crops');
    const ours = await workbook.readTable('Crops');
    return { ...ours, rows: ours?.rows.map((row, index) => (row[0] === crop ? own?.rows[index] : row)) };
  };

  it('has texts as texts, whatever they look like, and what fits no column as the text it is', async () => {
    await put('Plots', 'Creek 1', 'Plot', '007');
    await put('Plots', 'Creek 2', 'Plot', '=2+2');
    await put('Plots', 'Creek 3', 'Length', 'sixty');
    await put('Plots', 'Tunnel', 'Length', true);
    await put('Plots', 'Fence', 'Plot', 12);
    await put('Plots', 'Arbor', 'Length', { compute: operate(2, '*', 16) });
    const filling = await read(workbook);
    const lengths = plotsOf(filling)?.inputs.map(({ Plot, Length }) => [Plot, Length]);
    expect(lengths?.slice(0, 4)).toEqual([
      ['007', 100],
      ['=2+2', 100],
      ['Creek 3', 'sixty'],
      ['Tunnel', 'TRUE'],
    ]);
    expect(lengths?.[5]).toEqual(['12', 80]);
    expect(lengths?.at(-1)).toEqual(['Arbor', 32]);
    expect(plotsOf(filling)?.problems).toMatchObject([
      { code: 'notANumber', header: 'Length', given: 'sixty', line: plotsOf(filling)?.lines[2] },
      { code: 'notANumber', header: 'Length', given: 'TRUE', line: plotsOf(filling)?.lines[3] },
    ]);
  });

  it('moves the dates of a workbook that counts from another day, and nothing else', async () => {
    // Days from 1900-01-00 to 1904-01-01, as ECMA-376 part 1, 18.17.4.1 has the two date systems.
    const filling = await read(workbook, 1462);
    expect(filling?.requests[0]?.form).toMatchObject({
      LAST_FROST: Number(demoSeason['LAST_FROST']) + 1462,
      SEASON_YEAR: 2027,
    });
    expect(plotsOf(filling)?.inputs).toEqual(demoPlots);
  });

  it('is none where no sheet is ours', async () => {
    const other = empty();
    await other.apply(change({ newSheets: [newSheet('Kitchen')] }));
    expect(await read(other)).toBeNull();
  });

  it('takes what the template says for a sheet that is not there', async () => {
    const season = empty();
    await fillSheets(season, demoFilling.slice(0, 1), 'season alone');
    const filling = await read(season);
    expect(filling?.requests.map(({ template }) => template)).toEqual(allTemplates);
    expect(plotsOf(filling)?.inputs).toEqual([]);
    expect(filling?.requests[0]?.form).toMatchObject(demoSeason);
  });
});
