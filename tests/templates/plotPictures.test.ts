/** Pictures of plots in their sheet, over each host: as many plants as Plants says, and told when they are older. */
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, describe, expect, it } from 'vitest';
import { drawPlotForPane, drawPlotForSheet } from '../../src/entries/drawnPlot';
import { pngParts } from '../../src/entries/pngParts';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { figureOf, readCropFigures } from '../../src/taskpane/standIns';
import { demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { mostPicturePx, putPlotPictures, readPlotPictures } from '../../src/templates/plotPictures';
import { plotsTable, plotsTemplate } from '../../src/templates/plots';
import { plotToDraw, type PlotToDraw } from '../../src/templates/plotToDraw';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue, WorkbookPort } from '../../src/workbook/port';
import { readLines } from '../../src/workbook/readLines';
import type { InputRow } from '../../src/workbook/template';
import { change, newSheet } from '../contract/contractWorkbook';
import { openStandIn } from '../excelStandIn/openStandIn';
import { quickClock } from '../hosts/excel/openTestWorkbook';

interface Host {
  readonly port: WorkbookPort;
  /** Their alternative texts. */
  pictures(): Promise<readonly string[]>;
  close(): void;
}
const registered = [...functions.values()];
const makers = {
  file(): Host {
    const port = createMemoryWorkbook({ functions: registered });
    return {
      port,
      async pictures() {
        const parts = Object.entries(unzipSync(await port.bytes()));
        const drawings = parts.filter(([name]) => /xl\/drawings\/drawing\d+\.xml/.test(name));
        return drawings.flatMap(([, xml]) =>
          [...strFromU8(xml).matchAll(/ descr="([^"]*)"/g)].map(([, text = '']) => text),
        );
      },
      close: () => undefined,
    };
  },
  browser(): Host {
    const port = openHeadless({ functions: registered, namespace: functionNamespace, firstSheet: 'Notepad' });
    return {
      port,
      async pictures() {
        const { resources } = JSON.parse(port.snapshot()) as { resources: { name: string; data: string }[] };
        const { data = '{}' } = resources.find(({ name }) => name === 'SHEET_DRAWING_PLUGIN') ?? {};
        const sheets = JSON.parse(data) as Record<string, { data: Record<string, { description: string }> }>;
        return Object.values(sheets).flatMap((each) =>
          Object.values(each.data).map(({ description }) => description),
        );
      },
      close: () => port.dispose(),
    };
  },
  excel(): Host {
    const standIn = openStandIn({ firstSheet: 'Kitchen', functions: registered });
    return {
      port: openExcelWorkbook({ ...standIn, namespace: functionNamespace, clock: quickClock() }),
      pictures: async () =>
        standIn.book.sheets.flatMap(({ shapes }) =>
          shapes.map(({ properties }) => String(properties.AltTextDescription)),
        ),
      close: () => standIn.close(),
    };
  },
};

let host: Host;
afterEach(() => host.close());

const plots: readonly InputRow[] = [
  { Plot: 'Creek', Crop: 'slicing cucumber', Length: 30, Width: 12 },
  { Plot: '=2+2', Crop: 'zucchini', Layout: 'hills', Length: 30, Width: 12, 'Plants per hill': 2 },
  {
    Plot: '007',
    Crop: 'cucumber',
    Layout: 'beds',
    Length: 12,
    Width: 10,
    'Bed width': 4,
    'Path width': 2,
    'Rows per bed': 2,
  },
  { Plot: 'Melons', Crop: 'seedless watermelon', Length: 40, Width: 20 },
  { Plot: 'Narrow', Crop: 'zucchini', Length: 30, Width: 1 },
];
async function fill(inputs: readonly InputRow[]): Promise<void> {
  await fillSheets(
    host.port,
    allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? inputs : [],
      form: demoSeason,
    })),
    'test',
  );
  expect(await host.port.settle(20_000)).toEqual([]);
}
const read = async () => {
  const lines = await readLines(host.port, plotsTable);
  if (lines === null) throw new Error('no plots');
  const figures = await readCropFigures(host.port);
  const asked = lines.lines.map((line) =>
    plotToDraw(line, 'us', (crop, figure) => figureOf(figures, crop, figure)),
  );
  return { lines, asked, from: { sheet: lines.area.sheet, stamp: lines.stamp } };
};
const drawable = (asked: readonly ({ value: PlotToDraw } | { wrong: string })[]): PlotToDraw[] =>
  asked.flatMap((each) => ('value' in each ? [each.value] : []));
/** Of some of the drawable plots, by their places among them. */
async function put(...which: readonly number[]): Promise<string | null> {
  const { asked, from } = await read();
  const drawn = [];
  for (const plot of which.map((i) => drawable(asked)[i])) {
    const picture = plot === undefined ? undefined : await drawPlotForSheet(plot, pngParts());
    if (picture === undefined || 'wrong' in picture) throw new Error('not drawn');
    drawn.push(picture.value);
  }
  const sheet = await putPlotPictures(host.port, drawn, from, 'test');
  expect(await host.port.settle(20_000)).toEqual([]);
  return sheet;
}
const states = async () =>
  (await readPlotPictures(host.port)).map(({ plot, isCurrent }) => [plot, isCurrent]);
async function type(row: number, header: string, value: CellValue): Promise<void> {
  const table = await host.port.readTable('Plots');
  if (table === null) throw new Error('no plots');
  const { area, headers } = table;
  const cell = { sheet: area.sheet, row: area.row + 1 + row, column: area.column + headers.indexOf(header) };
  await host.port.apply(change({ cells: [{ ...cell, contents: [[value]] }] }));
  expect(await host.port.settle(20_000)).toEqual([]);
}

