/** The main job without a screen: a list of plots in, a workbook out, the Plots table on the screen. */
import { allTemplates } from '../templates/sheets';
import { plotsTemplate } from '../templates/plots';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { findFindings } from '../workbook/findFindings';
import { fillSheets } from '../workbook/fillSheets';
import { HostError, type ReadValue, type TableRead, type WorkbookPort } from '../workbook/port';
import { readDelimited } from '../workbook/readDelimited';
import { readInputs } from '../workbook/readInputs';
import type { InputRow, TableTemplate } from '../workbook/template';
import { listRemarks, listToMend, type FindingOfLine } from './listToMend';
import type { NearestNames } from '../templates/sayListProblem';
import { readPlanOptions, UsageError, type PlanOptions } from './planOptions';
import { printTable } from './printTable';
import { readList } from './readList';

const words = english.commands.plan;
const table = plotsTemplate.tables[0] as TableTemplate;
const { notes, assumed, keepApart } = english.sheets.plots.columns;
const notesHeader = notes.header;
const sentences = [notes, assumed, keepApart].map(({ header }) => header);

/** A workbook that ends as a file. */
interface SavedWorkbook extends WorkbookPort {
  /** Whole or not at all; an existing file only with replace. @throws HostError */
  save(path: string, options: { replace: boolean }): Promise<void>;
}

export interface PlanTools {
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
  const delimited = readDelimited(readList(file, tools.readBytes));
  const read = readInputs(table, delimited);
  const problems = [...delimited.problems, ...read.problems];
  if (read.inputs.length === 0) {
    const lines = listToMend(file, problems, [], tools.nearestNames);
    // Lines that could not be taken say by themselves why there is no plot.
    if (delimited.problems.length === 0)
      throw new UsageError([...lines, fill(words.emptyList, { file })].join('\n'));
    throw new UsageError(lines.join('\n'));
  }
  const { workbook, plots, units } = await writeWorkbook(options, read.inputs, tools);
  tools.say(printTable(plots, table, { units, without: sentences }));
  const found = (await findFindings(workbook, table.name, notesHeader)).map((finding): FindingOfLine => {
    const row = finding.area.row - plots.area.row - 1;
    return { ...finding, line: delimited.rows[row]?.line ?? 0 };
  });
  const ofKind = (kind: FindingOfLine['kind']): FindingOfLine[] => found.filter((one) => one.kind === kind);
  const remarks = listRemarks(file, ofKind('remark'));
  if (remarks.length > 0) tools.say(`\n${words.findings}`);
  remarks.forEach((line) => tools.say(line));
  tools.say(`\n${fill(words.written, { file: options.out, count: read.inputs.length })}`);
  const toMend = listToMend(file, problems, ofKind('error'), tools.nearestNames);
  if (toMend.length === 0) return 0;
  tools.warn(fill(words.toMend, { count: toMend.length, file }));
  toMend.forEach((line) => tools.warn(line));
  return 1;
}

async function writeWorkbook(
  options: PlanOptions,
  inputs: readonly InputRow[],
  tools: PlanTools,
): Promise<{ workbook: WorkbookPort; plots: TableRead; units: readonly ReadValue[] }> {
  const workbook = tools.makeWorkbook();
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template === plotsTemplate ? inputs : [],
    form: options.season,
  }));
  await fillSheets(workbook, requests, plotsTemplate.title);
  await workbook.save(options.out, { replace: options.replace });
  const plots = await workbook.readTable(table.name);
  if (plots === null) throw new HostError({ code: 'noSuchTable', table: table.name });
  const unitRow = await workbook.read({ ...plots.area, row: plots.area.row - 1, rows: 1 });
  return { workbook, plots, units: unitRow.values[0] ?? [] };
}

function sayHostError(error: HostError): string {
  const sentence = fill(english.pane.problems[error.problem.code], { ...error.problem });
  return error.problem.code === 'fileExists' ? `${sentence} ${words.replaceHint}` : sentence;
}
