// @vitest-environment jsdom
/** Homework made from the pane over the real browser workbook and over the host for Excel with its stand-in. */
import { afterEach, expect, test, vi } from 'vitest';
import { functions } from '../../src/functions';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { openStandIn } from '../excelStandIn/openStandIn';
import { quickClock } from '../hosts/excel/openTestWorkbook';
import { openGridPane } from './openGridPane';
import { enter, fillFake, openPaneOver, until, type OpenPane } from './openPane';
import type { LiveWorkbook, TableRead } from '../../src/workbook/port';

let close: () => void;
afterEach(() => close());

async function openGrid(): Promise<OpenPane<LiveWorkbook>> {
  const pane = await openGridPane([]);
  close = pane.close;
  return pane;
}

async function openExcel(): Promise<OpenPane<LiveWorkbook>> {
  const standIn = openStandIn({ firstSheet: 'Kitchen', functions: [...functions.values()] });
  const workbook = openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() });
  await fillFake(workbook, []);
  const pane = await openPaneOver(workbook);
  close = () => {
    pane.handle.dispose();
    standIn.close();
  };
  return pane;
}

async function make(pane: OpenPane<LiveWorkbook>, what: string, said: string): Promise<void> {
  enter(pane.field('What to make'), what);
  enter(pane.field('Number of the homework'), '17');
  enter(pane.field('How many problems'), '3');
  pane.button('Make the sheet').click();
  await vi.waitFor(() => expect(pane.root.getAttribute('aria-busy')).not.toBe('true'), { timeout: 240_000 });
  await until(() => expect(pane.spoken()).toContain(said));
}

async function table({ workbook }: OpenPane<LiveWorkbook>, name: string): Promise<TableRead> {
  expect(await workbook.settle(60_000)).toEqual([]);
  const read = await workbook.readTable(name);
  if (read === null) throw new Error(`no ${name}`);
  return read;
}

test.each([
  ['the browser workbook', openGrid],
  ['Excel', openExcel],
] as const)(
  'in %s: a sheet, an answer with its verdict, a second sheet beside it, the key',
  async (_, open) => {
    const pane = await open();
    await make(pane, 'the homework', 'Made: Homework, 3 problems.');
    const { area, headers, rows } = await table(pane, 'Homework');
    const at = (header: string): number => headers.indexOf(header);
    expect(rows.map((row) => row[at('Function')])).toEqual([
      'SEED.NEEDED',
      'FROST.SPRINGDATE',
      'SEASON.DAYS',
    ]);
    const verdicts = async () => (await table(pane, 'Homework')).rows.map((row) => row[at('Verdict')]);
    // The grid's engine begins a moment after a write, on a busy machine after it seems settled.
    await until(async () => expect(await verdicts()).toEqual(['', '', '']));

    // 360 / 0.9 is 400, by 0.8 more 500; of frosts on 17, 18 April, 1, 2, 3 May 75% are later than 18 April; 13 May to
    // 20 October is 160 days.
    await pane.workbook.apply({
      title: 'typed',
      expect: [],
      newSheets: [],
      cells: [
        {
          sheet: area.sheet,
          row: area.row + 1,
          column: area.column + at('Answer'),
          contents: [[400], ['2027-04-18'], [160]],
        },
      ],
      tableRows: [],
      pictures: [],
      marks: [],
    });
    const answered = await table(pane, 'Homework');
    expect(answered.rows.map((row) => row[at('Verdict')])).toEqual([
      'You left the germination out.',
      'right',
      'right',
    ]);

    await make(pane, 'the homework', 'Made: Homework 2, 3 problems.');
    expect(await table(pane, 'Homework')).toEqual(answered);
    await make(pane, 'the key, for the teacher', 'Made: Homework key, the answers to 3 problems.');
    const key = await table(pane, 'HomeworkKey');
    // 18 April 2027 is day 46495 of a spreadsheet (2 May 2026 is 46144; 351 days on).
    const rightAnswer = key.headers.indexOf('Right answer');
    expect(key.rows.map((row) => row[rightAnswer])).toEqual([500, 46_495, 160]);
  },
  300_000,
);

test('a number out of range is said at its field, and nothing is made', async () => {
  const pane = await openGrid();
  enter(pane.field('Number of the homework'), '0');
  pane.button('Make the sheet').click();
  expect(pane.section('Homework').textContent).toContain('at least 1');
  expect((await pane.workbook.sheets()).some(({ name }) => name === 'Homework')).toBe(false);
}, 120_000);

test('units begin as those of the season, and a number put in takes away what was said of the last sheet', async () => {
  const pane = await openGridPane([]);
  close = pane.close;
  const units = pane.field('Units of the problems');
  expect(units.value).toBe('us');
  const at = await pane.workbook.locate('UNITS');
  if (at === null) throw new Error('no units in Season');
  await pane.type(at.sheet, at.row, at.column, { v: 'metric' });
  await until(() => expect(units.value).toBe('metric'));
  await make(pane, 'the homework', 'Made: Homework, 3 problems.');
  expect((await table(pane, 'Homework')).rows[0]?.[0]).toBe('17m-1');

  enter(pane.field('Number of the homework'), '0');
  expect(pane.section('Homework').textContent).toContain('at least 1');
  expect(pane.spoken()).not.toContain('Made: Homework');

  enter(units, 'us');
  await pane.type(at.sheet, at.row, at.column, { v: 'metric' });
  await new Promise((resolve) => setTimeout(resolve, 600));
  expect(units.value).toBe('us');
}, 240_000);
