/**
 * What `npm run bench` sets side by side: cases of one run, each measured against the first. Never told as a limit in
 * seconds, because machines differ. What the cells hold is invented.
 */
import { functions } from '../../src/functions';
import type { BrowserWorkbook } from '../../src/hosts/browser/openWorkbook';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellContent, TableRead, WorkbookPort } from '../../src/workbook/port';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';

export interface Case {
  readonly name: string;
  /** How much of the unit it works on. */
  readonly size: number;
  run(): unknown;
}

export interface Comparison {
  readonly title: string;
  /** Time is compared for one of these. */
  readonly per: string;
  /** The others are measured against the first. */
  readonly cases: readonly [Case, ...Case[]];
}

type Cells = readonly (readonly unknown[])[];

const base = 50;
const ceiling = 86;

/** What a worksheet function leaves in its cells, by the path that every host takes. */
function call(id: string, ...args: unknown[]): unknown {
  // Of the same rows again it would not read a cell: see functions/parameters.
  const ranges = args.map((arg) => (Array.isArray(arg) ? [...(arg as unknown[])] : arg));
  const outcome = functions.get(id)?.run(ranges);
  if (outcome === undefined || 'error' in outcome) throw new Error(`${id}: ${outcome?.message}`);
  return outcome.value;
}

/** Whole years of days in F as ranges of a sheet, with a winter each and weather that does not repeat. */
function dailyRecord(years: number): { dates: Cells; highs: Cells; lows: Cells } {
  const first = serialOfDay(dayOfIso('1926-01-01') ?? NaN);
  const end = serialOfDay(dayOfIso(`${1926 + years}-01-01`) ?? NaN);
  const days = Array.from({ length: end - first }, (_, i) => i);
  const lowOf = (i: number): number =>
    45 - 25 * Math.cos((2 * Math.PI * i) / 365.25) + 6 * Math.sin(i * 0.7) + 5 * Math.sin(i * 0.11);
  return {
    dates: days.map((i) => [first + i]),
    lows: days.map((i) => [lowOf(i)]),
    highs: days.map((i) => [lowOf(i) + 20]),
  };
}

const records = [10, 20, 50, 100].map((years) => ({ years, ...dailyRecord(years) }));
type Record = (typeof records)[number];

function growing(title: string, run: (record: Record) => unknown): Comparison {
  const [first, ...others] = records.map((record) => ({
    name: `${record.years} years`,
    size: record.dates.length,
    run: () => run(record),
  }));
  return { title, per: 'day', cases: [first as Case, ...others] };
}

const second = (rows: unknown): unknown[][] => (rows as unknown[][]).map(([, frost]) => [frost]);
const firstCell = ({ dates }: Record): unknown => dates[0]?.[0];
const lastCell = ({ dates }: Record): unknown => dates[dates.length - 1]?.[0];

const longest = records[records.length - 1] as Record;
const { dates, highs, lows } = longest;
const size = dates.length;

async function fillPlots(workbook: WorkbookPort, count: number): Promise<unknown> {
  const inputs = Array.from({ length: count }, (_, i) => ({
    Plot: `Plot ${i + 1}`,
    Crop: i % 2 === 0 ? 'pickling cucumber' : 'pumpkin',
    Layout: 'rows',
    Length: 100 + (i % 7),
    Width: 40,
    Start: 'seed',
  }));
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template === plotsTemplate ? inputs : [],
    form: {},
  }));
  await fillSheets(workbook, requests, plotsTemplate.title);
  return (await workbook.readTable('Plots'))?.rows.length;
}

/** Times are taken in whole microseconds: too coarse for one call. */
const manyCalls = 10;

const sown = (plants: number, tested?: number): Case => ({
  name: `${plants.toLocaleString('en-US')} plants`,
  size: manyCalls,
  run: () => {
    for (let i = 1; i < manyCalls; i++) call('SEED.NEEDED', plants, 0.8, 0.9, 0.95, tested);
    return call('SEED.NEEDED', plants, 0.8, 0.9, 0.95, tested);
  },
});
const filled = (count: number): Case => ({
  name: `${count.toLocaleString('en-US')} plots`,
  size: count,
  run: () => fillPlots(createFileWorkbook({ functions: [...functions.values()] }), count),
});

const settleMs = 600_000;
const grids = new Map<number, Promise<BrowserWorkbook>>();

