/** The rows of the Calendar and Weeks sheets, drawn up from what Plots and Crops say now. */
import { isCellError, type CellValue, type ReadValue, type WorkbookPort } from '../workbook/port';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { InputRow } from '../workbook/template';
import { crops } from '../reference/crops';
import { practice } from '../reference/practice';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { plotsTable } from './plots';

const words = catalogue.calendar;
const { weeks } = words;
const plotHeaders = catalogue.sheets.plots.columns;

/** The dates of a plot that its tasks are worked out from; serials. null: none, as in a plot that is sown. */
export interface PlotDates {
  readonly plot: string;
  readonly crop: string;
  readonly startUnderCover: number | null;
  readonly inGround: number;
  readonly isThinned: boolean;
  readonly coverOff: number | null;
  readonly firstPick: number;
  readonly lastPick: number;
  readonly lastSowing: number;
  readonly everyDays: number | null;
}

export interface Task {
  readonly plot: string;
  readonly crop: string;
  readonly code: keyof typeof words.tasks;
  readonly turn: { readonly nth: number; readonly of: number } | null;
  readonly day: number;
  readonly lastDay: number | null;
  readonly picks: { readonly everyDays: number; readonly aWeek: number; readonly inAll: number } | null;
}

/** Handed in by an entry. */
export type CalendarTasks = (plots: readonly PlotDates[]) => {
  /** As they come, and of one day by plot. */
  readonly tasks: readonly Task[];
  readonly refused: readonly { readonly index: number; readonly advice: string }[];
};

export interface LeftOut {
  readonly plot: string;
  readonly why: string;
}

export interface DrawnUp {
  readonly plots: LinesRead;
  readonly calendar: readonly InputRow[];
  readonly weeks: readonly InputRow[];
  readonly leftOut: readonly LeftOut[];
}

/** null where the workbook has no Plots or no Crops. @throws HostError */
export async function drawUpCalendar(
  port: WorkbookPort,
  calendarTasks: CalendarTasks,
): Promise<DrawnUp | null> {
  const plots = await readLines(port, plotsTable);
  const intervals = await readIntervals(port);
  if (plots === null || intervals === null) return null;
  const read = plots.lines.filter(({ isBlank }) => !isBlank).map((line) => datesOf(line, intervals));
  const dated = read.filter((one): one is PlotDates => !('why' in one));
  const { tasks, refused } = calendarTasks(dated);
  const isRefused = new Set(refused.map(({ index }) => index));
  const soil = new Map(plots.lines.map((line) => [textIn(line, 'plot'), soilOf(line, plots)]));
  return {
    plots,
    calendar: tasks.map((task) => rowOf(task, soil.get(task.plot) ?? '')),
    weeks: dated.filter((_, index) => !isRefused.has(index)).map(weekRowOf),
    leftOut: [
      ...read.filter((one): one is LeftOut => 'why' in one),
      ...refused.map(({ index, advice }) => ({ plot: dated[index]?.plot ?? '', why: advice })),
    ],
  };
}

/** Days from pick to pick by crop, as the Crops sheet has them. */
async function readIntervals(port: WorkbookPort): Promise<ReadonlyMap<string, number> | null> {
  const table = await port.readTable('Crops');
  if (table === null) return null;
  const at = table.headers.indexOf(catalogue.sheets.crops.traits['picking interval']);
  return new Map(
    table.rows.flatMap((row): [string, number][] => {
      const value = row[at];
      return typeof value === 'number' ? [[String(row[0]), value]] : [];
    }),
  );
}

type PlotKey = keyof typeof plotHeaders;

const valueIn = ({ values }: Line, key: PlotKey): ReadValue => values[plotHeaders[key].header] ?? null;
const textIn = (line: Line, key: PlotKey): string => {
  const value = valueIn(line, key);
  return isCellError(value) ? '' : String(value ?? '').trim();
};

