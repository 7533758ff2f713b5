/** The rows of the Calendar and Weeks sheets, drawn up from what Plots and Crops say now. */
import type { CellValue, WorkbookPort } from '../workbook/port';
import { readLines, type LinesRead } from '../workbook/readLines';
import type { InputRow } from '../workbook/template';
import { practice } from '../reference/practice';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { plotsTable } from './plots';
import { readFirstFrost, readIntervals } from './readForCalendar';
import { wordOfCrop } from './sayCrop';
import { hasNone, isTaken, readPlot, type LeftOut, type PlotDates } from './readPlotDates';

const words = catalogue.calendar;
const { weeks } = words;

export interface Task {
  readonly plot: string;
  readonly crop: string;
  readonly code: keyof typeof words.tasks;
  readonly turn: { readonly nth: number; readonly of: number } | null;
  readonly day: number;
  readonly lastDay: number | null;
  readonly picks: { readonly everyDays: number; readonly aWeek: number; readonly inAll: number } | null;
}

/** Work of a plot that the first frost comes before. */
interface Lost {
  readonly codes: readonly Task['code'][];
  /** Nothing else of it is left. */
  readonly isWhole: boolean;
}

/** Handed in by an entry. */
export type CalendarTasks = (plots: readonly PlotDates[]) => {
  /** As they come, and of one day by plot. */
  readonly tasks: readonly Task[];
  readonly lost: readonly (Lost & { readonly index: number })[];
  readonly refused: readonly { readonly index: number; readonly advice: string }[];
};

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
  const read = plots.lines
    .map((line, index) => ({ line, number: index + 1 }))
    .filter(({ line }) => !line.isBlank)
    .map(({ line, number }) => readPlot(line, number, { units: plots.units, intervals, firstFrost }));
  const { tasks, lost, refused } = calendarTasks(read.map(({ dates }) => dates));
  const advice = new Map(refused.map(({ index, advice: said }) => [index, said]));
  const frozen = new Map(lost.map((work) => [work.index, work]));
  const dated = read.filter((_, index) => !advice.has(index) && frozen.get(index)?.isWhole !== true);
  const soil = new Map(read.map(({ dates: { plot }, soil: least }) => [plot, least]));
  return {
    plots,
    calendar: tasks.map((task) => rowOf(task, soil.get(task.plot) ?? '', firstFrost)),
    plotsDated: dated.filter(({ dates }) => !hasNone(dates)).length,
    weeks: dated.flatMap(({ dates }) => weekRowOf(dates)),
    leftOut: read.flatMap(({ dates: { plot }, leftOut }, index): readonly LeftOut[] => {
      const why = advice.get(index);
      if (why !== undefined) return [{ plot, kind: 'plot', lacks: words.leftOut.unfit, why, isWhole: true }];
      const work = frozen.get(index);
      if (work === undefined) return leftOut;
      return [...(work.isWhole ? [] : leftOut), sayFrozen(plot, work)];
    }),
  };
}

function sayFrozen(plot: string, { codes, isWhole }: Lost): LeftOut {
  const { tooLate, frostFirst, says } = words.leftOut;
  if (isWhole) return { plot, kind: 'plot', lacks: tooLate, why: says.tooLate, isWhole };
  const lacks = codes.map((code) => words.tasks[code]).join(', ');
  return { plot, kind: 'work', lacks, why: frostFirst, isWhole };
}

/** Done when frost has been. */
const afterGrowth: readonly Task['code'][] = ['cleanUp'];

function rowOf(task: Task, soil: string, firstFrost: number | null): InputRow {
  const { columns } = words;
  const row: Record<string, CellValue> = {
    [columns.date.header]: task.day,
    [columns.plot.header]: task.plot,
    [columns.crop.header]: wordOfCrop(task.crop),
    [columns.task.header]: sayTask(task),
    [columns.until.header]: task.lastDay,
    [columns.remark.header]:
      firstFrost !== null && task.day >= firstFrost && !afterGrowth.includes(task.code)
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

/** No bar without a day to begin it; without a first pick, or where frost comes before it, there is none to pick. */
function weekRowOf(dates: PlotDates): InputRow | readonly InputRow[] {
  const { plot, crop, startUnderCover, inGround, lastPick } = dates;
  if (inGround === null) return [];
  const firstPick = isTaken(dates) ? null : dates.firstPick;
  const { columns } = weeks;
  return {
    [columns.plot.header]: plot,
    [columns.crop.header]: wordOfCrop(crop),
    [columns.underCover.header]: startUnderCover,
    [columns.inGround.header]: Math.floor(inGround),
    [columns.firstPick.header]: firstPick === null ? null : Math.floor(firstPick),
    [columns.lastPick.header]: lastPick === null ? null : Math.floor(lastPick),
  };
}
