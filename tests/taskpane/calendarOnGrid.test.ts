// @vitest-environment jsdom
/** The calendar made from the pane over the real browser workbook, made anew, and handed out as a file. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { dayOfSerial, isoOfDay } from '../../src/workbook/serialDate';
import { openGridPane, type GridPane } from './openGridPane';
import { until } from './openPane';

const plots = [
  { Plot: 'A', Crop: 'zucchini', Length: 40, Width: 8 },
  { Plot: 'B', Crop: 'no such crop', Length: 40, Width: 8 },
];

let pane: GridPane;
beforeEach(async () => {
  pane = await openGridPane(plots);
}, 60_000);
afterEach(() => {
  vi.restoreAllMocks();
  pane.close();
});

const section = (): string => pane.section('Calendar').textContent ?? '';
const toLookAt = (): string => pane.section('To look at').textContent ?? '';
const hiddenButtons = (): string[] =>
  [...pane.section('Calendar').querySelectorAll('button')]
    .filter(({ hidden }) => hidden)
    .map(({ textContent }) => textContent ?? '');

test('is made, is found old after a change of Plots, and is made anew', async () => {
  expect(section()).toContain('Not made yet.');
  expect(hiddenButtons()).toEqual(['Calendar file for a phone (.ics)']);
  await pane.press('Make the calendar', 'In the calendar: ');
  expect(pane.spoken()).toContain('of 1 plot. Not in the calendar: B: No known crop.');
  expect(section()).toContain('It says what Plots says now.');
  const tasks = (await pane.column('Task', 'Calendar')).length;
  expect(tasks).toBeGreaterThan(8);
  expect(toLookAt()).not.toContain('Plots changed since');

  const { area, headers } = await pane.table('Plots');
  await pane.type(area.sheet, area.row + 1, area.column + headers.indexOf('Plot'), { v: 'Brook' });
  await until(() => expect(toLookAt()).toContain('Plots changed since the calendar was made'));
  await pane.press('Make the calendar anew', 'In the calendar: ');
  expect(await pane.column('Plot', 'Calendar')).toEqual(Array.from({ length: tasks }, () => 'Brook'));
  await until(() => expect(toLookAt()).not.toContain('Plots changed since'));

  await pane.workbook.undo();
  await until(() => expect(section()).toContain('Plots changed since'));
  expect((await pane.column('Plot', 'Calendar'))[0]).toBe('A');
});

test('lists the tasks of the sheet, ticks too, and a press selects the cell of one', async () => {
  await pane.press('Make the calendar', 'In the calendar: ');
  const { area, headers, rows } = await pane.table('Calendar');
  const column = (header: string): number => headers.indexOf(header);
  const listed = (): string[] =>
    [...pane.section('Calendar').querySelectorAll('.tasks button')].map(
      ({ textContent }) => textContent ?? '',
    );
  expect(listed().map((text) => text.split(' · ')[1])).toEqual(rows.map((row) => row[column('Task')]));
  const shown = (): number => listed().length;
  expect(section()).toContain(`${rows.length} of ${rows.length} tasks`);

  await pane.type(area.sheet, area.row + 3, area.column + column('Done'), { v: 'yes' });
  await until(() =>
    expect(
      listed()
        .map((text) => text.includes('Done: yes'))
        .indexOf(true),
    ).toBe(2),
  );

  const weeks = [...pane.section('Calendar').querySelectorAll('select')][2] as HTMLSelectElement;
  const week = Number(rows[2]?.[column('Week')]);
  weeks.value = isoOfDay(dayOfSerial(week) ?? 0);
  weeks.dispatchEvent(new Event('change'));
  const there = rows.flatMap((row, index) => (row[column('Week')] === week ? [index] : []));
  expect(shown()).toBe(there.length);

  pane.section('Calendar').querySelectorAll<HTMLButtonElement>('.tasks button')[0]?.click();
  const cell = { row: area.row + 1 + (there[0] ?? 0), column: area.column + column('Task') };
  await vi.waitFor(async () => expect(await pane.workbook.selection()).toMatchObject(cell));
});

test('is handed out as a calendar file', async () => {
  await pane.press('Make the calendar', 'In the calendar: ');
  const given: Blob[] = [];
  // Neither is in this page's stand-in.
  URL.createObjectURL = (blob: Blob) => `blob:${given.push(blob)}`;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
  await pane.press('Calendar file for a phone (.ics)', 'The file is where your browser');
  expect(given[0]?.type).toBe('text/calendar');
  expect(given[0]?.size).toBeGreaterThan(1000);
});
