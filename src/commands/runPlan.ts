/** The main job without a screen: a list of plots in, a workbook out, the Plots table on the screen. */
import { allTemplates } from '../templates/sheets';
import { plotsTemplate } from '../templates/plots';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { findFindings } from '../workbook/findFindings';
import { fillSheets } from '../workbook/fillSheets';
import { HostError, type WorkbookPort } from '../workbook/port';
import { readDelimited, type Delimited } from '../workbook/readDelimited';
import { readInputs, type InputsRead } from '../workbook/readInputs';
import type { TableTemplate } from '../workbook/template';
import { readPlanOptions, UsageError, type PlanOptions } from './planOptions';
import { printTable } from './printTable';

const words = english.commands.plan;
const table = plotsTemplate.tables[0] as TableTemplate;
const notesHeader = english.sheets.plots.columns.notes.header;
const assumedHeader = english.sheets.plots.columns.assumed.header;

/** A workbook that ends as a file. */
interface SavedWorkbook extends WorkbookPort {
  /** Whole or not at all; an existing file only with replace. @throws HostError */
  save(path: string, options: { replace: boolean }): Promise<void>;
}

export interface PlanTools {
  /** @throws Error with the reason */
  readText(file: string): string;
  makeWorkbook(): SavedWorkbook;
  say(line: string): void;
  warn(line: string): void;
}

/** @throws Error when the bytes are not UTF-8: guessing would lose letters */
export function decodeText(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new Error(words.notUtf8, { cause });
  }
}

/** @returns the exit code: 0 written, 1 written with lines to mend, 2 nothing written */
export async function runPlan(args: readonly string[], tools: PlanTools): Promise<0 | 1 | 2> {
  try {
    const options = readPlanOptions(args);
    const delimited = readDelimited(readPlots(options.plots, tools));
    const read = readInputs(table, delimited);
    const toMend = listProblems(options.plots, delimited, read);
    if (read.inputs.length === 0) {
      toMend.forEach((line) => tools.warn(line));
      throw new UsageError(fill(words.emptyList, { file: options.plots }));
    }
    const isWhole = await writePlan(options, read, tools);
    if (toMend.length === 0) return isWhole ? 0 : 1;
    tools.warn(fill(words.linesToMend, { count: toMend.length, file: options.plots }));
    toMend.forEach((line) => tools.warn(line));
    return 1;
  } catch (error) {
    if (!(error instanceof UsageError) && !(error instanceof HostError)) throw error;
    tools.warn(error instanceof UsageError ? error.message : sayHostError(error));
    tools.warn(words.nothingWritten);
    return 2;
  }
}

function readPlots(file: string, tools: PlanTools): string {
  try {
    return tools.readText(file);
  } catch (error) {
    throw new UsageError(fill(words.cannotRead, { file, reason: (error as Error).message }));
  }
}

function listProblems(file: string, delimited: Delimited, read: InputsRead): string[] {
  const columns = table.columns.filter((column) => column.kind === 'input').map((column) => column.header);
  const lineOf = (problem: (typeof problems)[number]): number => ('line' in problem ? problem.line : 1);
  const problems = [...delimited.problems, ...read.problems].sort((a, b) => lineOf(a) - lineOf(b));
  return problems.map((problem) => {
    const sentence = fill(words.problems[problem.code], { ...problem, columns: columns.join(', ') });
    return fill(words.line, { file, line: lineOf(problem), problem: sentence });
  });
}

/** @returns whether no cell of the plots holds an error */
async function writePlan(options: PlanOptions, read: InputsRead, tools: PlanTools): Promise<boolean> {
  const workbook = tools.makeWorkbook();
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template === plotsTemplate ? read.inputs : [],
    form: options.season,
  }));
  await fillSheets(workbook, requests, plotsTemplate.title);
  await workbook.save(options.out, { replace: options.replace });
  const plots = await workbook.readTable(table.name);
  if (plots !== null) tools.say(printTable(plots, table, [notesHeader, assumedHeader]));
  const findings = await findFindings(workbook, table.name, notesHeader);
  if (findings.length > 0) tools.say(`\n${words.findings}`);
  for (const { row, header, text } of findings) tools.say(fill(words.finding, { plot: row, header, text }));
  tools.say(`\n${fill(words.written, { file: options.out, count: read.inputs.length })}`);
  return findings.every(({ kind }) => kind !== 'error');
}

function sayHostError(error: HostError): string {
  const sentence = fill(english.pane.problems[error.problem.code], { ...error.problem });
  return error.problem.code === 'fileExists' ? `${sentence} ${words.replaceHint}` : sentence;
}
