/** The calendar of the invented garden in the product's own page: its sheet, its tasks in the pane, its file for a phone. */
import ICAL from 'ical.js';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPlanPage, type PaneHands, type PlanPage } from './gridPage/planPage';
import { saidDay } from '../taskpane/saidDay';

/** Headers and every task of the invented garden, and lines under them. */
const aroundTable = 'A9:F260';

interface TaskShown {
  readonly date: string;
  readonly week: string;
  readonly plot: string;
  readonly crop: string;
  readonly task: string;
  readonly until: string;
}

describe('the calendar in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let pane: PaneHands;
  /** What the sheet shows, line by line. */
  let tasks: readonly TaskShown[];
  beforeAll(async () => {
    open = await openPlanPage();
    pane = open.pane;
    await open.page.getByRole('tab', { name: 'Calendar', exact: true }).click();
    const [headers, ...lines] = await open.hands.shown(aroundTable);
    expect(headers).toEqual(['Date', 'Week', 'Plot', 'Crop', 'Task', 'Until']);
    tasks = lines
      .filter(([date]) => date !== undefined && date !== '')
      .map(([date = '', week = '', plot = '', crop = '', task = '', until = '']) => ({
        date,
        week,
        plot,
        crop,
        task,
        until,
      }));
  }, 240_000);
  afterAll(() => open.close());

  const section = (): Locator => pane.section('Calendar');
  const choose = async (label: 'Plot' | 'Crop' | 'Week', value: string): Promise<void> => {
    await section().getByLabel(label, { exact: true }).selectOption(value);
  };
  const listed = (): Promise<string[]> => section().locator('.tasks .line-name').allTextContents();
  /** As the pane says a task. */
  const said = ({ date, until, task, plot }: TaskShown): string =>
    [
      until === '' || until === date ? saidDay(date) : `${saidDay(date)} to ${saidDay(until)}`,
      task,
      plot,
    ].join(' · ');

  test('its sheet holds the tasks of every plot by date', () => {
    const dates = tasks.map(({ date }) => date);
    expect(dates.every((date) => /^2027-\d\d-\d\d$/.test(date))).toBe(true);
    expect(dates).toEqual([...dates].sort());
    expect(new Set(tasks.map(({ plot }) => plot)).size).toBe(12);
    // The last frost is on 2 May: out two weeks later, hardened off the week before, started three weeks before.
    expect(tasks.filter(({ plot }) => plot === 'Creek 1').slice(0, 3)).toEqual([
      expect.objectContaining({ date: '2027-04-25', task: 'Start transplants', until: '' }),
      expect.objectContaining({ date: '2027-05-09', task: 'Harden off', until: '2027-05-15' }),
      expect.objectContaining({ date: '2027-05-16', task: 'Set out' }),
    ]);
    // 25 April 2027 is a Sunday, as Python's calendar has it: its week begins on the 19th.
    expect(tasks.find(({ date }) => date === '2027-04-25')?.week).toBe('2027-04-19');
  });

  test('its tasks are listed in the pane, and narrowed down by plot, crop and week', async () => {
    const count = tasks.length;
    await pane.says(`The first 100 of ${count} tasks`);
    expect(await listed()).toEqual(tasks.slice(0, 100).map(said));

    await choose('Plot', 'Creek 1');
    const ofPlot = tasks.filter(({ plot }) => plot === 'Creek 1');
    await pane.says(`${ofPlot.length} of ${count} tasks`);
    expect(await listed()).toEqual(ofPlot.map(said));

    await choose('Plot', '');
    await choose('Crop', 'summer squash');
    const ofCrop = tasks.filter(({ plot }) => ['Hill patch', 'Fence'].includes(plot));
    await pane.says(`${ofCrop.length} of ${count} tasks`);
    expect(await listed()).toEqual(ofCrop.map(said));

    await choose('Week', 'May 3, 2027');
    // The Monday to the Sunday: sown on the 9th.
    const inWeek = ofCrop.filter(({ date }) => date >= '2027-05-03' && date <= '2027-05-09');
    expect(inWeek.map(({ task }) => task)).toContain('Sow');
    await pane.says(`${inWeek.length} of ${count} tasks`);
    expect(await listed()).toEqual(inWeek.map(said));

    await section().locator('.tasks button').first().click();
    const row = 10 + tasks.indexOf(inWeek[0] as TaskShown);
    await expect.poll(() => open.hands.where(), { timeout: 60_000 }).toBe(`E${row}`);
  });

  test('its file for a phone is read by another program, a day for each task', async () => {
    const { name, bytes } = await pane.takeFile('Calendar file for a phone (.ics)');
    expect(name).toBe('calendar.ics');
    await pane.says('The file is where your browser puts what it downloads.');
    // ical.js 2.2.1 parses RFC 5545.
    const calendar = new ICAL.Component(ICAL.parse(bytes.toString('utf8')) as unknown[]);
    const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(events.map(({ summary, startDate }) => `${startDate.toString()} ${summary}`).sort()).toEqual(
      tasks.map(({ date, plot, task }) => `${date} ${plot}: ${task}`).sort(),
    );
    // The days of an event end before its DTEND.
    const hardening = events.find(({ summary }) => summary === 'Creek 1: Harden off');
    expect(hardening?.endDate.toString()).toBe('2027-05-16');
    expect(open.troubles).toEqual([]);
  });
});
