/** The Calendar and Weeks sheets in every host: made from Plots, made anew, and what people put into them. */
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { calendarTasks } from '../../src/functions/calendarTasks';
import { demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { makeCalendar, readCalendarState, type CalendarMade } from '../../src/templates/makeCalendar';
import { plotsTemplate } from '../../src/templates/plots';
import { sayCalendar } from '../../src/templates/sayCalendar';
import { allTemplates } from '../../src/templates/sheets';
import { cellAddress } from '../../src/workbook/cellAddress';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellContent, CellValue, ReadValue, TableRead, WorkbookPort } from '../../src/workbook/port';
import { readFilling } from '../../src/workbook/readFilling';
import { dayOfSerial, isoOfDay } from '../../src/workbook/serialDate';
import type { InputRow } from '../../src/workbook/template';
import { change } from '../contract/contractWorkbook';
import { hosts, openFile as file } from '../contract/openHosts';

const settleMs = 60_000;

const few = demoPlots.filter(({ Plot }) =>
  ['Creek 1', 'Creek 2', 'North field', 'Tunnel'].includes(String(Plot)),
);

async function fill(
  port: WorkbookPort,
  plots: readonly InputRow[] = few,
  season: Readonly<Record<string, CellValue>> = demoSeason,
): Promise<void> {
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template === plotsTemplate ? plots : [],
    form: season,
  }));
  await fillSheets(port, requests, 'fill');
  expect(await port.settle(settleMs)).toEqual([]);
}

async function make(port: WorkbookPort): Promise<CalendarMade> {
  const made = await makeCalendar(port, calendarTasks, 'make');
  expect(await port.settle(settleMs)).toEqual([]);
  if (made === null) throw new Error('no sheets');
  return made;
}

function demand<Found>(found: Found | null | undefined): Found {
  if (found === null || found === undefined) throw new Error('not there');
  return found;
}

const isoOf = (serial: number | undefined): string => isoOfDay(demand(dayOfSerial(demand(serial))));

const tableOf = async (port: WorkbookPort, name: string): Promise<TableRead> =>
  demand(await port.readTable(name));

/** The rows of a table without blank ones; dates as texts, blanks as "". */
async function rowsOf(port: WorkbookPort, name: string): Promise<readonly string[]> {
  const table = await port.readTable(name);
  const said = (value: ReadValue): string => {
    const day = typeof value === 'number' ? dayOfSerial(value) : null;
    return day === null ? String(value ?? '') : isoOfDay(day);
  };
  return (table?.rows ?? []).map((row) => row.map(said).join('|')).filter((row) => /[^|]/.test(row));
}

async function reportOf(port: WorkbookPort, name: string): Promise<ReadValue> {
  return demand((await port.read(demand(await port.locate(name)))).values[0]?.[0]);
}

/** Types into the row of a table that has these texts. */
async function type(
  port: WorkbookPort,
  name: string,
  of: readonly string[],
  header: string,
  content: CellContent,
) {
  const table = await port.readTable(name);
  if (table === null) throw new Error(`no ${name}`);
  const index = table.rows.findIndex((row) => of.every((text) => row.includes(text)));
  const place = {
    sheet: table.area.sheet,
    row: table.area.row + 1 + index,
    column: table.area.column + table.headers.indexOf(header),
  };
  await port.apply(change({ cells: [{ ...place, contents: [[content]] }] }));
  expect(await port.settle(settleMs)).toEqual([]);
}

