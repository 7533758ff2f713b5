/** The main job without a screen: a list of plots in, a workbook out, the Plots table on the screen. */
import type { CalendarTasks } from '../templates/drawUpCalendar';
import { makeCalendar, type CalendarMade } from '../templates/makeCalendar';
import { findInPlots } from '../templates/findInPlots';
import { plotsTable, plotsTemplate } from '../templates/plots';
import {
  putWeatherPictures,
  readWeatherToDraw,
  type SheetPicture,
  type WeatherToDraw,
} from '../templates/weatherPictures';
import { sayCalendar } from '../templates/sayCalendar';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { fillSheets, type FillRequest } from '../workbook/fillSheets';
import { HostError, type ReadValue, type TableRead, type WorkbookPort } from '../workbook/port';
import type { NearestNames } from '../templates/sayListProblem';
import { calendarFile } from './calendarFile';
import { frostsOfWeather, type WeatherFrosts, type WeatherTools } from './frostsOfWeather';
import { listRemarks, listToMend, type FindingOfLine } from './listToMend';
import { pricesToMend, type ListToPut } from './listToPut';
import { readPlanOptions, type PlanOptions } from './planOptions';
import { printTable } from './printTable';
import { readBytes } from './readList';
import { readPlan, type PlanRead, type PlanReader } from './readPlan';
import { readPrices } from './readPrices';
import { readSeedPrices } from './readSeedPrices';
import { UsageError } from './usageError';

const words = catalogue.commands.plan;
const { notes, assumed, keepApart, sameName } = catalogue.sheets.plots.columns;
/** What Notes says at length, and sentences. */
const unprinted = [notes, assumed, keepApart, sameName].map(({ header }) => header);

/** A workbook that ends as a file. */
interface SavedWorkbook extends WorkbookPort {
  /** Whole or not at all; an existing file only with replace. @throws HostError */
  save(path: string, options: { replace: boolean }): Promise<void>;
}

export interface PlanTools extends PlanReader, WeatherTools {
  readonly calendarTasks: CalendarTasks;
  /** Whole or not at all; an existing file only with replace. @throws HostError */
  saveText(path: string, text: string, options: { replace: boolean }): Promise<void>;
  /** The pictures of the weather, as many as can be drawn. */
  drawForSheet(weather: WeatherToDraw): Promise<readonly SheetPicture[]>;
  /** @throws Error with the machine's code */
  readBytes(file: string): Uint8Array;
  readonly nearestNames: NearestNames;
  makeWorkbook(): SavedWorkbook;
  say(line: string): void;
  warn(line: string): void;
}

/** @returns the exit code: 0 written, 1 written with something to mend, 2 nothing written */
export async function runPlan(args: readonly string[], tools: PlanTools): Promise<0 | 1 | 2> {
  if (args.includes('--help')) {
    tools.say(words.usage);
    return 0;
  }
  try {
    return await planList(readPlanOptions(args), tools);
  } catch (error) {
    if (!(error instanceof UsageError) && !(error instanceof HostError)) throw error;
    tools.warn(error instanceof UsageError ? error.message : sayHostError(error));
    tools.warn(words.nothingWritten);
    return 2;
  }
}

async function planList(options: PlanOptions, tools: PlanTools): Promise<0 | 1> {
  const file = options.plots;
  const read = await readPlan(file, readBytes(file, tools.readBytes), tools);
  if (read.inputs.length === 0) {
    const lines = listToMend(file, read.problems, [], tools.nearestNames);
    // Lines that could not be taken say by themselves why there is no plot.
    if (!read.isShortened) throw new UsageError([...lines, fill(words.emptyList, { file })].join('\n'));
    throw new UsageError(lines.join('\n'));
  }
  const { weather } = options;
  const frosts =
    weather === null ? null : frostsOfWeather(weather, readBytes(weather.file, tools.readBytes), tools);
  const lists = readLists(options, tools);
  refuseTaken(options, tools);
  const { workbook, plots, units, calendar } = await writeWorkbook(options, read, frosts, lists, tools);
  tools.say(printTable(plots, plotsTable, { units, without: unprinted }));
  const found = (await findInPlots(workbook)).map((finding): FindingOfLine => {
    const row = finding.area.row - plots.area.row - 1;
    return { ...finding, line: read.lines[row] ?? 0 };
  });
  const ofKind = (kind: FindingOfLine['kind']): FindingOfLine[] => found.filter((one) => one.kind === kind);
  const remarks = listRemarks(file, ofKind('remark'));
  if (remarks.length > 0) tools.say(`\n${words.findings}`);
  remarks.forEach((line) => tools.say(line));
  tools.say(`\n${fill(words.written, { file: options.out, count: read.inputs.length })}`);
  if (calendar !== null) sayCalendar(calendar).forEach((line) => tools.say(line));
  const isWhole = await writeCalendar(options, workbook, tools);
  const taken = [...options.taken, ...(read.taken === null ? [] : [read.taken])];
  taken.forEach((line) => tools.say(line));
  if (read.leftOut.length > 0) tools.say(fill(words.leftOut, { headers: read.leftOut.join(', ') }));
  frosts?.said.forEach((line) => tools.say(line));
  frosts?.doubts.forEach((line) => tools.warn(line));
  if (read.typedOver > 0) tools.say(fill(words.typedOver, { count: read.typedOver }));
  const toMend = [
    { file, lines: listToMend(file, read.problems, ofKind('error'), tools.nearestNames) },
    ...(await pricesToMend(workbook, options.out, lists, tools.nearestNames)),
  ].filter(({ lines }) => lines.length > 0);
  for (const { file: of, lines } of toMend) {
    tools.warn(fill(words.toMend, { count: lines.length, file: of }));
    lines.forEach((line) => tools.warn(line));
  }
  return isWhole && frosts?.isDoubtful !== true && toMend.length === 0 ? 0 : 1;
}

