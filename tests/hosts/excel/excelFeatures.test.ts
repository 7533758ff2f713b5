import { describe, expect, test } from 'vitest';
import { allTemplates } from '../../../src/templates/sheets';
import { demoPlots } from '../../../src/templates/demoGarden';
import { fillSheets } from '../../../src/workbook/fillSheets';
import { change, plotRow, plots, png } from '../../contract/contractWorkbook';
import { openTestWorkbook, sheetNamed } from './openTestWorkbook';

/** The floor of the manifest. */
const oldest = 9;

const requests = allTemplates.map((template) => ({ template, inputs: demoPlots.slice(0, 2), form: {} }));

describe('an Excel of the oldest version that we take', () => {
  test('gets every sheet of ours, without the notes', async () => {
    const { standIn, workbook } = openTestWorkbook(oldest);
    expect(workbook.lacks).toEqual(['notes', 'tableRows', 'pictures']);
    const { made } = await fillSheets(workbook, requests, 'fill');
    expect((await fillSheets(workbook, requests, 'refresh')).refreshed).toEqual(made);
    expect(standIn.book.sheets.flatMap(({ notes }) => notes)).toEqual([]);
    standIn.close();
  });

  test('is told to be too old for rows under a table and for pictures', async () => {
    const { workbook } = openTestWorkbook(oldest);
    await workbook.apply(change({ newSheets: [plots] }));
    const picture = {
      name: 'dot',
      sheet: 'Plots',
      row: 9,
      column: 0,
      png,
      widthPx: 4,
      heightPx: 3,
      altText: 'a dot',
    };
    for (const refused of [
      change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 1)] }] }),
      change({ pictures: [picture] }),
    ]) {
      await expect(workbook.apply(refused)).rejects.toMatchObject({ problem: { code: 'programTooOld' } });
    }
  });
});

test('the newest Excel lacks nothing and shows the notes', async () => {
  const { standIn, workbook } = openTestWorkbook();
  expect(workbook.lacks).toEqual([]);
  await fillSheets(workbook, requests, 'fill');
  expect(sheetNamed(standIn, 'Plots').notes.length).toBeGreaterThan(20);
  standIn.close();
});
