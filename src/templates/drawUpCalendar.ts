/** The rows of the Calendar and Weeks sheets, drawn up from what Plots and Crops say now. */
import { isCellError, type CellValue, type ReadValue, type WorkbookPort } from '../workbook/port';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { InputRow } from '../workbook/template';
import { crops } from '../reference/crops';
import { practice } from '../reference/practice';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { plotsTable } from './plots';
import { readFirstFrost, readIntervals } from './readForCalendar';

const words = catalogue.calendar;
const { weeks } = words;
const plotHeaders = catalogue.sheets.plots.columns;

/** The dates of a plot that its tasks are worked out from; serials, null where there is none. */
export interface PlotDates {
  readonly plot: string;
  readonly crop: string;
  readonly isTransplant: boolean;
  readonly startUnderCover: number | null;
  readonly inGround: number | null;
  readonly isThinned: boolean;
  readonly mayStayCovered: boolean;
  readonly coverOff: number | null;
  readonly firstPick: number | null;
  readonly lastPick: number | null;
  readonly lastSowing: number | null;
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

/** A plot that is not in the calendar, or not with all of its work. */
export interface LeftOut {
  readonly plot: string;
  /** What it has none of, in few words. */
  readonly lacks: string;
  readonly why: string;
  /** Nothing of it is dated. */
  readonly isWhole: boolean;
}

export interface DrawnUp {
  readonly plots: LinesRead;
  /** How many have a task. */
  readonly plotsDated: number;
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
  const firstFrost = await readFirstFrost(port);
  if (plots === null || intervals === null) return null;
  const read = plots.lines.filter(({ isBlank }) => !isBlank).map((line) => readPlot(line, intervals));
  const { tasks, refused } = calendarTasks(read.map(({ dates }) => dates));
  const advice = new Map(refused.map(({ index, advice: said }) => [index, said]));
  const dated = read.filter((_, index) => !advice.has(index)).map(({ dates }) => dates);
  const soil = new Map(plots.lines.map((line) => [textIn(line, 'plot'), soilOf(line, plots)]));
  return {
    plots,
    calendar: tasks.map((task) => rowOf(task, soil.get(task.plot) ?? '', firstFrost)),
    plotsDated: dated.filter((dates) => !hasNone(dates)).length,
    weeks: dated.flatMap(weekRowOf),
    leftOut: read.flatMap(({ dates: { plot }, leftOut }, index): LeftOut | [] => {
      const why = advice.get(index);
      return why === undefined ? (leftOut ?? []) : { plot, lacks: words.leftOut.unfit, why, isWhole: true };
    }),
  };
}

const hasNone = (dates: PlotDates): boolean => dateKeys.every((key) => dates[key] === null);

/** Done when frost has been. */
const afterGrowth: readonly Task['code'][] = ['cleanUp'];

type PlotKey = keyof typeof plotHeaders;

const valueIn = ({ values }: Line, key: PlotKey): ReadValue => values[plotHeaders[key].header] ?? null;
const textIn = (line: Line, key: PlotKey): string => {
  const value = valueIn(line, key);
  return isCellError(value) ? '' : String(value ?? '').trim();
};

/** Which column of Plots each is in: what others hang on comes first. */
const columnsOfDates = {
  inGround: 'setOutOrSow',
  startUnderCover: 'startTransplants',
  firstPick: 'firstPick',
  coverOff: 'coverOff',
  lastPick: 'lastPick',
  lastSowing: 'lastSowing',
} as const satisfies Partial<Record<keyof PlotDates, PlotKey>>;
const dateKeys = Object.keys(columnsOfDates) as (keyof typeof columnsOfDates)[];

interface PlotRead {
  readonly dates: PlotDates;
  readonly leftOut: LeftOut | null;
}

function readPlot(line: Line, intervals: ReadonlyMap<string, number>): PlotRead {
  const plot = textIn(line, 'plot');
  const crop = textIn(line, 'takenAs');
  const isKnown = crops.some(({ name }) => name === crop);
  const isTransplant = textIn(line, 'start').toLowerCase() === 'transplant';
  const mayStayCovered = textIn(line, 'coverOff') === catalogue.sheets.plots.mayStay;
  const dateIn = (key: keyof typeof columnsOfDates): number | null => {
    const value = isKnown ? valueIn(line, columnsOfDates[key]) : null;
    return typeof value === 'number' ? value : null;
  };
  const dates: PlotDates = {
    plot,
    crop,
    isTransplant,
    startUnderCover: isTransplant ? dateIn('startUnderCover') : null,
    inGround: dateIn('inGround'),
    // More is sown than is to stand unless both numbers say otherwise.
    isThinned: !(Number(valueIn(line, 'seedToSow')) <= Number(valueIn(line, 'plants'))),
    mayStayCovered,
    coverOff: mayStayCovered ? null : dateIn('coverOff'),
    firstPick: dateIn('firstPick'),
    lastPick: dateIn('lastPick'),
    lastSowing: dateIn('lastSowing'),
    everyDays: intervals.get(crop) ?? null,
  };
  if (!isKnown) {
    const { noCrop } = words.leftOut;
    return { dates, leftOut: { plot, lacks: noCrop, why: noCrop, isWhole: true } };
  }
  const wanting = dateKeys.filter(
    (key) =>
      dates[key] === null &&
      !(key === 'startUnderCover' && !isTransplant) &&
      !(key === 'coverOff' && mayStayCovered),
  );
  const [first] = wanting;
  if (first === undefined) return { dates, leftOut: null };
  const lacks = wanting.map((key) => plotHeaders[columnsOfDates[key]].header).join(', ');
  const why = sayWrong(line, columnsOfDates[first]);
  return { dates, leftOut: { plot, lacks, why, isWhole: hasNone(dates) } };
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

function rowOf(task: Task, soil: string, firstFrost: number): InputRow {
  const { columns } = words;
  const row: Record<string, CellValue> = {
    [columns.date.header]: task.day,
    [columns.plot.header]: task.plot,
    [columns.crop.header]: task.crop,
    [columns.task.header]: sayTask(task),
    [columns.until.header]: task.lastDay,
    [columns.remark.header]:
      task.day >= firstFrost && !afterGrowth.includes(task.code)
        ? words.remarks.afterFrost
        : sayRemark(task, soil),
  };
  return row;
}

function sayTask({ code, turn }: Task): string {
  const task = words.tasks[code];
  return turn === null ? task : fill(words.turn, { task, ...turn });
}

function sayRemark({ code, turn, lastDay, picks }: Task, soil: string): string {
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
      if (lastDay === null) return remarks.noLastPick;
      return picks === null
        ? remarks.ripe
        : fill(remarks.picks, { ...picks, aWeek: Number(picks.aWeek.toFixed(1)) });
    case 'harvestRipe':
      return remarks.ripe;
    default:
      return remarks[code];
  }
}

/** No bar without a day to begin it and one to end its growth. */
function weekRowOf({
  plot,
  crop,
  startUnderCover,
  inGround,
  firstPick,
  lastPick,
}: PlotDates): InputRow | readonly InputRow[] {
  if (inGround === null || firstPick === null) return [];
  const { columns } = weeks;
  return {
    [columns.plot.header]: plot,
    [columns.crop.header]: crop,
    [columns.underCover.header]: startUnderCover,
    [columns.inGround.header]: Math.floor(inGround),
    [columns.firstPick.header]: Math.floor(firstPick),
    [columns.lastPick.header]: lastPick === null ? null : Math.floor(lastPick),
  };
}
