/**
 * Puts the rows of the Calendar and Weeks sheets in place, as one change. What people typed beside a task goes with
 * its plot and task, whichever day that falls on now; a row of theirs that belongs to no task any more stays.
 */
import { arrangeLines, type PlannedLine } from '../workbook/arrangeLines';
import type { Area, Change, WorkbookPort } from '../workbook/port';
import { isBlank, textOf } from '../workbook/readInputs';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { InputRow, SheetTemplate, TableTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { calendarTable, calendarTemplate, weeksTable, weeksTemplate } from './calendar';
import { drawUpCalendar, type CalendarTasks, type DrawnUp } from './drawUpCalendar';
import type { LeftOut } from './readPlotDates';
import { sayInLine } from './sayCalendar';
import { taskKeys } from './taskKeys';

const { columns: headers, weeks } = catalogue.calendar;

export interface CalendarMade {
  readonly tasks: number;
  readonly plots: number;
  readonly leftOut: readonly LeftOut[];
  /** Rows of people's own, or with a note of theirs, that belong to no task now. */
  readonly kept: readonly { readonly plot: string; readonly task: string }[];
}

/** What stands in the sheets, and what would. */
interface CalendarPlan {
  readonly drawn: DrawnUp;
  readonly calendar: Planned;
  readonly weeks: Planned;
  /** The lines of the sheets that do not say yet what they leave out. */
  readonly reports: readonly Report[];
}

interface Report {
  readonly area: Area;
  readonly text: string;
}

interface Planned {
  readonly read: LinesRead;
  readonly lines: readonly PlannedLine[];
  readonly kept: readonly Line[];
  readonly isNew: boolean;
}

/**
 * To be called when Plots is calculated.
 *
 * @returns null where one of the sheets is missing @throws HostError; then nothing was written
 */
export async function makeCalendar(
  port: WorkbookPort,
  calendarTasks: CalendarTasks,
  title: string,
): Promise<CalendarMade | null> {
  const plan = await planCalendar(port, calendarTasks);
  if (plan === null) return null;
  const { drawn, calendar, weeks: bars, reports } = plan;
  const changes = [
    ...(calendar.isNew ? [arrangeLines(calendar.read, calendarTable, calendar.lines, title)] : []),
    ...(bars.isNew ? [arrangeLines(bars.read, weeksTable, bars.lines, title)] : []),
  ];
  if (changes.length + reports.length > 0) await port.apply(joined(changes, plan, title));
  return {
    tasks: drawn.calendar.length,
    plots: drawn.plotsDated,
    leftOut: drawn.leftOut,
    kept: calendar.kept.map(({ values }) => ({
      plot: textOf(values[headers.plot.header] ?? null),
      task: textOf(values[headers.task.header] ?? null),
    })),
  };
}

export interface CalendarState {
  /** Whether anything stands in the Calendar. */
  readonly isMade: boolean;
  /** Whether it is what would be made of Plots now. */
  readonly isCurrent: boolean;
  /** Of what would be made now. */
  readonly leftOut: readonly LeftOut[];
  /** What stands in it. */
  readonly read: LinesRead;
}

/** null where one of the sheets is missing. @throws HostError */
export async function readCalendarState(
  port: WorkbookPort,
  calendarTasks: CalendarTasks,
): Promise<CalendarState | null> {
  const plan = await planCalendar(port, calendarTasks);
  if (plan === null) return null;
  const { drawn, calendar, weeks: bars, reports } = plan;
  return {
    isMade: calendar.read.lines.some(({ isBlank: isFree }) => !isFree),
    isCurrent: !calendar.isNew && !bars.isNew && reports.length === 0,
    leftOut: drawn.leftOut,
    read: calendar.read,
  };
}

async function planCalendar(port: WorkbookPort, calendarTasks: CalendarTasks): Promise<CalendarPlan | null> {
  const drawn = await drawUpCalendar(port, calendarTasks);
  const calendar = await readLines(port, calendarTable);
  const bars = await readLines(port, weeksTable);
  if (drawn === null || calendar === null || bars === null) return null;
  const text = sayInLine(drawn.leftOut);
  return {
    drawn,
    reports: (
      await Promise.all([calendarTemplate, weeksTemplate].map((template) => planReport(port, template, text)))
    ).flat(),
    calendar: planTable(calendar, drawn.calendar, {
      columns: calendarTable.columns,
      key: [headers.plot.header, headers.task.header],
      dateHeader: headers.date.header,
      taskHeader: headers.task.header,
    }),
    weeks: planTable(bars, drawn.weeks, {
      columns: weeksTable.columns,
      key: [weeks.columns.plot.header],
      dateHeader: null,
      taskHeader: null,
    }),
  };
}

interface Table {
  readonly columns: TableTemplate['columns'];
  /** By these cells a row is known again. */
  readonly key: readonly string[];
  /** Rows stand in its order; null: as they were made, others after them. */
  readonly dateHeader: string | null;
  readonly taskHeader: string | null;
}

function planTable(read: LinesRead, rows: readonly InputRow[], table: Table): Planned {
  const { key, dateHeader: date } = table;
  const keyOf = (values: Line['values'] | InputRow): string =>
    JSON.stringify(key.map((header) => textOf(values[header] ?? null).toLowerCase()));
  const waiting = new Map<string, number[]>();
  read.lines.forEach((line, index) => {
    if (!line.isBlank) waiting.set(keyOf(line.values), [...(waiting.get(keyOf(line.values)) ?? []), index]);
  });
  const made = rows.map((put): PlannedLine & { day: number } => {
    const from = waiting.get(keyOf(put))?.shift() ?? null;
    return { from, put, day: dayIn(put, date) };
  });
  const left = [...waiting.values()].flat().sort((one, other) => one - other);
  const kept = left
    .filter((index) => isOwn(read, index, table))
    .map((from) => ({
      from,
      put: {},
      day: dayIn(read.lines[from]?.values ?? {}, date),
    }));
  // A stable sort: of one day the tasks come first, in their order.
  const lines: PlannedLine[] = [...made, ...kept].sort((one, other) => one.day - other.day);
  while (lines.length < read.lines.length) lines.push({ from: null, put: {} });
  const isNew = lines.some((line, index) => isMoved(line, index, read)) || left.length > kept.length;
  return { read, lines, kept: kept.flatMap(({ from }) => read.lines[from] ?? []), isNew };
}

/** Rows without a date come last. */
function dayIn(values: Line['values'] | InputRow, header: string | null): number {
  const day = header === null ? null : values[header];
  return typeof day === 'number' ? day : Infinity;
}

/** Whether people put something into the row themselves, or typed all of it. */
function isOwn(read: LinesRead, index: number, { columns, taskHeader }: Table): boolean {
  const { values, formulas } = read.lines[index] as Line;
  const task = taskHeader === null ? null : textOf(values[taskHeader] ?? null);
  if (task !== null && !taskKeys.has(task)) return true;
  const ours = new Set(columns.flatMap(({ header, kind }) => (kind === 'input' ? [] : [header])));
  return (read.cells.values[index] ?? []).some((value, column) => {
    const header = read.headers[column - read.area.column];
    if (header !== undefined && ours.has(header)) return false;
    const isInput = columns.some((each) => each.header === header);
    // A formula of somebody's own column runs down the whole table.
    return header !== undefined && formulas.has(header) ? isInput : !isBlank(value);
  });
}

function isMoved({ from, put }: PlannedLine, index: number, { lines }: LinesRead): boolean {
  const there = lines[index];
  if (there === undefined) return true;
  if (from !== index && !(from === null && there.isBlank)) return true;
  return Object.entries(put).some(([header, value]) => (there.values[header] ?? '') !== (value ?? ''));
}

/** None where the line says so already, and in a sheet that was made before there was such a line. */
async function planReport(port: WorkbookPort, { report }: SheetTemplate, text: string): Promise<Report[]> {
  const area = report === undefined ? null : await port.locate(report.name);
  if (area === null) return [];
  const there = (await port.read(area)).values[0]?.[0] ?? null;
  return there === text ? [] : [{ area, text }];
}

/** Refused when somebody types into Plots or one of the sheets meanwhile. */
function joined(
  changes: readonly Change[],
  { drawn, calendar, weeks: bars, reports }: CalendarPlan,
  title: string,
): Change {
  const expect = new Map(
    [drawn.plots, calendar.read, bars.read].map(({ area, stamp }) => [area.sheet, stamp]),
  );
  return {
    title,
    expect: [...expect].map(([sheet, stamp]) => ({ sheet, stamp })),
    newSheets: [],
    cells: [
      ...changes.flatMap(({ cells }) => cells),
      ...reports.map(({ area, text }) => ({
        sheet: area.sheet,
        row: area.row,
        column: area.column,
        contents: [[text]],
      })),
    ],
    tableRows: changes.flatMap(({ tableRows }) => tableRows),
    pictures: [],
    marks: [],
  };
}