describe.each(hosts)('in the %s host', (_, openHost) => {
  test(
    'is made, says so, is made anew after a change of Plots, and carries along what people typed',
    async () => {
      const port = openHost();
      await fill(port);
      expect(await readCalendarState(port, calendarTasks)).toMatchObject({ isMade: false, isCurrent: false });
      const made = await make(port);
      expect(made).toMatchObject({ plots: few.length, leftOut: [], kept: [] });
      expect(await readCalendarState(port, calendarTasks)).toMatchObject({ isMade: true, isCurrent: true });

      // Last frost 2 May 2027, a mean date. Creek 1: set out 14 days later (common practice), sown 3 weeks before
      // (Delaware: 2 to 4), hardened a week. 60 days from seed less 10 of the transplants to 5 July, 18 days picked.
      const rows = await rowsOf(port, 'Calendar');
      expect(rows).toHaveLength(made.tasks);
      const creek = rows
        .filter((row) => row.split('|')[2] === 'Creek 1')
        .map((row) => row.split('|').slice(0, 6).join('|'));
      expect(creek.slice(0, 5)).toEqual([
        '2027-04-25|2027-04-19|Creek 1|slicing cucumber|Start transplants|',
        '2027-05-09|2027-05-03|Creek 1|slicing cucumber|Harden off|2027-05-15',
        '2027-05-16|2027-05-10|Creek 1|slicing cucumber|Set out|',
        '2027-05-16|2027-05-10|Creek 1|slicing cucumber|Row cover on|',
        '2027-05-16|2027-05-10|Creek 1|slicing cucumber|Look for beetles, 1 of 4|',
      ]);
      expect(creek).toContain('2027-07-05|2027-07-05|Creek 1|slicing cucumber|First pick|2027-07-23');
      expect(creek).toContain('2027-07-23|2027-07-19|Creek 1|slicing cucumber|Last pick|');

      await type(port, 'Calendar', ['Creek 1', 'Set out'], 'My note', 'with Pia');
      await type(port, 'Calendar', ['Creek 1', 'Set out'], 'Done', 'yes');
      await type(port, 'Calendar', ['Creek 2', 'Thin'], 'My note', 'scissors');
      // Another day for Creek 1, another name for Creek 2.
      await type(port, 'Plots', ['Creek 1'], 'Sow or set out on', 46540);
      await type(port, 'Plots', ['Creek 2'], 'Plot', 'Brook');
      expect(await readCalendarState(port, calendarTasks)).toMatchObject({ isMade: true, isCurrent: false });
      const again = await make(port);
      expect(again.kept).toEqual([{ plot: 'Creek 2', task: 'Thin' }]);
      const now = await rowsOf(port, 'Calendar');
      expect(now).toHaveLength(again.tasks + 1);
      expect(now.filter((row) => row.includes('with Pia'))).toEqual([
        expect.stringMatching(
          /^2027-06-02\|2027-05-31\|Creek 1\|slicing cucumber\|Set out\|\|.*\|yes\|with Pia$/,
        ),
      ]);
      expect(now.filter((row) => row.includes('scissors'))).toEqual([
        expect.stringMatching(/^2027-05-.*Creek 2\|.*Thin\|/),
      ]);
      const dates = now.map((row) => row.slice(0, 10));
      expect(dates).toEqual([...dates].sort());
      expect(await readCalendarState(port, calendarTasks)).toMatchObject({ isMade: true, isCurrent: true });
    },
    4 * settleMs,
  );
});

/**
 * By hand on a calendar of 2027, from frosts on 2 May and 10 October and the figures of the Crops sheet. Set out 14 days
 * after the last frost, sown 7 days after it, started 3 weeks before, hardened a week. Cucumbers pick 60 and 53 days
 * from seed, 10 less set out (the tunnel 62, typed), for 18 days (typed: 60), and flower 9 days before; pumpkins 115,
 * once, and 53. Last sowing: before 10 October the days to maturity, the harvest, 14 of fall and 14 of margin (of
 * pumpkins no margin). The days of thinning, scouting, side-dressing and clearing: reference/tasks with their grounds.
 */
const workOf: Readonly<Record<string, string>> = {
  'Creek 1': `
    04-25 Start transplants, 05-09 to 05-15 Harden off, 05-16 Set out, 05-16 Row cover on,
    05-16 Look for beetles 1, 05-23 Look for beetles 2, 05-30 Look for beetles 3, 06-06 Look for beetles 4,
    06-06 Side-dress, 06-26 Row cover off, 06-26 Last day to sow,
    07-05 to 07-23 First pick, 07-23 Last pick, 07-24 to 08-06 Clear the plot`,
  'Creek 2': `
    05-09 Sow, 05-09 Row cover on, 05-16 Look for beetles 1, 05-23 to 05-30 Thin, 05-23 Look for beetles 2,
    05-30 Look for beetles 3, 05-30 Side-dress, 06-06 Look for beetles 4, 06-22 Row cover off,
    07-01 to 07-19 First pick, 07-03 Last day to sow, 07-19 Last pick, 07-20 to 08-02 Clear the plot`,
  Tunnel: `
    04-25 Start transplants, 05-09 to 05-15 Harden off, 05-13 Last day to sow, 05-16 Set out,
    05-16 Row cover on to stay, 05-16 Look for beetles 1, 05-23 Look for beetles 2, 05-30 Look for beetles 3,
    06-06 Look for beetles 4, 06-06 Side-dress,
    07-07 to 09-05 First pick, 09-05 Last pick, 09-06 to 09-19 Clear the plot`,
  'South field': `
    05-09 Sow, 05-09 Row cover on, 05-16 Look for beetles 1, 05-23 to 05-30 Thin, 05-23 Look for beetles 2,
    05-30 Look for beetles 3, 05-30 Side-dress 1, 06-03 Last day to sow, 06-06 Look for beetles 4,
    06-20 Side-dress 2, 07-10 Row cover off, 09-01 Harvest when ripe, 09-02 to 09-15 Clear the plot`,
};

