// @vitest-environment jsdom
/** The list of tasks over lines as they are read from a sheet. Dates and days of the week are the calendar's. */
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createTaskList, type TaskList } from '../../src/taskpane/taskList';
import type { Area, ReadValue } from '../../src/workbook/port';
import type { LinesRead } from '../../src/workbook/readLines';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';

const headers = ['Date', 'Week', 'Plot', 'Crop', 'Task', 'Until', 'Remark', 'Done', 'My note'];
const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? 0);

/** Mondays: 26 April, 3 and 10 May 2027. */
const creek = [serial('2027-05-06'), serial('2027-05-03'), 'Creek', 'zucchini', 'Sow', '', 'Warm soil.', ''];
const lane = [
  serial('2027-05-01'),
  serial('2027-04-26'),
  'Lane',
  'pumpkin',
  'Harden off',
  serial('2027-05-07'),
  '',
  '',
];
const third = [serial('2027-05-10'), serial('2027-05-10'), 'Creek', 'zucchini', 'Thin', '', '', 'yes'];
const rows: readonly (readonly ReadValue[])[] = [lane, creek, third];

const put = (row: readonly ReadValue[], header: string, value: string): readonly ReadValue[] =>
  row.map((cell, index) => (headers[index] === header ? value : cell));

function read(of: readonly (readonly ReadValue[])[]): LinesRead {
  return {
    stamp: '',
    area: { sheet: 'Calendar', row: 6, column: 0, rows: of.length + 1, columns: headers.length },
    headers,
    units: {},
    lines: of.map((cells) => ({
      values: Object.fromEntries(headers.map((header, index) => [header, cells[index] ?? null])),
      formulas: new Set(['Week']),
      isBlank: cells.every((cell) => cell === ''),
    })),
    cells: { values: of, formulas: [] },
  };
}

let list: TaskList;
let revealed: Area[];
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(2027, 4, 9, 23, 30) });
  revealed = [];
  list = createTaskList((cell) => revealed.push(cell));
  document.body.replaceChildren(list.element);
  list.show(read(rows));
});
afterEach(() => void vi.useRealTimers());

function select(label: string): HTMLSelectElement {
  const found = [...document.querySelectorAll('label')].find(({ textContent }) => textContent === label);
  return document.querySelector<HTMLSelectElement>(`#${found?.htmlFor}`) as HTMLSelectElement;
}
const optionsOf = (label: string): string[] => [...select(label).options].map(({ text }) => text);
function choose(label: string, text: string): void {
  expect(optionsOf(label)).toContain(text);
  select(label).selectedIndex = optionsOf(label).indexOf(text);
  select(label).dispatchEvent(new Event('change', { bubbles: true }));
}
const buttons = (): HTMLButtonElement[] => [...document.querySelectorAll('button')];
const listed = (): string[] => buttons().map(({ textContent }) => textContent?.trim() ?? '');
const counted = (): string | null | undefined => document.querySelector('[role=status]')?.textContent;

test('says date, task, plot, remark and Done of every task in the order of the sheet', () => {
  expect(listed()).toEqual([
    'May 1, 2027 to May 7, 2027 · Harden off · Lane',
    'May 6, 2027 · Sow · Creek  Warm soil.',
    'May 10, 2027 · Thin · Creek Done: yes',
  ]);
  expect(counted()).toBe('3 of 3 tasks');
});

test('is narrowed down by plot, crop and week, one on top of the other', () => {
  expect(optionsOf('Plot')).toEqual(['all', 'Creek', 'Lane']);
  expect(optionsOf('Crop')).toEqual(['all', 'pumpkin', 'zucchini']);
  choose('Plot', 'Creek');
  expect(counted()).toBe('2 of 3 tasks');
  choose('Week', 'May 10, 2027');
  expect(listed()).toEqual(['May 10, 2027 · Thin · Creek Done: yes']);
  choose('Crop', 'pumpkin');
  expect(buttons()).toEqual([]);
  expect(counted()).toBe('0 of 3 tasks');
  for (const label of ['Plot', 'Crop', 'Week']) choose(label, 'all');
  expect(counted()).toBe('3 of 3 tasks');
});

