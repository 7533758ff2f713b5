/** The iCalendar file, read back by ical.js 2.2.1, an independent parser of RFC 5545. */
import ICAL from 'ical.js';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { calendarFile } from '../../src/commands/calendarFile';
import { functions } from '../../src/functions';
import { calendarTasks } from '../../src/functions/calendarTasks';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { calendarTemplate } from '../../src/templates/calendar';
import { demoFilling, demoPlots } from '../../src/templates/demoGarden';
import { makeCalendar } from '../../src/templates/makeCalendar';
import { plotsTemplate } from '../../src/templates/plots';
import { seasonTemplate } from '../../src/templates/season';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue, WorkbookPort } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

const now = new Date('2026-11-26T18:00:00Z');
const empty = () => createMemoryWorkbook({ functions: [...functions.values()] });

async function withTasks(rows: readonly InputRow[], season: Readonly<Record<string, CellValue>> = {}) {
  const workbook = empty();
  const requests = [
    { template: seasonTemplate, inputs: [], form: season },
    { template: calendarTemplate, inputs: rows, form: {} },
  ];
  await fillSheets(workbook, requests, 'fill');
  return workbook;
}

async function fileOf(workbook: WorkbookPort, at = now): Promise<string> {
  const text = await calendarFile(workbook, at);
  if (text === null) throw new Error('no file');
  return text;
}

function eventsOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const { summary, description, uid, startDate, endDate } = event;
    return {
      summary,
      description,
      uid,
      start: startDate.toString(),
      end: endDate.toString(),
      isDay: startDate.isDate && endDate.isDate,
      stamp: String(component.getFirstPropertyValue('dtstamp')),
      transparency: component.getFirstPropertyValue('transp'),
    };
  });
}

/** RFC 5545, 3.1: lines end in CR LF, and have at most 75 octets without it. */
function expectLines(text: string): void {
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of text.split('\r\n'))
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
}

/** Of the calendar itself. The parser leaves texts that RFC 5545 has no name for as they are: unescaped by 3.3.11. */
function ownText(text: string, property: string): string {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return String(calendar.getFirstPropertyValue(property)).replaceAll(/\\(.)/gs, (_, mark: string) =>
    /n/i.test(mark) ? '\n' : mark,
  );
}

/** 16 May 2027. */
const may16 = 46523;

