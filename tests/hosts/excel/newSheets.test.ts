/** What a new sheet looks like in Excel, beyond what the port reads. */
import { expect, test } from 'vitest';
import { calendarTemplate } from '../../../src/templates/calendar';
import { demoPlots } from '../../../src/templates/demoGarden';
import { allTemplates } from '../../../src/templates/sheets';
import { shades } from '../../../src/workbook/appearance';
import { fillSheets } from '../../../src/workbook/fillSheets';
import { change, formulaSheet, plots, png } from '../../contract/contractWorkbook';
import { settingAt } from '../../excelStandIn/book';
import { openTestWorkbook, sheetNamed } from './openTestWorkbook';

test('cells are dressed, and free cells under a table take texts as texts', async () => {
  const { standIn, workbook } = openTestWorkbook();
  await workbook.apply(change({ newSheets: [plots] }));
  const sheet = sheetNamed(standIn, 'Plots');
  const set = (row: number, column: number, property: string): unknown =>
    settingAt(sheet, row, column, property);
  expect(set(2, 0, 'Font.Bold')).toBe(true);
  expect(set(2, 0, 'Fill.Color')).toBe('#2F6B3F');
  expect(set(2, 0, 'WrapText')).toBe(true);
  expect(set(2, 0, 'AutofitRows')).toBe(true);
  expect(set(3, 0, 'numberFormat')).toBe('@');
  expect(set(3, 1, 'numberFormat')).toBe('#,##0.0');
  expect(set(3, 1, 'Border.EdgeLeft.Style')).toBe('Continuous');
  // 12 characters of 7 pixels and 5 around them, in points.
  expect(set(0, 0, 'ColumnWidth')).toBe((12 * 7 + 5) * 0.75);
  standIn.type(sheet, 5, 0, '007');
  const typed = await workbook.read({ sheet: 'Plots', row: 5, column: 0, rows: 1, columns: 1 });
  expect(typed.values).toEqual([['007']]);
});

test('notes, lists, rules, panes and print set-up', async () => {
  const { standIn, workbook } = openTestWorkbook();
  const page = { landscape: true, pagesWide: 2, repeatRows: [1, 2], repeatColumns: [0, 0] } as const;
  await workbook.apply(change({ newSheets: [{ ...plots, page }] }));
  const sheet = sheetNamed(standIn, 'Plots');
  expect(sheet.notes).toEqual([
    { span: { row: 2, column: 1, rows: 1, columns: 1 }, text: 'Along the rows.' },
  ]);
  expect(sheet.rules).toEqual([
    {
      id: expect.any(String) as string,
      span: { row: 3, column: 0, rows: 20, columns: 2 },
      properties: {
        color: `#${shades.deep.color}`,
        fill: `#${shades.deep.fill}`,
        rule: { formula1: '="say ""north"""', operator: 'EqualTo' },
      },
    },
  ]);
  expect(settingAt(sheet, 4, 0, 'Rule')).toEqual({ list: { inCellDropDown: true, source: 'north,south' } });
  expect(settingAt(sheet, 4, 0, 'ErrorAlert')).toMatchObject({ showAlert: false });
  expect(sheet.page).toMatchObject({
    freezeAt: 'Plots!A1:A3'.replace('Plots', '_new'),
    Orientation: 'Landscape',
    Zoom: { horizontalFitToPages: 2 },
    titleRows: '$2:$3',
    titleColumns: '$A:$A',
    LeftFooter: '&A',
  });
});

test('long lists stand on a very hidden sheet that nobody is shown', async () => {
  const { standIn, workbook } = openTestWorkbook();
  const requests = allTemplates.map((template) => ({ template, inputs: demoPlots.slice(0, 2), form: {} }));
  await fillSheets(workbook, requests, 'fill');
  const hidden = standIn.book.sheets.filter(({ visibility }) => visibility !== 'Visible');
  expect(hidden.map(({ name, visibility }) => [name, visibility])).toEqual([['_lists', 'VeryHidden']]);
  expect((await workbook.sheets()).map(({ name }) => name)).not.toContain('_lists');
  const rules = sheetNamed(standIn, 'Plots').settings.filter(({ property }) => property === 'Rule');
  expect(rules.map(({ value }) => JSON.stringify(value)).join()).toContain('_lists!A1:A');
});

test('the Calendar keeps the filter buttons that Excel gives a new table', async () => {
  const { standIn, workbook } = openTestWorkbook();
  await fillSheets(workbook, [{ template: calendarTemplate, inputs: [], form: {} }], 'fill');
  const table = standIn.book.tables.find(({ name }) => name === 'Calendar');
  expect(table?.showFilterButton).toBe(true);
  // The stand-in would show it if the host took them away.
  const context = new standIn.excel.RequestContext();
  context.workbook.tables.getItem('Calendar').showFilterButton = false;
  await context.sync();
  expect(table?.showFilterButton).toBe(false);
});

test('a picture lies at its cell, in its size, with its text for those who do not see it', async () => {
  const { standIn, workbook } = openTestWorkbook();
  const sheet = { ...formulaSheet('Sketch', [[1]]), widths: [20, 10] };
  const picture = {
    name: 'dot',
    sheet: 'Sketch',
    row: 4,
    column: 2,
    png,
    widthPx: 40,
    heightPx: 30,
    altText: 'a dot',
  };
  await workbook.apply(change({ newSheets: [sheet], pictures: [picture] }));
  const [shape] = sheetNamed(standIn, 'Sketch').shapes;
  expect(shape?.properties).toMatchObject({
    Left: (20 * 7 + 5 + 10 * 7 + 5) * 0.75,
    Top: 60,
    Width: 30,
    Height: 22.5,
    AltTextDescription: 'a dot',
  });
});