test.each([
  ['a Sunday night', new Date(2027, 4, 9, 23, 30), 'May 3, 2027'],
  ['a Monday', new Date(2027, 4, 10), 'May 10, 2027'],
  ['a Saturday', new Date(2027, 4, 1, 12), 'Apr 26, 2027'],
])('names the week of %s, and sets it first', (_, now, monday) => {
  vi.setSystemTime(now);
  list.show(read([]));
  list.show(read(rows));
  const others = ['Apr 26, 2027', 'May 3, 2027', 'May 10, 2027'].filter((each) => each !== monday);
  expect(optionsOf('Week')).toEqual(['all', `this week (${monday})`, ...others]);
  choose('Week', `this week (${monday})`);
  expect(counted()).toBe('1 of 3 tasks');
});

test('lists the weeks by date where it is another week now', () => {
  vi.setSystemTime(new Date(2027, 0, 4));
  list.show(read(rows));
  expect(optionsOf('Week')).toEqual(['all', 'Apr 26, 2027', 'May 3, 2027', 'May 10, 2027']);
});

test('a press goes to the cell of the task, also in a narrowed list', () => {
  choose('Plot', 'Creek');
  buttons()[1]?.click();
  expect(revealed).toEqual([{ sheet: 'Calendar', row: 9, column: 4, rows: 1, columns: 1 }]);
});

test('follows the sheet: a tick shows, and choice and focus stay', () => {
  choose('Plot', 'Creek');
  buttons()[0]?.focus();
  list.show(read([lane, put(creek, 'Done', 'yes'), third, put(third, 'Plot', 'Brook')]));
  expect(listed()[0]).toBe('May 6, 2027 · Sow · Creek Done: yes Warm soil.');
  expect(counted()).toBe('2 of 4 tasks');
  expect(document.activeElement).toBe(buttons()[0]);
  expect(select('Plot').value).toBe('Creek');

  list.show(read([lane]));
  expect(select('Plot').value).toBe('');
  expect(counted()).toBe('1 of 1 task');
});

test('the focus stays in the list when its task goes', () => {
  buttons()[2]?.focus();
  list.show(read([lane, creek]));
  expect(document.activeElement).toBe(buttons()[1]);
  choose('Plot', 'Lane');
  buttons()[0]?.focus();
  choose('Week', 'this week (May 3, 2027)');
  expect(document.activeElement).toBe(select('Plot'));
});

test('lists a hundred, and says what to do about the others', () => {
  const many = Array.from({ length: 130 }, (_, index) => put(creek, 'Plot', `Bed ${index + 1}`));
  list.show(read(many));
  expect(buttons()).toHaveLength(100);
  expect(counted()).toBe('The first 100 of 130 tasks');
  expect(document.body.textContent).toContain('Choose a plot, a crop or a week for the others.');
  expect(optionsOf('Plot').slice(0, 3)).toEqual(['all', 'Bed 1', 'Bed 2']);
  choose('Plot', 'Bed 130');
  expect(listed()).toEqual(['May 6, 2027 · Sow · Bed 130  Warm soil.']);
  expect([...document.querySelectorAll<HTMLElement>('p')].filter(({ hidden }) => hidden)).toHaveLength(1);
});

test('shows what people put there themselves as it stands', () => {
  const blank = headers.map(() => '');
  const own = ['some day', '', '<b>Hedge</b>', '', 'Mend fence', '', { error: '#REF!', message: null }, ''];
  list.show(read([own, blank, ['', '', '', '', '', '', '', 'yes']]));
  expect(listed()).toEqual([
    'some day · Mend fence · <b>Hedge</b>  #REF!',
    'A row without date, plot and task Done: yes',
  ]);
  expect(optionsOf('Week')).toEqual(['all']);
});

test('is not there where nothing stands in the sheet', () => {
  list.show(null);
  expect(list.element.hidden).toBe(true);
  list.show(read([headers.map(() => '')]));
  expect(list.element.hidden).toBe(true);
});

test('is in order to somebody who does not see it', async () => {
  const found = await axe.run(list.element, { rules: { 'color-contrast': { enabled: false } } });
  expect(found.passes.length).toBeGreaterThan(5);
  expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
});
