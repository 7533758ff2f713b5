// @vitest-environment jsdom
/** The part of the pane by itself, over sheets that are filled and calculated without a screen. */
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { drawForPane, drawForSheet } from '../../src/entries/drawnWeather';
import { pngParts } from '../../src/entries/pngParts';
import { createMemoryWorkbook, type MemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { readWeatherSheet } from '../../src/taskpane/readWeatherSheet';
import { createWeatherPictures, type WeatherPictures } from '../../src/taskpane/weatherPictures';
import { demoSeason } from '../../src/templates/demoGarden';
import { allTemplates } from '../../src/templates/sheets';
import { requestWeather, type WeatherDay } from '../../src/templates/weather';
import { fillSheets } from '../../src/workbook/fillSheets';
import { change, newSheet } from '../contract/contractWorkbook';
import { serial, wickedPlace } from '../pictures/pictureData';

const frosts = new Set(
  ['2021-04-20', '2021-10-10', '2022-04-30', '2022-10-21', '2023-05-02', '2023-10-02'].map(serial),
);
const days = Array.from({ length: 1095 }, (_, i): WeatherDay => {
  const at = serial('2021-01-01') + i;
  const month = new Date((at - 25569) * 86_400_000).getUTCMonth() + 1;
  if (frosts.has(at)) return { serial: at, high: 50, low: 30 };
  return month >= 5 && month <= 9 ? { serial: at, high: 80, low: 60 } : { serial: at, high: 50, low: 40 };
});

let workbook: MemoryWorkbook;
let said: string[];
let part: HTMLElement;
let show: WeatherPictures['show'];
let running: Promise<void>;
const press = async (text: string): Promise<void> => {
  const button = [...part.querySelectorAll('button')].find((one) => one.textContent === text);
  button?.click();
  await running;
};
const fillWeather = (place: string) =>
  fillSheets(workbook, requestWeather({ place, units: 'us', days }), 'test');

beforeEach(async () => {
  workbook = createMemoryWorkbook({ functions: [...functions.values()] });
  said = [];
  running = Promise.resolve();
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({ template, inputs: [], form: demoSeason })),
    'test',
  );
  ({ element: part, show } = createWeatherPictures({
    workbook,
    tools: {
      drawForPane: async (weather, widthPx) => drawForPane(weather, widthPx),
      drawForSheet: (weather) => drawForSheet(weather, pngParts()),
    },
    addButton: () => undefined,
    run: (action) => (running = action()),
    say: (text) => said.push(text),
  }));
  document.body.replaceChildren(part);
});
afterEach(() => document.body.replaceChildren());

describe('in the pane', () => {
  test('what the sheets say is drawn, each picture with its sentence and its figures', async () => {
    await fillWeather(wickedPlace);
    await press('Draw the pictures');
    expect(said).toEqual(['3 pictures drawn from the Weather sheets.']);
    const pictures = [...part.querySelectorAll('svg')];
    expect(pictures.map((one) => one.getAttribute('role'))).toEqual(['img', 'img', 'img']);
    const [chance, heat, years] = pictures.map((one) => one.getAttribute('aria-label') ?? '');
    expect(chance).toContain('Counted: 3 springs and 3 falls.');
    expect(chance).toContain('in none after May 2.');
    // 15 degree days a day in the warm months: mean of 80 and 60 less the base.
    expect(heat).toMatch(/in the weather of 2023\. First pick at [\d,]+\. \d+ of \d+ sowings? /);
    expect(years).toContain('Frost-free days: least 153 (2023), middle 173, most 174 (2022).');
    expect([chance, heat, years].every((alt) => alt?.includes(wickedPlace))).toBe(true);
    expect(part.querySelectorAll('script')).toHaveLength(0);
    const tables = [...part.querySelectorAll('table')];
    expect(tables).toHaveLength(3);
    expect([...(tables[2]?.querySelectorAll('tbody tr') ?? [])].map((row) => row.textContent)).toEqual([
      '2021Apr 20Oct 10173',
      '2022Apr 30Oct 21174',
      '2023May 2Oct 2153',
    ]);
    for (const table of tables) expect(table.querySelectorAll('th[scope=col]').length).toBeGreaterThan(2);
  });

  test('a day mended in the sheet counts, and drawing anew replaces what was there', async () => {
    await fillWeather('');
    const { area } = (await workbook.readTable('Weather')) ?? {};
    const row = (area?.row ?? 0) + 1 + days.findIndex((day) => day.serial === serial('2023-05-02'));
    const cells = [{ sheet: area?.sheet ?? '', row, column: 2, contents: [[45]] }];
    await press('Draw the pictures');
    await workbook.apply(change({ cells }));
    await press('Draw the pictures');
    expect(part.querySelectorAll('svg')).toHaveLength(3);
    // The spring of 2023 has no frost in its own months then; the last one of its cold season was in October before.
    expect(part.querySelectorAll('svg')[0]?.getAttribute('aria-label')).toContain('in none after Apr 30.');
  });

  test('without Weather sheets it says so', async () => {
    await press('Draw the pictures');
    await press('Put the pictures into a sheet');
    expect(said).toEqual([
      expect.stringContaining('nothing to draw'),
      expect.stringContaining('nothing to draw'),
    ]);
    expect(part.querySelectorAll('svg')).toHaveLength(0);
  });
});