describe.each(Object.entries(makers))('over the host %s', (_, open) => {
  it('a picture for each plot that fits, each known again, each told when its plot has changed', async () => {
    host = open();
    await fill(plots);
    const { lines, asked } = await read();
    // As many marks as the Plants cell says, pollenizers as the Pollenizers cell.
    for (const [i, each] of asked.entries()) {
      if ('wrong' in each) continue;
      const drawn = drawPlotForPane(each.value, 320);
      const svg = 'value' in drawn ? drawn.value.svg : '';
      const marksIn = (part: string) =>
        (svg.match(new RegExp(`<g data-part="${part}"[^>]*>(.*?)</g>`))?.[1]?.match(/<(circle|path)/g) ?? [])
          .length;
      const { Plants: plants, Pollenizers: pollenizers } = lines.lines[i]?.values ?? {};
      expect(marksIn('plants') + marksIn('pollenizers')).toBe(plants);
      expect(marksIn('pollenizers')).toBe(pollenizers === '' ? 0 : pollenizers);
    }
    expect(drawable(asked)).toHaveLength(4);
    // What the cell says, or where the host keeps no words of it, that it holds an error.
    expect(asked[4]).toEqual({ wrong: expect.stringMatching(/^No row fits|Plants holds an error/) });

    expect(await put(0, 1)).toBe('Plot pictures');
    expect(await put(2, 3, 1)).toBe('Plot pictures');
    expect(await states()).toEqual([
      ['Creek', true],
      ['=2+2', true],
      ['007', true],
      ['Melons', true],
    ]);
    const pictures = await host.pictures();
    expect(pictures).toHaveLength(4);
    expect(pictures.filter((text) => text.startsWith('=2+2: zucchini. The plot is 30 ft long'))).toHaveLength(
      1,
    );
    await type(0, 'Width', 14);
    await type(3, 'Plot', 'Melon field');
    expect(await states()).toEqual([
      ['Creek', false],
      ['=2+2', true],
      ['007', true],
      ['Melons', false],
    ]);
    await put(0);
    expect((await states())[0]).toEqual(['Creek', true]);
    expect(await host.pictures()).toHaveLength(4);
    expect((await host.pictures()).filter((text) => text.includes('14 ft wide'))).toHaveLength(1);
  }, 600_000);
});

describe('over the host file', () => {
  it('a figure of Crops that stands for a blank counts too', async () => {
    host = makers.file();
    await fill(plots);
    await put(0, 1);
    const crops = await host.port.readTable('Crops');
    const row = crops?.rows.findIndex(([crop]) => crop === 'slicing cucumber') ?? 0;
    const area = crops?.area ?? { sheet: '', row: 0, column: 0 };
    const column = area.column + (crops?.headers.indexOf('plant spacing') ?? 0);
    const cell = { sheet: area.sheet, row: area.row + 1 + row, column };
    await host.port.apply(change({ cells: [{ ...cell, contents: [[11]] }] }));
    expect(await states()).toEqual([
      ['Creek', false],
      ['=2+2', true],
    ]);
  });

  it('what was typed meanwhile is not passed over, and nothing is written', async () => {
    host = makers.file();
    await fill(plots);
    const { asked, from } = await read();
    const [plot] = drawable(asked);
    const picture = plot === undefined ? null : await drawPlotForSheet(plot, pngParts());
    if (picture === null || 'wrong' in picture) throw new Error('not drawn');
    await type(1, 'Width', 13);
    await expect(putPlotPictures(host.port, [picture.value], from, 'test')).rejects.toMatchObject({
      problem: { code: 'changedMeanwhile' },
    });
    expect((await host.port.sheets()).map(({ name }) => name)).not.toContain('Plot pictures');
  });

  it('somebody’s own sheet of that name is left alone; plants typed over are told', async () => {
    host = makers.file();
    await fill(plots);
    await host.port.apply(change({ newSheets: [newSheet('plot PICTURES')] }));
    expect(await put(0)).toBe('Plot pictures 2');
    await type(0, 'Plants', 7);
    await put(0);
    expect((await host.pictures())[0]).toContain('Plants in the sheet says 7: somebody typed it');
  });

  it('every plot of the demo fits its place in the sheet, a name of any length too', async () => {
    host = makers.file();
    await fill(demoPlots);
    const { asked } = await read();
    expect(drawable(asked)).toHaveLength(demoPlots.length);
    for (const plot of drawable(asked)) {
      const drawn = await drawPlotForSheet({ ...plot, plot: 'W'.repeat(300), typedPlants: 1 }, pngParts());
      expect('value' in drawn && drawn.value.heightPx).toBeLessThanOrEqual(mostPicturePx);
    }
  });

  it.each([
    [{ Plot: '', Crop: 'zucchini', Length: 30, Width: 12 }, 'Give the plot a name'],
    [{ Plot: 'no crop', Length: 30, Width: 12 }, 'Choose a crop.'],
    [{ Plot: 'spiral', Crop: 'zucchini', Layout: 'spiral', Length: 30, Width: 12 }, 'Layout not known'],
    [{ Plot: 'lost', Crop: 'zucchini', Length: 30, Width: 1 }, 'No row fits'],
    [
      { Plot: 'share', Crop: 'seedless watermelon', Length: 90, Width: 20, 'Pollenizer share': 25 },
      'share of pollenizers',
    ],
  ])('%j is refused in words', async (plot, words) => {
    host = makers.file();
    await fill([plot]);
    expect((await read()).asked[0]).toEqual({ wrong: expect.stringContaining(words) });
  });
});