test('every task of a plot of each way to start and to be covered and picked is dated, in the demo garden', async () => {
  const port = file();
  await fill(port, demoPlots);
  await make(port);
  const rows = (await rowsOf(port, 'Calendar')).map((row) => row.split('|'));
  for (const [plot, work] of Object.entries(workOf)) {
    const said = rows.flatMap(([date = '', , of, , task = '', until = '']) =>
      of === plot
        ? [
            `${date.slice(5)} ${until === '' ? '' : `to ${until.slice(5)} `}${task.replace(/ of \d$/, '').replace(',', '')}`,
          ]
        : [],
    );
    expect(said.join(', '), plot).toBe(work.trim().replaceAll(/\s+/g, ' '));
  }
  // From 5 to 23 July every third day, counted: 5, 8, 11, 14, 17, 20, 23.
  const picking = rows.find(([, , plot, , task]) => plot === 'Creek 1' && task === 'First pick');
  expect(picking?.[6]).toBe('Every 3 days: 2.3 picks a week, 7 in all.');
});

test(
  'the hosts agree on every row of both sheets, also with plots that go wrong',
  async () => {
    const plots: InputRow[] = [
      ...demoPlots,
      { Plot: 'no crop', Length: 50, Width: 20 },
      { Plot: 'unknown', Crop: 'no such crop', Length: 50, Width: 20 },
      { Plot: 'late', Crop: 'winter squash', Length: 80, Width: 40, 'Days to maturity': 300 },
      { Plot: 'hills', Crop: 'zucchini', Layout: 'hills', Length: 50, Width: 20, 'Field emergence': 2 },
      { Plot: '=2+2', Crop: 'zucchini', Length: 50, Width: 20, Germination: 0.9 },
      { Crop: 'zucchini', Length: 50, Width: 20 },
      { Crop: 'no such crop', Length: 50, Width: 20 },
      { Plot: 'next year', Crop: 'zucchini', Length: 50, Width: 20, 'Sow or set out on': 46900 },
      {},
    ];
    const seen: {
      made: object;
      leftOut: unknown;
      reports: unknown;
      calendar: readonly string[];
      weeks: readonly string[];
      above: unknown;
    }[] = [];
    for (const [, openHost] of hosts) {
      const port = openHost();
      await fill(port, plots);
      const { leftOut, ...made } = await make(port);
      const { area } = await tableOf(port, 'Weeks');
      const above = await port.read({ ...area, row: area.row - 2, rows: 2 });
      seen.push({
        made,
        leftOut: leftOut.map(({ plot, lacks, isWhole }) => [plot, lacks, isWhole]),
        reports: await Promise.all(['CALENDAR_WITHOUT', 'WEEKS_WITHOUT'].map((name) => reportOf(port, name))),
        calendar: await rowsOf(port, 'Calendar'),
        weeks: await rowsOf(port, 'Weeks'),
        above: above.values.map((row) => row.map((value) => value ?? '')),
      });
    }
    expect(seen[0]?.leftOut).toEqual([
      ['no crop', 'no known crop', true],
      ['unknown', 'no known crop', true],
      ['late', 'Row cover off, First pick', false],
      ['line 19', 'no known crop', true],
      ['next year', 'planted on or after the first frost', true],
    ]);
    const line =
      'Not in it, or not wholly: no crop (no known crop); unknown (no known crop); late (after the first frost: Row cover off, First pick); line 19 (no known crop); next year (planted on or after the first frost).';
    expect(seen[0]?.reports).toEqual([line, line]);
    const tasksOf = (plot: string): readonly string[] =>
      (seen[0]?.calendar ?? []).filter((row) => row.split('|')[2] === plot);
    // Its seed is refused, its dates are not: sown a week after the frost of 2 May, thinned two weeks later.
    expect(tasksOf('hills').join('\n')).toMatch(/^2027-05-23\|.*\|Thin\|2027-05-30\|/m);
    // 300 days from 9 May, to March; frost is on 10 October and kills the vines.
    expect(tasksOf('late').at(-1)).toMatch(/^2027-10-11\|.*\|Clear the plot\|2027-10-24\|/);
    expect(tasksOf('late').join()).not.toContain('|First pick|');
    expect(tasksOf('late').join()).toContain('|Last day to sow|');
    const bar = (seen[0]?.weeks ?? []).find((row) => row.startsWith('late|'));
    // In the ground from Sunday 9 May; the week from 4 October is the last that has a day before the frost: counted.
    expect(bar).toMatch(/^late\|winter squash\|\|2027-05-09\|\|\|(\|)*(G\|){23}\|*$/);
    expect(tasksOf('next year')).toEqual([]);
    expect(tasksOf('summer squash, line 18')[0]).toMatch(/\|Sow\|/);
    expect(seen[0]?.weeks.filter((row) => /^(summer squash, line 18|next year)\|/.test(row))).toHaveLength(1);
    expect(seen[0]?.calendar.join('\n')).toContain('|=2+2|summer squash|Sow|');
    expect(seen[1]).toEqual(seen[0]);
    expect(seen[2]).toEqual(seen[0]);
  },
  8 * settleMs,
);

