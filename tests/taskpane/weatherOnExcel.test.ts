// @vitest-environment jsdom
/** The weather in the pane over the host for Excel, with the stand-in for Excel and our functions behind it. */
import { afterEach, expect, it, vi } from 'vitest';
import { drawForPane, drawForSheet } from '../../src/entries/drawnWeather';
import { paneTools } from '../../src/entries/paneTools';
import { pngParts } from '../../src/entries/pngParts';
import { functions } from '../../src/functions';
import { openExcelWorkbook, type ExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import type { ReadValue } from '../../src/workbook/port';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { recordText } from '../commands/recordText';
import { openStandIn, type StandIn } from '../excelStandIn/openStandIn';
import { quickClock } from '../hosts/excel/openTestWorkbook';
import { enter, fillFake, openPaneOver, until, type OpenPane } from './openPane';

let standIn: StandIn;
let pane: OpenPane<ExcelWorkbook>;
afterEach(() => {
  pane.handle.dispose();
  standIn.close();
});

async function openExcel(apiMinor?: number): Promise<void> {
  standIn = openStandIn({
    firstSheet: 'Kitchen',
    functions: [...functions.values()],
    ...(apiMinor === undefined ? {} : { apiMinor }),
  });
  const workbook = openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() });
  await fillFake(workbook, []);
  pane = await openPaneOver(workbook, {
    ...paneTools,
    drawForPane: async (weather, widthPx) => drawForPane(weather, widthPx),
    drawForSheet: (weather) => drawForSheet(weather, pngParts()),
  });
}
const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
const paste = (text: string): void =>
  enter(pane.field('Rows of a daily record, or the text of its file'), text);
/** The stand-in calculates the whole book anew after each change. */
const idle = (): Promise<void> =>
  vi.waitFor(() => expect(pane.root.getAttribute('aria-busy')).not.toBe('true'), { timeout: 240_000 });
async function press(button: string, said: string): Promise<void> {
  pane.button(button).click();
  await idle();
  await until(() => expect(pane.spoken()).toContain(said));
}
async function named(name: string): Promise<ReadValue> {
  const area = await pane.workbook.locate(name);
  return area === null ? null : ((await pane.workbook.read(area)).values[0]?.[0] ?? null);
}
const shapes = () =>
  standIn.book.sheets
    .filter(({ name }) => name === 'Weather pictures')
    .flatMap((sheet) => sheet.shapes.map(({ properties }) => properties));

it('a record goes into the sheets, Season follows it, and its pictures go into a sheet', async () => {
  await openExcel();
  const frosts = ['2021-10-01', '2022-04-20', '2022-10-11', '2023-04-24'];
  paste(recordText('2021-07-24', '2023-07-23', frosts));
  await press('Put 730 days into the Weather sheets', '730 days were put into Weather, Weather record.');
  expect(standIn.book.tables.find(({ name }) => name === 'Weather')?.span.rows).toBe(1 + 730);
  await press('Have Season follow the record', 'Season follows the record now');
  // Half-way between the two springs, and between the two falls.
  expect(await named('LAST_FROST')).toBe(serial('2027-04-22'));
  expect(await named('FIRST_FROST')).toBe(serial('2027-10-06'));
  await press('Draw the pictures', '3 pictures drawn from the Weather sheets.');
  expect(pane.root.querySelectorAll('figure svg')).toHaveLength(3);
  await press('Put the pictures into a sheet', '3 pictures put into the sheet Weather pictures.');
  expect(shapes().map(({ AltTextDescription: text }) => String(text).split(/[.:]/)[0])).toEqual([
    'Chance of frost by date',
    'Heat from sowing to first pick',
    'Frost-free days, year by year',
  ]);
  expect(await named('PICTURES_STATE')).toBe('yes');
}, 600_000);

it('what Excel refuses is said, and the old record stays', async () => {
  // The last version of ExcelApi that lets no pane add lines to a table that is there.
  await openExcel(12);
  const oldDays = () => standIn.book.tables.find(({ name }) => name === 'Weather')?.span.rows;
  paste(recordText('2021-01-01', '2021-03-31', []));
  await press('Put 90 days into the Weather sheets', '90 days were put into Weather, Weather record.');
  paste(recordText('2021-01-01', '2021-04-10', []));
  pane.button('Put 100 days into the Weather sheets').click();
  await idle();
  await press('Put it in its place', 'Delete the Weather sheets, then put the record in again.');
  const sheet = standIn.book.sheets.find(({ name }) => name === 'Weather record');
  if (sheet === undefined) throw new Error('no record');
  sheet.isProtected = true;
  paste(recordText('2022-01-01', '2022-03-01', []));
  pane.button('Put 60 days into the Weather sheets').click();
  await idle();
  await press('Put it in its place', 'The sheet "Weather record" is protected.');
  expect(oldDays()).toBe(1 + 90);
  const { rows } = (await pane.workbook.readTable('Weather')) ?? { rows: [] };
  expect([rows[0]?.[0], rows[89]?.[0]]).toEqual([serial('2021-01-01'), serial('2021-03-31')]);
}, 600_000);