describe('the file of a calendar', () => {
  test('has every task as a day, or as days whose end is the day after the last', async () => {
    const workbook = empty();
    await fillSheets(workbook, demoFilling, 'fill');
    const made = await makeCalendar(workbook, calendarTasks, 'make');
    const text = await fileOf(workbook);
    expectLines(text);
    const events = eventsOf(text);
    expect(events).toHaveLength(made?.tasks ?? 0);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    expect(events.every(({ isDay, transparency }) => isDay && transparency === 'TRANSPARENT')).toBe(true);
    const find = (summary: string) => events.find((event) => event.summary === summary);
    expect(find('Creek 1: Set out')).toMatchObject({
      start: '2027-05-16',
      end: '2027-05-17',
      stamp: '2026-11-26T18:00:00Z',
    });
    // Hardened off from the 9th to the 15th.
    expect(find('Creek 1: Harden off')).toMatchObject({ start: '2027-05-09', end: '2027-05-16' });
    expect(find('Creek 1: Set out')?.description).toContain('slicing cucumber\nOnly into soil of 64 °F');
    expect(text).toContain('DTSTART;VALUE=DATE:20270516\r\n');
    expect(text).toContain('X-WR-CALNAME:Calendar of Invented garden on the creek\r\n');
  });

  test('says of itself which plots it leaves out, and wherefore', async () => {
    const workbook = empty();
    const nameless = { Plot: 'Wet, low; end', Crop: 'no such crop', Length: 40, Width: 8 };
    const requests = demoFilling.map((request) =>
      request.template === plotsTemplate ? { ...request, inputs: [...demoPlots, nameless] } : request,
    );
    await fillSheets(workbook, requests, 'fill');
    await makeCalendar(workbook, calendarTasks, 'make');
    expect(ownText(await fileOf(workbook), 'x-wr-caldesc')).toMatch(
      /^Not in it.*: Wet, low; end \(no known crop\)\.$/,
    );
  });

  test('names a plot without a name as the sheet does, by its crop and its line in Plots', async () => {
    const workbook = empty();
    const nameless = { Crop: 'zucchini', Length: 40, Width: 8 };
    const requests = demoFilling.map((request) =>
      request.template === plotsTemplate
        ? { ...request, inputs: [{ ...nameless, Plot: 'Bank' }, nameless, nameless] }
        : request,
    );
    await fillSheets(workbook, requests, 'fill');
    await makeCalendar(workbook, calendarTasks, 'make');
    const sowings = eventsOf(await fileOf(workbook)).filter(({ summary }) => summary.endsWith(': Sow'));
    expect(sowings.map(({ summary }) => summary)).toEqual([
      'Bank: Sow',
      'summer squash, line 2: Sow',
      'summer squash, line 3: Sow',
    ]);
    expect(new Set(sowings.map(({ uid }) => uid)).size).toBe(3);
  });

  test('a task keeps its name when its day moves, within a season', async () => {
    const uids = async (date: number, plot: string, PLACE = 'Invented garden') => {
      const rows = [{ Date: date, Plot: plot, Task: 'Set out' }];
      const workbook = await withTasks(rows, { SEASON_YEAR: 2027, PLACE });
      return eventsOf(await fileOf(workbook, now)).map(({ uid }) => uid);
    };
    expect(await uids(may16 + 9, 'A')).toEqual(await uids(may16, 'A'));
    // Across New Year too.
    expect(await uids(may16 + 300, 'A')).toEqual(await uids(may16, 'A'));
    expect(await uids(may16, 'B')).not.toEqual(await uids(may16, 'A'));
    expect(await uids(may16, 'A', 'Another garden')).not.toEqual(await uids(may16, 'A'));
  });

  test('a task has one name in every language, and one of somebody’s own its own', async () => {
    const namesIn = async (language: string) => {
      globalThis.cucurbitLanguage = language;
      vi.resetModules();
      const { calendarFile: fileIn } = await import('../../src/commands/calendarFile');
      const { calendarTemplate: calendar } = await import('../../src/templates/calendar');
      const { seasonTemplate: season } = await import('../../src/templates/season');
      const { fillSheets: fillIn } = await import('../../src/workbook/fillSheets');
      const { functions: all } = await import('../../src/functions');
      const { catalogue } = await import('../../src/texts/catalogue');
      const { columns, tasks, turn } = catalogue.calendar;
      const twice = turn.replace('{task}', tasks.sideDress).replace('{nth}', '1').replace('{of}', '2');
      const said = [...Object.values(tasks), twice, 'Walk the fence'];
      const inputs = said.map((task) => ({
        [columns.date.header]: may16,
        [columns.plot.header]: 'A',
        [columns.task.header]: task,
      }));
      const workbook = createMemoryWorkbook({ functions: [...all.values()] });
      const form = { SEASON_YEAR: 2027, PLACE: 'Invented garden' };
      const requests = [
        { template: season, inputs: [], form },
        { template: calendar, inputs, form: {} },
      ];
      await fillIn(workbook, requests, 'fill');
      return eventsOf((await fileIn(workbook, now)) ?? '').map(({ uid }) => uid);
    };
    const inSpanish = await namesIn('es');
    const inEnglish = await namesIn('en');
    globalThis.cucurbitLanguage = undefined;
    expect(inSpanish).toEqual(inEnglish);
    expect(new Set(inEnglish).size).toBe(17);
    expect(inEnglish).toContain('Invented%20garden/2027/A/sideDress-1-2/1@cucurbit-functions');
    expect(inEnglish).toContain('Invented%20garden/2027/A/Walk%20the%20fence/1@cucurbit-functions');
  });

  test('a later file has a higher number, so that it replaces', async () => {
    const workbook = await withTasks([{ Date: may16, Plot: 'A', Task: 'Sow' }]);
    const numberAt = async (at: Date) =>
      Number(/SEQUENCE:(\d+)/.exec(await fileOf(workbook, at))?.[1] ?? 'none');
    expect(await numberAt(new Date('2026-11-27T00:00:00Z'))).toBeGreaterThan(await numberAt(now));
  });

  test('days at the turn of the year, of a leap year and of changed clocks are those of the sheet', async () => {
    // 31 December 2026 to 2 January 2027; 29 February 2028; 14 March 2027, when clocks go forward in America.
    const rows = [
      { Date: 46387, Until: 46389, Plot: 'A', Task: 'Sow' },
      { Date: 46812, Plot: 'A', Task: 'Set out' },
      { Date: 46460, Plot: 'A', Task: 'Thin' },
    ];
    const events = eventsOf(await fileOf(await withTasks(rows)));
    expect(events.map(({ start, end }) => `${start} ${end}`)).toEqual([
      '2026-12-31 2027-01-03',
      '2028-02-29 2028-03-01',
      '2027-03-14 2027-03-15',
    ]);
  });

  test('of a row without a date or without a task there is none; of none at all there is no file', async () => {
    const rows = [
      { Plot: 'A', Task: 'Some day' },
      { Date: may16, Plot: 'A' },
      { Date: 'soon', Plot: 'A', Task: 'Sow' },
    ];
    expect(await calendarFile(await withTasks(rows), now)).toBeNull();
    expect(await calendarFile(await withTasks([]), now)).toBeNull();
    expect(await calendarFile(empty(), now)).toBeNull();
  });

  test('two rows of one plot and task are two events', async () => {
    const row = { Date: may16, Plot: 'A', Task: 'Sow' };
    const events = eventsOf(await fileOf(await withTasks([row, row])));
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(2);
  });
});

test('whatever a plot or a note is called, the file reads back as it stands in the sheet', async () => {
  const nasty = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.string({
      unit: fc.constantFrom(';', ',', '\\', '\n', '\r\n', ':', '"', 'é', '🎃', 'BEGIN:VEVENT', ' ', '\t'),
      maxLength: 80,
    }),
  );
  await fc.assert(
    fc.asyncProperty(nasty, nasty, async (plot, note) => {
      const rows = [{ Date: may16, Plot: `p${plot}p`, Task: 'Sow', 'My note': `n${note}n` }];
      const text = await fileOf(await withTasks(rows, { PLACE: `g${plot}g` }));
      expectLines(text);
      const events = eventsOf(text);
      expect(events).toHaveLength(1);
      // Ends of lines become one kind; what no such file may hold is left out.
      const kept = (given: string): string =>
        given
          .replaceAll(/\r\n|\r/g, '\n')
          .replaceAll(/(?![\t\n])\p{Cc}/gu, '')
          .replaceAll(/\p{Cs}/gu, '\uFFFD');
      expect(ownText(text, 'x-wr-calname')).toBe(`Calendar of ${kept(`g${plot}g`)}`);
      expect(events[0]?.summary).toBe(`${kept(`p${plot}p`)}: Sow`);
      expect(events[0]?.description).toBe(kept(`n${note}n`));
    }),
    { seed: 20261126, numRuns: 100 },
  );
});