describe('a plot that frost takes', () => {
  const { FIRST_FROST } = demoSeason;
  const frost = Number(FIRST_FROST);
  // Twenty days before frost: none of its fruit is picked in time (50 days or so from sowing, Crops).
  const late = { Plot: 'late', Crop: 'zucchini', Length: 50, Width: 20, 'Sow or set out on': frost - 20 };
  const inTime = { Plot: 'in time', Crop: 'zucchini', Length: 50, Width: 20 };

  async function tasksOf(port: WorkbookPort, plot: string) {
    const { headers, rows } = await tableOf(port, 'Calendar');
    const at = (header: string): number => headers.indexOf(header);
    return rows
      .filter((row) => row[at('Plot')] === plot)
      .map((row) => ({
        day: Number(row[at('Date')]),
        task: String(row[at('Task')]),
        remark: String(row[at('Remark')]),
      }));
  }

  test('has no work after it but clearing up, and what it loses is said', async () => {
    const port = file();
    await fill(port, [late, inTime]);
    const made = await make(port);
    expect(made).toMatchObject({ plots: 2, kept: [] });
    // Three weeks after sowing it is side-dressed, and looked at for beetles twice more: reference/tasks.
    const lacks = 'Look for beetles, Side-dress, Row cover off, First pick';
    expect(await reportOf(port, 'CALENDAR_WITHOUT')).toBe(
      `Not in it, or not wholly: late (after the first frost: ${lacks}).`,
    );
    expect(sayCalendar(made)).toContain(
      `Not with all of its work: late, without ${lacks}: The first frost comes first.`,
    );
    const tasks = await tasksOf(port, 'late');
    expect(tasks.at(-1)).toMatchObject({ task: 'Clear the plot', day: frost + 1 });
    for (const { day, task } of tasks) if (task !== 'Clear the plot') expect(day).toBeLessThan(frost);
    expect((await tasksOf(port, 'in time')).map(({ task }) => task)).toContain('Last pick');
    expect((await rowsOf(port, 'Weeks'))[0]).toMatch(
      /^late\|summer squash\|\|2027-09-20\|\|\|(\|)*(G\|){3}\|*$/,
    );
  });

  test('more plots than a line of the sheet has room for are counted', async () => {
    const port = file();
    const plots = Array.from({ length: 6 }, (_, i) => ({ ...late, Plot: `late number ${i + 1}` }));
    await fill(port, [...plots, inTime]);
    await make(port);
    const line = String(await reportOf(port, 'WEEKS_WITHOUT'));
    expect(line).toMatch(/: late number 1 \(.*\); late number 2 \(.*\); and 4 more\.$/);
    // What is as wide in print as the 40 weeks and the columns before them: measured in LibreOffice 7.4.
    expect(line.length).toBeLessThan(255);
  });

  test('what people noted at work that does not come stays', async () => {
    const port = file();
    await fill(port, [{ ...late, 'Sow or set out on': null }]);
    await make(port);
    await type(port, 'Calendar', ['late', 'Side-dress'], 'My note', 'compost');
    await type(port, 'Plots', ['late'], 'Sow or set out on', frost - 20);
    expect((await make(port)).kept).toEqual([{ plot: 'late', task: 'Side-dress' }]);
  });

  test('a last pick typed in for the frost or later keeps all of its work, with a remark', async () => {
    const port = file();
    await fill(port, [late]);
    await type(port, 'Plots', ['late'], 'Last pick', frost + 80);
    expect(await make(port)).toMatchObject({ leftOut: [] });
    const tasks = await tasksOf(port, 'late');
    expect(tasks.map(({ task }) => task)).toContain('First pick');
    for (const { day, task, remark } of tasks) {
      const isDoubted = day >= frost && task !== 'Clear the plot';
      expect(remark.startsWith('On or after the first frost')).toBe(isDoubted);
    }
    expect((await rowsOf(port, 'Weeks'))[0]).toContain('|P|');
  });

  test('frosts that are no season take no plot', async () => {
    const port = file();
    // Of the year before.
    await fill(port, [inTime], { ...demoSeason, FIRST_FROST: frost - 365 });
    const made = await make(port);
    expect(made.leftOut).toEqual([expect.objectContaining({ plot: 'in time', kind: 'dates' })]);
    expect((await tasksOf(port, 'in time')).map(({ task }) => task)).toContain('Sow');
    // Sown on a date that is known; when it ends nobody knows.
    expect((await rowsOf(port, 'Weeks'))[0]).toMatch(/^in time\|/);
  });

  test('without a first pick it has its bar until the frost, and is cleared after it', async () => {
    const port = file();
    await fill(port, [{ ...inTime, 'Days to maturity': -5 }]);
    const made = await make(port);
    expect(made.leftOut).toMatchObject([{ lacks: expect.stringContaining('First pick') as string }]);
    const [bar = ''] = await rowsOf(port, 'Weeks');
    // From Sunday 9 May to the week from 4 October, in which the frost of the 10th is: counted.
    expect(bar).toMatch(/^in time\|summer squash\|\|2027-05-09\|\|\|(G\|){23}\|*$/);
    expect((await tasksOf(port, 'in time')).at(-1)).toMatchObject({ task: 'Clear the plot', day: frost + 1 });
  });
});

