/** A plan out of a file, to be opened in place of another. */
import { describe, expect, test } from 'vitest';
import { nearestNames } from '../../src/calc/crops/nearestNames';
import { openPlan } from '../../src/commands/openPlan';
import { manyPlots, plotsTemplate } from '../../src/templates/plots';
import { functions } from '../../src/functions';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../src/hosts/file/openXlsx';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { TableRead, WorkbookPort } from '../../src/workbook/port';
import { withTyped } from '../../src/workbook/withTyped';
import { readForm } from '../../src/workbook/readForm';
import { seasonTemplate } from '../../src/templates/season';
import { savedPlan, savedPlots, typedFigure } from '../hosts/file/savedPlan';

const makeWorkbook = () => createMemoryWorkbook({ functions: [...functions.values()] });

async function filled() {
  const workbook = makeWorkbook();
  await fillSheets(workbook, savedPlan, 'plan');
  return workbook;
}

const open = (file: string, bytes: Uint8Array | string, current: WorkbookPort) =>
  openPlan(
    file,
    typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes,
    { ...current, daysToAdd: 0 },
    { openXlsx, makeWorkbook, nearestNames },
  );

/** The workbook that comes of it, and what is said. */
async function opened(file: string, bytes: Uint8Array | string, current: WorkbookPort) {
  const plan = await open(file, bytes, current);
  if ('refused' in plan) throw new Error(plan.refused);
  const workbook = makeWorkbook();
  await plan.fill(workbook);
  return { workbook, said: plan.said };
}

const plotsIn = async (workbook: WorkbookPort) =>
  (await workbook.readTable('Plots'))?.rows.map(([name]) => name);
const figureIn = async (workbook: WorkbookPort) => {
  const crops = await workbook.readTable('Crops');
  const row = crops?.rows.find(([crop]) => crop === typedFigure.crop);
  return row?.[crops?.headers.indexOf(typedFigure.trait) ?? -1];
};