function datesOf(line: Line, intervals: ReadonlyMap<string, number>): PlotDates | LeftOut {
  const plot = textIn(line, 'plot');
  const crop = textIn(line, 'takenAs');
  if (!crops.some(({ name }) => name === crop)) return { plot, why: words.leftOut.noCrop };
  const isTransplant = textIn(line, 'start').toLowerCase() === 'transplant';
  const mayStay = textIn(line, 'coverOff') === catalogue.sheets.plots.mayStay;
  const dateKeys = [
    ...(isTransplant ? (['startTransplants'] as const) : []),
    'setOutOrSow',
    'firstPick',
    ...(mayStay ? [] : (['coverOff'] as const)),
    'lastPick',
    'lastSowing',
  ] as const;
  const wrong = dateKeys.find((key) => typeof valueIn(line, key) !== 'number');
  if (wrong !== undefined) return { plot, why: sayWrong(line, wrong) };
  const dateIn = (key: PlotKey): number => Number(valueIn(line, key));
  return {
    plot,
    crop,
    startUnderCover: isTransplant ? dateIn('startTransplants') : null,
    inGround: dateIn('setOutOrSow'),
    isThinned: Number(valueIn(line, 'seedToSow')) > Number(valueIn(line, 'plants')),
    coverOff: mayStay ? null : dateIn('coverOff'),
    firstPick: dateIn('firstPick'),
    lastPick: dateIn('lastPick'),
    lastSowing: dateIn('lastSowing'),
    everyDays: intervals.get(crop) ?? null,
  };
}

function sayWrong(line: Line, key: PlotKey): string {
  const value = valueIn(line, key);
  const said = isCellError(value) ? value.message : null;
  return said ?? fill(words.leftOut.noDates, { header: plotHeaders[key].header });
}

/** With its unit, as it stands above the column. */
function soilOf(line: Line, { units }: LinesRead): string {
  const value = valueIn(line, 'soilAtLeast');
  const { header } = plotHeaders.soilAtLeast;
  return typeof value === 'number' ? `${Math.round(value)} ${units[header] ?? ''}`.trim() : '';
}

function rowOf(task: Task, soil: string): InputRow {
  const { columns } = words;
  const row: Record<string, CellValue> = {
    [columns.date.header]: task.day,
    [columns.plot.header]: task.plot,
    [columns.crop.header]: task.crop,
    [columns.task.header]: sayTask(task),
    [columns.until.header]: task.lastDay,
    [columns.remark.header]: sayRemark(task, soil),
  };
  return row;
}

function sayTask({ code, turn }: Task): string {
  const task = words.tasks[code];
  return turn === null ? task : fill(words.turn, { task, ...turn });
}

function sayRemark({ code, turn, picks }: Task, soil: string): string {
  const { remarks } = words;
  switch (code) {
    case 'setOut':
    case 'sow':
      return soil === '' ? remarks.plant : fill(remarks.plantWarm, { soil });
    case 'scout':
      return fill(remarks.scout, { plants: practice.plantsScouted.value });
    case 'sideDress':
      return turn === null ? remarks.sideDress : remarks.sideDressTwice;
    case 'firstPick':
      return picks === null
        ? remarks.ripe
        : fill(remarks.picks, { ...picks, aWeek: Number(picks.aWeek.toFixed(1)) });
    case 'harvestRipe':
      return remarks.ripe;
    default:
      return remarks[code];
  }
}

function weekRowOf({ plot, crop, startUnderCover, inGround, firstPick, lastPick }: PlotDates): InputRow {
  const { columns } = weeks;
  return {
    [columns.plot.header]: plot,
    [columns.crop.header]: crop,
    [columns.underCover.header]: startUnderCover,
    [columns.inGround.header]: Math.floor(inGround),
    [columns.firstPick.header]: Math.floor(firstPick),
    [columns.lastPick.header]: Math.floor(lastPick),
  };
}