/** @throws UsageError */
function readLists(
  { seedPrices, prices }: PlanOptions,
  { readBytes: read, nearestNames }: PlanTools,
): readonly ListToPut[] {
  const seed = seedPrices === null ? [] : [seedPrices];
  const lists = [
    ...seed.map((file) => readSeedPrices(file, readBytes(file, read), nearestNames)),
    ...prices.map((file) => readPrices(file, readBytes(file, read), nearestNames)),
  ];
  lists.forEach(({ file, kind: { table } }, index) => {
    const first = lists.findIndex((list) => list.kind.table.name === table.name);
    const values = { file, other: lists[first]?.file ?? '', header: table.columns[0]?.header ?? '' };
    if (first < index) throw new UsageError(fill(words.sameList, values));
  });
  return lists;
}

/** Before anything is written: a plan without the calendar that was asked for is half of it. */
function refuseTaken({ calendar, replace }: PlanOptions, { readBytes: read }: PlanTools): void {
  if (calendar === null || replace) return;
  try {
    read(calendar);
  } catch {
    return;
  }
  throw new HostError({ code: 'fileExists', file: calendar });
}

/** Whether all that was asked for is written. */
async function writeCalendar(
  { calendar: file, replace }: PlanOptions,
  workbook: WorkbookPort,
  { saveText, say, warn }: PlanTools,
): Promise<boolean> {
  if (file === null) return true;
  const text = await calendarFile(workbook, new Date());
  if (text === null) {
    warn(fill(words.calendarEmpty, { file }));
    return false;
  }
  try {
    await saveText(file, text, { replace });
  } catch (error) {
    if (!(error instanceof HostError)) throw error;
    warn(fill(words.calendarNotWritten, { problem: sayHostError(error) }));
    return false;
  }
  say(fill(words.calendarWritten, { file }));
  return true;
}

interface Written {
  readonly workbook: WorkbookPort;
  readonly plots: TableRead;
  readonly units: readonly ReadValue[];
  readonly calendar: CalendarMade | null;
}

async function writeWorkbook(
  options: PlanOptions,
  { requests }: PlanRead,
  frosts: WeatherFrosts | null,
  lists: readonly ListToPut[],
  tools: PlanTools,
): Promise<Written> {
  const workbook = tools.makeWorkbook();
  // What the command line says goes before what the file says.
  const season = { ...options.season, ...frosts?.season };
  const added = frosts?.requests ?? [];
  const isAdded = ({ template }: FillRequest): boolean => added.some((one) => one.template === template);
  const kept = requests.filter((request) => !isAdded(request));
  const asked = [...kept, ...added].map((request) => ({
    ...lists.reduce((filled, list) => list.addTo(filled), request),
    form: { ...request.form, ...season },
  }));
  await fillSheets(workbook, asked, plotsTemplate.title);
  const calendar = await makeCalendar(workbook, tools.calendarTasks, catalogue.calendar.title);
  const weather = await readWeatherToDraw(workbook);
  if (weather !== null) {
    await putWeatherPictures(workbook, await tools.drawForSheet(weather), weather, plotsTemplate.title);
  }
  await workbook.save(options.out, { replace: options.replace });
  const plots = await workbook.readTable(plotsTable.name);
  if (plots === null) throw new HostError({ code: 'noSuchTable', table: plotsTable.name });
  const unitRow = await workbook.read({ ...plots.area, row: plots.area.row - 1, rows: 1 });
  return { workbook, plots, units: unitRow.values[0] ?? [], calendar };
}

function sayHostError(error: HostError): string {
  const sentence = fill(catalogue.pane.problems[error.problem.code], { ...error.problem });
  return error.problem.code === 'fileExists' ? `${sentence} ${words.replaceHint}` : sentence;
}