describe('the bars', () => {
  /** The letters of a plot, the columns' Mondays, and the months above them. */
  async function bars(port: WorkbookPort, plot: string) {
    const table = await tableOf(port, 'Weeks');
    const first = table.headers.indexOf('1');
    const above = await port.read({ ...table.area, row: table.area.row - 2, rows: 2 });
    const cut = (row: readonly ReadValue[]) => row.slice(first);
    const row = demand(table.rows.find(([name]) => name === plot));
    const mondays = cut(above.values[1] ?? []) as number[];
    return { letters: cut(row), mondays, months: cut(above.values[0] ?? []), table, row };
  }

  test('each week has the letter of the latest of what its seven days touch (looked at day by day)', async () => {
    const port = file();
    await fill(port, demoPlots);
    await make(port);
    for (const { Plot } of demoPlots) {
      const { letters, mondays, table, row } = await bars(port, String(Plot));
      const at = (header: string) => row[table.headers.indexOf(header)];
      const [covered, ground, first, last] = ['Under cover', 'In the ground', 'First pick', 'Last pick'].map(
        at,
      );
      const letterOn = (day: number): string => {
        if (day >= Number(first) && day <= Number(last)) return 'P';
        if (day >= Number(ground) && day < Number(first)) return 'G';
        return typeof covered === 'number' && day >= covered && day < Number(ground) ? 'U' : '';
      };
      const latest = mondays.map((monday) => {
        const week = Array.from({ length: 7 }, (__, i) => letterOn(monday + i));
        return ['P', 'G', 'U'].find((letter) => week.includes(letter)) ?? '';
      });
      expect(letters, String(Plot)).toEqual(latest);
    }
  });

  test('weeks begin on Mondays, the first with the earliest plot; months stand where they begin', async () => {
    const port = file();
    await fill(port);
    await make(port);
    const { mondays, months } = await bars(port, 'Creek 1');
    // 24 April 2027, on which Tunnel is sown under cover, or the day after, Creek 1, fall in the week from the 19th.
    expect(isoOf(mondays[0])).toBe('2027-04-19');
    for (const [i, monday] of mondays.entries()) {
      const date = new Date(`${isoOf(monday)}T00:00:00Z`);
      expect(date.getUTCDay()).toBe(1);
      const month = new Intl.DateTimeFormat('en-US', { month: 'short', timeZone: 'UTC' }).format(date);
      const before = new Date(date.getTime() - 7 * 86_400_000);
      expect(months[i]).toBe(i > 0 && before.getUTCMonth() === date.getUTCMonth() ? '' : month);
    }
  });

  test('without plots there is no date, no letter and no error', async () => {
    const port = file();
    await fill(port, []);
    expect(await make(port)).toEqual({ tasks: 0, plots: 0, leftOut: [], kept: [] });
    const { used } = demand((await port.sheets()).find(({ name }) => name === 'Weeks'));
    const { values } = await port.read(demand(used));
    expect(values.flat().filter((value) => typeof value === 'object' && value !== null)).toEqual([]);
    expect(
      values
        .slice(4)
        .flat()
        .filter((value) => typeof value === 'number'),
    ).toEqual([]);
  });
});

