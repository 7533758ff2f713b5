// @vitest-environment jsdom
/** The working of a cell over the host for Excel, with the stand-in for Excel and our functions behind it. */
import { afterEach, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { openExcelWorkbook, type ExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
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

test('follows the selection and a change of an input', async () => {
  standIn = openStandIn({ firstSheet: 'Kitchen', functions: [...functions.values()] });
  const [kitchen] = standIn.book.sheets;
  if (kitchen === undefined) throw new Error('no sheet');
  // 43,560 sq ft an acre / (2 ft x 36 in) = 7,260.
  standIn.type(kitchen, 0, 0, 2);
  standIn.type(kitchen, 0, 1, 36);
  standIn.type(kitchen, 0, 2, '=ROUND(CUCURBIT.PLANTS.DENSITY(A1,B1),0)');
  const workbook = openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() });
  pane = await openPaneOver(workbook, await workingTools());
  const details = section().querySelector('details');
  if (details === null) throw new Error('nothing to open');
  details.open = true;
  standIn.select(kitchen, 0, 2);
  await until(() => expect(content()).toContain('Kitchen C1 shows7260'));
  expect(content()).toContain('Distance between rows, ft2Kitchen A1');
  expect(content()).toContain('row spacing 2, plant spacing 36');

  const link = [...section().querySelectorAll('button')].find(
    ({ textContent }) => textContent === 'Kitchen A1',
  );
  link?.click();
  await until(async () => expect(await workbook.selection()).toMatchObject({ row: 0, column: 0 }));
  // The stand-in tells nobody of what the pane selects.
  standIn.select(kitchen, 0, 0);
  await until(() => expect(section().textContent).toContain('This is still the working of Kitchen C1.'));
  // Twice as far apart, half the plants.
  standIn.type(kitchen, 0, 0, 4);
  await until(() => expect(content()).toContain('Kitchen C1 shows3630'));
}, 120_000);