async function fillGrid(count: number): Promise<BrowserWorkbook> {
  const workbook = openHeadless({
    functions: [...functions.values()],
    namespace: functionNamespace,
    firstSheet: 'Scratch',
  });
  await fillPlots(workbook, count);
  await workbook.settle(settleMs);
  return workbook;
}

/** An edit of a plot in the middle of the grid's table, to the last result; of two values each in its turn. */
function edited(count: number, header: string, values: readonly [CellContent, CellContent]): Case {
  let edits = 0;
  return {
    name: `${count.toLocaleString('en-US')} plots`,
    size: 1,
    async run() {
      const grid = grids.get(count) ?? fillGrid(count);
      grids.set(count, grid);
      const workbook = await grid;
      const { area, headers } = (await workbook.readTable('Plots')) as TableRead;
      const line = Math.ceil(count / 2);
      const place = {
        sheet: area.sheet,
        row: area.row + line,
        column: area.column + headers.indexOf(header),
      };
      await workbook.apply({
        title: 'edit',
        expect: [],
        newSheets: [],
        cells: [{ ...place, contents: [[values[edits++ % 2] ?? null]] }],
        tableRows: [],
        pictures: [],
        marks: [],
      });
      await workbook.settle(settleMs);
      const read = await workbook.readTable('Plots');
      return read?.rows[line - 1]?.[headers.indexOf('Plants')];
    },
  };
}

function editing(title: string, header: string, values: readonly [CellContent, CellContent]): Comparison {
  const among = (count: number): Case => edited(count, header, values);
  return { title, per: 'edit', cases: [among(100), among(300), among(1_000)] };
}

export const comparisons: readonly Comparison[] = [
  growing('FROST.LASTDATES, FROST.SPRINGDATE', (record) =>
    call('FROST.SPRINGDATE', second(call('FROST.LASTDATES', record.dates, record.lows)), 0.1, 2030),
  ),
  growing('FROST.FIRSTDATES, FROST.FALLDATE', (record) =>
    call('FROST.FALLDATE', second(call('FROST.FIRSTDATES', record.dates, record.lows)), 0.1, 2030),
  ),
  growing('HEAT.SUM', (record) => call('HEAT.SUM', record.highs, record.lows, base, ceiling)),
  growing('HEAT.DATE, the last day of heat', (record) => {
    const all = call('HEAT.SUM', record.highs, record.lows, base);
    return call('HEAT.DATE', record.dates, record.highs, record.lows, firstCell(record), all, base);
  }),
  growing('HEAT.SUCCESSION, over the whole record', (record) => {
    const from = firstCell(record);
    return call(
      'HEAT.SUCCESSION',
      record.dates,
      record.highs,
      record.lows,
      from,
      lastCell(record),
      300,
      base,
    );
  }),
  {
    title: 'Heat of 100 years',
    per: 'day',
    cases: [
      { name: 'HEAT.SUM, one call', size, run: () => call('HEAT.SUM', highs, lows, base, ceiling) },
      {
        name: 'HEAT.DAY, one call a row',
        size,
        run: () =>
          highs.reduce(
            (sum, [high], row) => sum + Number(call('HEAT.DAY', high, lows[row]?.[0], base, ceiling)),
            0,
          ),
      },
    ],
  },
  {
    title: 'HEAT.SUM of 100 years, by method',
    per: 'day',
    cases: [
      { name: 'mean', size, run: () => call('HEAT.SUM', highs, lows, base, ceiling, 'mean') },
      { name: 'modified', size, run: () => call('HEAT.SUM', highs, lows, base, ceiling, 'modified') },
      { name: 'sine', size, run: () => call('HEAT.SUM', highs, lows, base, ceiling, 'sine') },
      { name: 'reduced', size, run: () => call('HEAT.SUM', highs, lows, base, ceiling, 'reduced') },
    ],
  },
  { title: 'SEED.NEEDED', per: 'call', cases: [sown(100), sown(10_000), sown(1_000_000)] },
  {
    title: 'SEED.NEEDED, 400 seeds tested',
    per: 'call',
    cases: [sown(100, 400), sown(10_000, 400), sown(100_000, 400)],
  },
  editing('A length edited in the grid', 'Length', [100, 200]),
  editing('A crop edited in the grid', 'Crop', ['pumpkin', 'zucchini']),
  editing('A name edited in the grid', 'Plot', ['Creek', 'Hill']),
  { title: 'All sheets of a file, computed', per: 'plot', cases: [filled(100), filled(1_000)] },
];