describe('what people put in', () => {
  test('a row of their own stays, sorted by its date; a row without a date comes last', async () => {
    const port = file();
    await fill(port);
    await make(port);
    const rows = await tableOf(port, 'Calendar');
    const own = [
      [46500, null, 'Kitchen', null, 'Order bees', null, null, null, null],
      [null, null, null, null, 'Mend the pump', null, null, null, null],
    ];
    await port.apply(change({ tableRows: [{ table: 'Calendar', rows: own }] }));
    const made = await make(port);
    expect(made.kept).toEqual([
      { plot: 'Kitchen', task: 'Order bees' },
      { plot: '', task: 'Mend the pump' },
    ]);
    const now = await rowsOf(port, 'Calendar');
    expect(now).toHaveLength(rows.rows.length + 2);
    expect(now[0]).toContain('Order bees');
    expect(now.at(-1)).toContain('Mend the pump');
    expect(sayCalendar(made).join(' ')).toContain('Kitchen, Order bees; , Mend the pump');
  });

  test('a plot that goes leaves no row but those with a note, and its bar goes', async () => {
    const port = file();
    await fill(port);
    await make(port);
    await type(port, 'Calendar', ['Tunnel', 'Set out'], 'Done', 'yes');
    await type(port, 'Plots', ['Tunnel'], 'Crop', null);
    const made = await make(port);
    expect(made.leftOut.map(({ plot }) => plot)).toEqual(['Tunnel']);
    expect(made.kept).toEqual([{ plot: 'Tunnel', task: 'Set out' }]);
    expect(await reportOf(port, 'CALENDAR_WITHOUT')).toContain('Tunnel (no known crop)');
    await type(port, 'Plots', ['Tunnel'], 'Crop', 'English cucumber');
    expect(await readCalendarState(port, calendarTasks)).toMatchObject({ isCurrent: false, leftOut: [] });
    await make(port);
    expect(await reportOf(port, 'WEEKS_WITHOUT')).toBe(
      'When it was made every plot was in it, with all of its work.',
    );
    await type(port, 'Plots', ['Tunnel'], 'Crop', null);
    await make(port);
    expect((await rowsOf(port, 'Calendar')).filter((row) => row.includes('Tunnel'))).toHaveLength(1);
    expect((await rowsOf(port, 'Weeks')).some((row) => row.includes('Tunnel'))).toBe(false);
  });

  test('has a filter button on each header of the .xlsx, down to its last row', async () => {
    const port = file();
    await fill(port);
    await make(port);
    const tables = Object.entries(unzipSync(await port.bytes()))
      .filter(([name]) => name.startsWith('xl/tables/'))
      .map(([, part]) => strFromU8(part));
    const table = demand(tables.find((part) => part.includes('displayName="Calendar"')));
    const [, autoFilter, filtered = ''] = demand(
      /<autoFilter ref="([^"]*)"(?:\/>|>(.*?)<\/autoFilter>)/s.exec(table),
    );
    expect(autoFilter).toBe(/<table [^>]*\bref="([^"]*)"/.exec(table)?.[1]);
    const { row, column, rows, columns } = (await tableOf(port, 'Calendar')).area;
    const last = cellAddress(row + rows - 1, column + columns - 1);
    expect(autoFilter).toBe(`${cellAddress(row, column)}:${last}`);
    // Of ECMA-376 part 1, filterColumn, from memory: a button is there unless hiddenButton is true.
    expect(filtered).not.toMatch(/hiddenButton="(1|true)"/);
  });

  test('two plots of one name keep the notes of each, in the order of their dates', async () => {
    const port = file();
    await fill(port, [
      { ...few[0], Plot: 'twice' },
      { ...few[0], Plot: 'twice', 'Sow or set out on': 46540 },
    ]);
    await make(port);
    const notes = async () =>
      (await rowsOf(port, 'Calendar')).flatMap((row) =>
        /Set out/.test(row) ? [row.slice(0, 10) + row.slice(-2)] : [],
      );
    await type(port, 'Calendar', ['twice', 'Set out'], 'My note', 'a');
    expect(await notes()).toEqual(['2027-05-16|a', '2027-06-02||']);
    await type(port, 'Plots', ['twice'], 'Sow or set out on', 46530);
    expect((await make(port)).kept).toEqual([]);
    expect(await notes()).toEqual(['2027-05-23|a', '2027-06-02||']);
  });

  test('goes into another workbook with the plan, and is known again there', async () => {
    const port = file();
    await fill(port, demoPlots);
    await make(port);
    await type(port, 'Calendar', ['Slope', 'Sow'].slice(0, 1), 'My note', '=7');
    const before = [await rowsOf(port, 'Calendar'), await rowsOf(port, 'Weeks')];
    const read = await readFilling({ ...port, daysToAdd: 0 }, allTemplates, file);
    expect(read?.requests.flatMap(({ problems }) => problems)).toEqual([]);
    const other = file();
    await fillSheets(other, demand(read).requests, 'open');
    expect([await rowsOf(other, 'Calendar'), await rowsOf(other, 'Weeks')]).toEqual(before);
    expect(await readCalendarState(other, calendarTasks)).toMatchObject({ isMade: true, isCurrent: true });
  });

  test('typed into Plots while the calendar is made: nothing is written', async () => {
    const port = file();
    await fill(port);
    const before = await port.stamp('Calendar');
    const busy: WorkbookPort = {
      ...port,
      async apply(asked, progress) {
        await type(port, 'Plots', ['Creek 1'], 'Price', 2);
        return port.apply(asked, progress);
      },
    };
    await expect(makeCalendar(busy, calendarTasks, 'make')).rejects.toMatchObject({
      problem: { code: 'changedMeanwhile', sheet: 'Plots' },
    });
    expect(await port.stamp('Calendar')).toBe(before);
  });
});

test('south of the equator the calendar runs across New Year', async () => {
  const port = file();
  // Last frost 5 October 2026, first frost 10 April 2027.
  await fill(port, few, { ...demoSeason, SEASON_YEAR: 2026, LAST_FROST: 46300, FIRST_FROST: 46487 });
  await make(port);
  const rows = await rowsOf(port, 'Calendar');
  expect(rows[0]).toMatch(/^2026-09-2/);
  expect(rows.some((row) => row.startsWith('2027-01-'))).toBe(true);
  const table = await tableOf(port, 'Weeks');
  const { values } = await port.read({ ...table.area, row: table.area.row - 2, rows: 1 });
  expect(values[0]?.filter((value) => typeof value === 'string' && value !== '').slice(0, 6)).toEqual([
    'Sep',
    'Oct',
    'Nov',
    'Dec',
    'Jan',
    'Feb',
  ]);
});
