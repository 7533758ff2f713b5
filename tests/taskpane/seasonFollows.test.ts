// @vitest-environment jsdom
/** A Season that follows the Weather sheet, in the pane over the real browser workbook. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { seasonTemplate } from '../../src/templates/season';
import { followWeather, requestWeather, weatherRecordTemplate } from '../../src/templates/weather';
import { fillSheets } from '../../src/workbook/fillSheets';
import { readForm, writeForm } from '../../src/workbook/readForm';
import { openGridPane, type GridPane } from './openGridPane';
import { enter, until } from './openPane';

let pane: GridPane;
/** From 1 January 2021, 50 °F but for frosts on 20 April and 10 October 2021, 30 April and 20 October 2022. */
const first = 44197;
const frosts = [44306, 44479, 44681, 44854];
const days = Array.from({ length: 730 }, (_, i) => ({
  serial: first + i,
  high: 70,
  low: frosts.includes(first + i) ? 30 : 50,
}));

beforeEach(async () => {
  pane = await openGridPane([{ Plot: 'Creek', Crop: 'slicing cucumber', Length: 100, Width: 24 }]);
  await fillSheets(pane.workbook, requestWeather({ place: 'Invented hollow', units: 'us', days }), 'weather');
  const season = await readForm(pane.workbook, seasonTemplate);
  if (season === null) throw new Error('no Season');
  await writeForm(pane.workbook, season, followWeather, 'follow');
  await pane.workbook.settle(20_000);
  await until(() => expect(fieldText('Last frost of spring')).toContain('From the Weather sheet'));
}, 120_000);
afterEach(() => pane.close());

const fieldText = (label: string): string => pane.field(label).closest('.field')?.textContent ?? '';
const valueOf = (label: string): string => pane.field(label).value;

it('shows where the dates come from, and moves them with the risk', async () => {
  // Half of two springs: the day in the middle of 20 and 30 April, in the year of the Season.
  const year = valueOf('Year of the last frost');
  await until(() => expect(valueOf('Last frost of spring')).toBe(`${year}-04-25`));
  enter(pane.field('Risk those dates carry'), '10');
  await pane.press('Put into the sheet', 'Put into the sheet: Risk those dates carry.');
  // Nine tenths of the way from 20 to 30 April.
  await until(() => expect(valueOf('Last frost of spring')).toBe(`${year}-04-29`));
  expect(fieldText('Last frost of spring')).toContain('From the Weather sheet');
});

it('keeps following through a refresh of the sheets, and gives way to a date that is typed', async () => {
  await pane.press(
    'Refresh the sheets',
    'Refreshed: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges, Weather, Weather record.',
  );
  expect(fieldText('First frost of fall')).toContain('From the Weather sheet');
  const year = valueOf('Year of the last frost');
  enter(pane.field('Last frost of spring'), `${year}-05-09`);
  await pane.press('Put into the sheet', 'Put into the sheet: Last frost of spring.');
  await until(() => expect(fieldText('Last frost of spring')).not.toContain('From the Weather sheet'));
  expect(valueOf('Last frost of spring')).toBe(`${year}-05-09`);
  expect(fieldText('First frost of fall')).toContain('From the Weather sheet');
});

it('lets the risk be mended where the record has no date for it, and says so at the Weather sheet', async () => {
  const record = await pane.table('Weather');
  const sheet = weatherRecordTemplate.sheet;
  // The second spring has no frost: at 90% there is no date.
  await pane.type(sheet, record.area.row + 1 + 44681 - first, 2, { v: 50 });
  await pane.type(sheet, record.area.row + 1 + 44479 - first, 2, { v: 50 });
  enter(pane.field('Risk those dates carry'), '90');
  await pane.press('Put into the sheet', 'Put into the sheet: Risk those dates carry.');
  await until(() => expect(pane.root.textContent).toContain('Frost comes in fewer years than that'));
  enter(pane.field('Risk those dates carry'), '20');
  await pane.press('Put into the sheet', 'Put into the sheet: Risk those dates carry.');
  await until(() => expect(pane.root.textContent).not.toContain('Frost comes in fewer years than that'));
});