describe('opening a plan', () => {
  test('leaves sheets in another language alone, and says how to open them', async () => {
    const workbook = makeWorkbook();
    const template = { ...plotsTemplate, id: 'es.plots', sheet: 'Parcelas' };
    await fillSheets(workbook, [{ template, inputs: savedPlots, form: {} }], '');
    await expect(open('a.xlsx', await workbook.bytes(), makeWorkbook())).rejects.toMatchObject({
      problem: { code: 'fileOtherLanguage' },
    });
  });

  test('takes season, plots and figures out of a workbook', async () => {
    const { workbook, said } = await opened('a.xlsx', await (await filled()).bytes(), makeWorkbook());
    expect(await plotsIn(workbook)).toEqual(savedPlots.map(({ Plot }) => Plot));
    expect(await figureIn(workbook)).toBe(typedFigure.value);
    expect(said[0]).toContain(`a.xlsx is open, with ${savedPlots.length} plots.`);
    expect(said[1]).toContain('1 figure of Crops');
    expect(said).toHaveLength(2);
  });

  test.each([
    ['CropPrices', 'Sold as'],
    ['Plots', 'Pollenizers'],
    ['Plots', 'Price'],
  ])('a plan of an older version, whose table %s has no column %s, gets it', async (name, header) => {
    const prices = { CropPrices: { pumpkin: { Price: 0.4 } } };
    const workbook = makeWorkbook();
    await fillSheets(
      workbook,
      savedPlan.map((request) => ({ ...request, template: withTyped(request.template, prices) })),
      'plan',
    );
    const openOlder: typeof openXlsx = (bytes) => {
      const book = openXlsx(bytes);
      const readTable = async (wanted: string): Promise<TableRead | null> => {
        const table = await book.readTable(wanted);
        if (table === null || wanted !== name) return table;
        expect(table.headers).toContain(header);
        return { ...table, headers: table.headers.map((each) => (each === header ? '' : each)) };
      };
      return { ...book, readTable };
    };
    const plan = await openPlan(
      'old.xlsx',
      await workbook.bytes(),
      { ...makeWorkbook(), daysToAdd: 0 },
      { openXlsx: openOlder, makeWorkbook, nearestNames },
    );
    if ('refused' in plan) throw new Error(plan.refused);
    expect(plan.said[0]).toContain(`old.xlsx is open, with ${savedPlots.length} plots.`);
    const now = makeWorkbook();
    await plan.fill(now);
    expect(await plotsIn(now)).toEqual(savedPlots.map(({ Plot }) => Plot));
    expect((await now.readTable(name))?.headers).toContain(header);
    const sold = await now.readTable('CropPrices');
    const pumpkin = sold?.rows.find(([crop]) => crop === 'pumpkin') ?? [];
    const valueOf = (wanted: string) => pumpkin[sold?.headers.indexOf(wanted) ?? -1];
    expect([valueOf('Price'), valueOf('Price by weight')]).toEqual([0.4, 0.4]);
  });

  test('puts a list of plots into the season that is open, beside its figures, and names what wants mending', async () => {
    const current = await filled();
    const list = 'Plot,Crop,Length,Width\nLane,gourd,ten,20\n007,gourd,10,20\n';
    const { workbook, said } = await opened('list.csv', list, current);
    expect(await plotsIn(workbook)).toEqual(['Lane', '007']);
    const seasons = await Promise.all([current, workbook].map((one) => readForm(one, seasonTemplate)));
    expect(seasons[1]?.values).toEqual(seasons[0]?.values);
    expect(await figureIn(workbook)).toBe(typedFigure.value);
    expect(said.slice(1)).toEqual([expect.stringContaining('list.csv, line 2, column Length: "ten"')]);
  });

  test('names by line and column a figure of a workbook that cannot be', async () => {
    const inputs = [
      { Plot: 'Lane', Crop: 'zucchini', Germination: 85 },
      { Plot: 'Hill', Length: -5 },
    ];
    const workbook = makeWorkbook();
    await fillSheets(
      workbook,
      savedPlan.map((request) => (request.template === plotsTemplate ? { ...request, inputs } : request)),
      'plan',
    );
    const { said } = await opened('a.xlsx', await workbook.bytes(), makeWorkbook());
    // Headers stand in line 7, under title, leads, caution, gap and units.
    expect(said.filter((sentence) => sentence.includes('line'))).toEqual([
      expect.stringMatching(/a\.xlsx, line 8, column Germination: write 85 percent as 85% or 0\.85\./),
      expect.stringMatching(/a\.xlsx, line 9, column Length: -5 does not fit\./),
    ]);
  });

  test('gives a plan from before some columns those columns, with what was typed', async () => {
    const later = ['Area', 'Rows', 'Row length', 'Sow or set out on', 'Last cucurbits'];
    const older = makeWorkbook();
    const tables = plotsTemplate.tables.map((one) => ({
      ...one,
      columns: one.columns.filter(({ kind, header }) => kind === 'input' && !later.includes(header)),
    }));
    const requests = savedPlan.map((request) =>
      request.template === plotsTemplate ? { ...request, template: { ...plotsTemplate, tables } } : request,
    );
    await fillSheets(older, requests, 'plan');
    const { workbook, said } = await opened('a.xlsx', await older.bytes(), makeWorkbook());
    expect(said).toHaveLength(2);
    expect((await workbook.readTable('Plots'))?.headers).toEqual(expect.arrayContaining(later));
    expect(await plotsIn(workbook)).toEqual(savedPlots.map(({ Plot }) => Plot));
  });

  test('takes a list where nothing of ours is open', async () => {
    const { workbook } = await opened('list.csv', 'Plot,Crop\nLane,gourd\n', makeWorkbook());
    expect(await plotsIn(workbook)).toEqual(['Lane']);
  });

  test.each([
    ['a list without plots', 'list.csv', 'Plot,Crop\n', 'list.csv has no plots'],
    [
      'a list that cannot be taken',
      'list.csv',
      'Plot,Plot\nA,B\n',
      'columns 1 and 2 both have the header "Plot"',
    ],
    ['what is no text', 'list.csv', Uint8Array.of(0xff, 0xfd), 'neither UTF-8 nor UTF-16'],
    [
      'a list that the page cannot bear',
      'list.csv',
      `Plot,Crop\n${Array.from({ length: manyPlots + 1 }, (_, index) => `P${index},gourd`).join('\n')}`,
      `has ${manyPlots + 1} plots, and this page takes ${manyPlots}`,
    ],
  ])('refuses %s', async (_, file, bytes, sentence) => {
    expect(await open(file, bytes, makeWorkbook())).toMatchObject({
      refused: expect.stringContaining(sentence),
    });
  });

  test('passes on why a workbook is none', async () => {
    const bytes = Uint8Array.of(1, 2, 3);
    await expect(open('a.xlsx', bytes, makeWorkbook())).rejects.toMatchObject({
      problem: { code: 'fileNoWorkbook' },
    });
  });
});
