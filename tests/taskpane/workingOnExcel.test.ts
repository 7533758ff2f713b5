// @vitest-environment jsdom
/** The working of a cell over the host for Excel, with the stand-in for Excel and our functions behind it. */
import { afterEach, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { openExcelWorkbook, type ExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { makeHomework } from '../../src/templates/makeHomework';
import { english } from '../../src/texts/english';
import { openStandIn, type StandIn } from '../excelStandIn/openStandIn';
import { quickClock } from '../hosts/excel/openTestWorkbook';
import { openPaneOver, until, type OpenPane } from './openPane';
import { workingTools } from './workingTools';

const words = english.pane.working;
let standIn: StandIn;
let pane: OpenPane<ExcelWorkbook>;
afterEach(() => {
  pane.handle.dispose();
  standIn.close();
});

const section = (): HTMLElement => pane.section(words.heading);
const content = (): string => section().querySelector('.working')?.textContent ?? '';

async function open(): Promise<NonNullable<StandIn['book']['sheets'][number]>> {
  standIn = openStandIn({ firstSheet: 'Kitchen', functions: [...functions.values()] });
  const [kitchen] = standIn.book.sheets;
  if (kitchen === undefined) throw new Error('no sheet');
  const workbook = openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() });
  pane = await openPaneOver(workbook, await workingTools());
  const details = section().querySelector('details');
  if (details === null) throw new Error('nothing to open');
  details.open = true;
  return kitchen;
}

test('follows the selection and a change of an input', async () => {
  const kitchen = await open();
  // 43,560 sq ft an acre / (2 ft x 36 in) = 7,260.
  standIn.type(kitchen, 0, 0, 2);
  standIn.type(kitchen, 0, 1, 36);
  standIn.type(kitchen, 0, 2, '=ROUND(CUCURBIT.PLANTS.DENSITY(A1,B1),0)');
  standIn.select(kitchen, 0, 2);
  await until(() => expect(content()).toContain('Kitchen C1 shows7260'));
  expect(content()).toContain('Distance between rows, ft2Kitchen A1');
  expect(content()).toContain('row spacing 2, plant spacing 36');

  const link = [...section().querySelectorAll('button')].find(
    ({ textContent }) => textContent === 'Kitchen A1',
  );
  link?.click();
  await until(async () => expect(await pane.workbook.selection()).toMatchObject({ row: 0, column: 0 }));
  // The stand-in tells nobody of what the pane selects.
  standIn.select(kitchen, 0, 0);
  await until(() => expect(section().textContent).toContain('This is still the working of Kitchen C1.'));
  // Twice as far apart, half the plants.
  standIn.type(kitchen, 0, 0, 4);
  await until(() => expect(content()).toContain('Kitchen C1 shows3630'));
}, 120_000);

test('a line of a homework tells its answer when asked, a cell of a list whose formula fills it', async () => {
  const kitchen = await open();
  const given = homeworkProblems(17, 3, 'us');
  if ('wrong' in given) throw new Error(given.wrong);
  await makeHomework(pane.workbook, { number: 17, units: 'us' }, given.value, false, 'homework');
  const { area } = (await pane.workbook.readTable('Homework')) ?? {};
  const sheet = standIn.book.sheets.find(({ name }) => name === 'Homework');
  if (area === undefined || sheet === undefined) throw new Error('no homework');
  standIn.select(sheet, area.row + 1, area.column + 2);
  const button = (): HTMLButtonElement | undefined =>
    [...section().querySelectorAll('button')].find(({ hidden, textContent }) => {
      return !hidden && textContent?.startsWith('Show the working of') === true;
    });
  await until(() => expect(button()?.textContent).toBe('Show the working of 17-1'));
  expect(content()).toBe('');
  button()?.click();
  // 360 / (0.8 x 0.9) seeds.
  await until(() => expect(content()).toContain('Gives500'));

  standIn.type(kitchen, 4, 0, '=CUCURBIT.CHECK.WORKING("PLANTS.DENSITY",2,36)');
  expect(await pane.workbook.settle(20_000)).toEqual([]);
  standIn.select(kitchen, 5, 1);
  await until(() => expect(button()?.textContent).toBe('Show the working of Kitchen A5'));
}, 120_000);
