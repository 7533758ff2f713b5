/**
 * The file host and the browser's engine give the same value in every cell of every template. They compute on
 * different roads: one evaluates the template's data, the other parses and calculates the printed formulas.
 */
import { afterEach, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { demoFilling, demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { seedOrderTemplate } from '../../src/templates/seedOrder';
import { functionNamespace } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type CellValue, type ReadValue, type WorkbookPort } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

const registered = [...functions.values()];
const firstSheet = 'Notepad';
const open: { dispose(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.dispose();
});

/** Rows that go wrong, each in its own way, between rows that do not. */
const spoiled: readonly InputRow[] = [
  { Plot: '=2+2', Crop: 'cucumber', Length: 50, Width: 20 },
  { Plot: '+1', Crop: 'no such crop', Length: 50, Width: 20 },
  { Plot: '-x', Crop: 'zucchini', Length: 50, Width: -20 },
  { Plot: '@home', Crop: 'zucchini', Length: 50, Width: 20, 'Row spacing': 0 },
  { Plot: '007', Crop: 'pumpkin', Layout: 'hills', Length: 5, Width: 5 },
  { Plot: 'twice', Crop: 'gourd', Length: 50, Width: 20 },
  { Plot: 'twice', Crop: 'muskmelon', Length: 50, Width: 20, Germination: 85 },
  { Plot: 'words', Crop: 'muskmelon', Length: 'long', Width: 20, Germination: 0.5 },
  { Plot: 'layout', Crop: 'muskmelon', Layout: 'spiral', Length: 50, Width: 20, Start: 'cutting' },
  { Plot: 'late', Crop: 'winter squash', Length: 80, Width: 40, 'Days to maturity': 300 },
  { Plot: 'no crop', Length: 50, Width: 20 },
  { Plot: 'early', Crop: 'seedless watermelon', Length: 90, Width: 40, 'Sow or set out on': 46397 },
  { Plot: 'covered', Crop: 'English cucumber', Length: 40, Width: 20, 'Row spacing': 4, 'Plant spacing': 18 },
  { Plot: 'again', Crop: 'pumpkin', Length: 60, Width: 20, 'Last cucurbits': 2025 },
  { Plot: 'again, no year', Crop: 'muskmelon', Length: 50, Width: 20, 'Last cucurbits': 'none' },
  { Plot: 'no gap', Crop: 'zucchini', Layout: 'rows', Length: 50, Width: 20, 'Plant spacing': 0 },
  { Plot: 'narrow', Crop: 'zucchini', Length: 50, Width: 2 },
  { Plot: 'no hill', Crop: 'pumpkin', Layout: 'hills', Length: 50, Width: 40, 'Hill spacing': 0 },
  { Plot: 'narrow hills', Crop: 'pumpkin', Layout: 'hills', Length: 50, Width: 2 },
  { Plot: 'no bed', Crop: 'zucchini', Layout: 'beds', Length: 50, Width: 20, 'Path width': 2 },
  {
    Plot: 'narrow beds',
    Crop: 'zucchini',
    Layout: 'beds',
    Length: 50,
    Width: 2,
    'Bed width': 4,
    'Path width': 2,
    'Rows per bed': 1,
    'Plant spacing': 0,
  },
  {},
];

/** Lines of the price list that go wrong, each in its own way. */
const spoiledPrices: readonly InputRow[] = [
  { Crop: 'no such crop', 'Seeds in a pack': 100, 'Price of a pack': 5 },
  { Crop: 'gourd', 'Seeds in a pack': 0, 'Price of a pack': 5 },
  { Crop: 'zucchini', 'Seeds in a pack': 100, 'Price of a pack': '$4,50?' },
  { Crop: 'pumpkin', 'Seeds in a pack': 100 },
  { Crop: 'melon' },
  { 'Seeds in a pack': 100, 'Price of a pack': 5 },
  { 'Lot or note': 'nothing else' },
  {},
];

function plotsOf(count: number): InputRow[] {
  const pattern = [...demoPlots, ...spoiled];
  return Array.from({ length: count }, (_, i) => {
    const row = pattern[i % pattern.length] ?? {};
    const again = i >= pattern.length && typeof row['Plot'] === 'string';
    return again ? { ...row, Plot: `${row['Plot']} ${Math.floor(i / pattern.length)}` } : row;
  });
}

/** For a thousand plots on a machine with other work; nothing is measured by it. */
const patienceMs = 240_000;

async function filled(
  port: WorkbookPort,
  plots: readonly InputRow[],
  season: Readonly<Record<string, CellValue>>,
) {
  const spoiledInputs: Readonly<Record<string, readonly InputRow[]>> = {
    [seedOrderTemplate.id]: spoiledPrices,
  };
  const requests = demoFilling.map(({ template, inputs }) => ({
    template,
    inputs: template === plotsTemplate ? plots : [...inputs, ...(spoiledInputs[template.id] ?? [])],
    form: season,
  }));
  await fillSheets(port, requests, 'test');
  expect(await port.settle(patienceMs)).toEqual([]);
  return port;
}

/** Floating sums may differ in the last digits; everything else is equal to the letter. */
function comparable(value: ReadValue): ReadValue {
  if (typeof value === 'number') return Number(value.toPrecision(12));
  return isCellError(value) ? { error: value.error, message: value.message } : value === '' ? null : value;
}

/** Every cell with content, by its place. */
async function cellsOf(port: WorkbookPort): Promise<ReadonlyMap<string, ReadValue>> {
  const cells = new Map<string, ReadValue>();
  for (const { name, used } of await port.sheets()) {
    if (name === firstSheet || used === null) continue;
    (await port.read(used)).values.forEach((row, r) =>
      row.forEach((value, c) => {
        if (comparable(value) !== null) cells.set(`${name} row ${r} column ${c}`, comparable(value));
      }),
    );
  }
  return cells;
}

function differences(one: ReadonlyMap<string, ReadValue>, other: ReadonlyMap<string, ReadValue>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])]
    .map((place) => [place, JSON.stringify(one.get(place)), JSON.stringify(other.get(place))] as const)
    .filter(([, mine, yours]) => mine !== yours)
    .map(([place, mine, yours]) => `${place}: ${mine} and ${yours}`);
}

const southern = { ...demoSeason, SEASON_YEAR: 2026, LAST_FROST: 46300, FIRST_FROST: 46487 };

describe('file and browser', () => {
  it.each([
    [1, 'us', demoSeason],
    [50, 'us', demoSeason],
    [50, 'metric', { ...demoSeason, UNITS: 'metric', FROST_RISK: 0.1 }],
    [50, 'southern', southern],
    [50, 'frost dates reversed', { ...demoSeason, FIRST_FROST: 46400 }],
    [1000, 'us', demoSeason],
  ] as const)(
    'agree on every cell of every sheet with %i plots (%s)',
    async (count, _, season) => {
      const plots = plotsOf(count);
      const browser = openHeadless({ functions: registered, namespace: functionNamespace, firstSheet });
      open.push(browser);
      const inBrowser = await cellsOf(await filled(browser, plots, season));
      const inFile = await cellsOf(
        await filled(createFileWorkbook({ functions: registered }), plots, season),
      );
      expect(inFile.size).toBeGreaterThan(1500 + 20 * count);
      expect(differences(inBrowser, inFile)).toEqual([]);
    },
    2 * patienceMs,
  );
});