describe('in a sheet', () => {
  test('they stand in one of their own, and drawn again take the place of the older ones', async () => {
    await fillWeather('Invented hollow');
    await press('Put the pictures into a sheet');
    await press('Put the pictures into a sheet');
    expect(said[1]).toBe('3 pictures put into the sheet Weather pictures.');
    const sheets = (await workbook.sheets()).map(({ name }) => name);
    expect(sheets.filter((name) => name.startsWith('Weather'))).toEqual([
      'Weather',
      'Weather record',
      'Weather pictures',
    ]);
    const parts = unzipSync(await workbook.bytes());
    const drawings = Object.entries(parts).filter(([name]) => /xl\/drawings\/drawing\d+\.xml/.test(name));
    const [, drawing = new Uint8Array()] = drawings[0] ?? [];
    const texts = [...strFromU8(drawing).matchAll(/ descr="([^"]*)"/g)].map(([, text]) => text);
    expect(texts).toHaveLength(3);
    expect(texts[2]).toContain('Frost-free days, year by year: Invented hollow.');
    // From top to bottom, none over another: each begins below where the one before it ends.
    const rows = [...strFromU8(drawing).matchAll(/<xdr:from>.*?<xdr:row>(\d+)<\/xdr:row>/gs)].map(([, row]) =>
      Number(row),
    );
    const heights = [...strFromU8(drawing).matchAll(/<xdr:ext cx="\d+" cy="(\d+)"/g)].map(
      ([, emu]) => Number(emu) / 9525,
    );
    rows.slice(1).forEach((row, i) => expect((row - (rows[i] ?? 0)) * 20).toBeGreaterThan(heights[i] ?? NaN));
  });

  test('a day mended since, or another risk, is said, in the sheet and in the pane', async () => {
    await fillWeather('Invented hollow');
    const refresh = async () => {
      const read = await readWeatherSheet(workbook);
      if (typeof read !== 'object') throw new Error(read);
      show(read);
      const notes = [...part.querySelectorAll<HTMLElement>('p.note')].filter(({ hidden }) => !hidden);
      return [read.pictures, ...notes.map(({ textContent }) => textContent.slice(0, 12))];
    };
    const type = async (name: string, content: number) => {
      const { sheet = '', row = 0, column = 0 } = (await workbook.locate(name)) ?? {};
      await workbook.apply(change({ cells: [{ sheet, row, column, contents: [[content]] }] }));
    };
    expect(await refresh()).toEqual([null]);
    await press('Draw the pictures');
    await press('Put the pictures into a sheet');
    expect(await refresh()).toEqual(['yes']);
    await type('FROST_RISK', 0.2);
    expect(await refresh()).toEqual(['no', 'The pictures', 'The sheets h']);
    await press('Put the pictures into a sheet');
    expect(await refresh()).toEqual(['yes', 'The sheets h']);
    await press('Draw the pictures');
    expect(await refresh()).toEqual(['yes']);
    // A high of midwinter: no date moves.
    const { area } = (await workbook.readTable('Weather')) ?? {};
    await workbook.apply(
      change({
        cells: [{ sheet: area?.sheet ?? '', row: (area?.row ?? 0) + 5, column: 1, contents: [[51]] }],
      }),
    );
    expect((await refresh())[0]).toBe('no');
  });

  test('somebody’s own sheet of that name is left alone', async () => {
    await fillWeather('');
    await workbook.apply(change({ newSheets: [newSheet('weather PICTURES')] }));
    await press('Put the pictures into a sheet');
    expect(said.at(-1)).toBe('3 pictures put into the sheet Weather pictures 2.');
  });
});
