/** A plan out of a file: a workbook with our sheets, or a list of plots. */
import { withLaterHomework } from '../templates/homework';
import { plotHeaders, plotsTable, plotsTemplate } from '../templates/plots';
import { seedOrderTemplate } from '../templates/seedOrder';
import { allTemplates, areInOtherLanguage, knownTemplates } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { pointOfThousands } from '../texts/language';
import type { FillRequest } from '../workbook/fillSheets';
import { refuseHugeFile } from '../workbook/fileLimits';
import { HostError, type WorkbookPort } from '../workbook/port';
import { readDelimited, type Delimited } from '../workbook/readDelimited';
import { readFilling, type ReadableBook } from '../workbook/readFilling';
import { readInputs } from '../workbook/readInputs';
import type { InputRow } from '../workbook/template';
import type { ListProblem } from '../templates/sayListProblem';
import { textOf } from './readList';
import { takenDate } from './takenDate';
import { UsageError } from './usageError';
import { hasWorkbookName } from './workbookName';

export interface PlanReader {
  /** @throws HostError */
  openXlsx(bytes: Uint8Array): ReadableBook;
  /** An empty workbook that computes at once. */
  makeWorkbook(): WorkbookPort;
}

export interface PlanRead {
  /** For every sheet. Those of a list leave the season as the template has it. */
  readonly requests: readonly FillRequest[];
  readonly isList: boolean;
  readonly inputs: readonly InputRow[];
  /** Of the file, or of its sheet, for each of the inputs; from 1. */
  readonly lines: readonly number[];
  readonly problems: readonly ListProblem[];
  /** Whether lines were left out that could not be taken as plots. */
  readonly isShortened: boolean;
  /** Headers in a list of what the sheet computes itself. */
  readonly leftOut: readonly string[];
  /** Figures of ours with something typed over them. */
  readonly typedOver: number;
  /** How the first date of a list was taken that could be read otherwise, in a sentence; null for none. */
  readonly taken: string | null;
}

/** Of a list. No garden has as many plots, and a workbook of them would be of no use: judgement. */
const mostLines = 10_000;

/** @throws HostError, UsageError */
export async function readPlan(file: string, bytes: Uint8Array, reader: PlanReader): Promise<PlanRead> {
  refuseHugeFile(file, bytes.length);
  if (!isWorkbook(file, bytes)) return readPlotList(file, bytes);
  const book = reader.openXlsx(bytes);
  const sheets = await book.sheets();
  if (areInOtherLanguage(sheets.map(({ mark }) => mark))) throw new HostError({ code: 'fileOtherLanguage' });
  const filling = await readFilling(book, withLaterHomework(knownTemplates, sheets), reader.makeWorkbook);
  if (filling === null) throw new HostError({ code: 'fileNotOurs' });
  const { requests, typedOver } = filling;
  const plots = requests.find(({ template }) => template.id === plotsTemplate.id);
  const { inputs = [], lines = [] } = plots ?? {};
  // Its own lines say what is wrong with them.
  const others = requests.filter(({ template }) => template.id !== seedOrderTemplate.id);
  const problems = others.flatMap((request) => request.problems);
  return {
    requests,
    inputs,
    lines,
    problems,
    typedOver,
    isList: false,
    isShortened: false,
    leftOut: [],
    taken: null,
  };
}

/** By its name, or by how packed files and the older ones begin: neither is text. */
function isWorkbook(file: string, bytes: Uint8Array): boolean {
  const [first, second] = bytes;
  const isPacked = (first === 0x50 && second === 0x4b) || (first === 0xd0 && second === 0xcf);
  return isPacked || hasWorkbookName(file);
}

function readPlotList(file: string, bytes: Uint8Array): PlanRead {
  const delimited = readDelimited(textOf(file, bytes), { ...plotHeaders, mayBeBare: false });
  const count = delimited.rows.length;
  if (count > mostLines) {
    throw new UsageError(fill(catalogue.commands.plan.tooManyLines, { file, count, most: mostLines }));
  }
  const { inputs, problems, leftOut } = readInputs(plotsTable, { ...delimited, pointOfThousands });
  return {
    requests: allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? inputs : [],
      form: {},
    })),
    isList: true,
    inputs,
    lines: delimited.rows.map(({ line }) => line),
    problems: [...delimited.problems, ...problems],
    isShortened: delimited.problems.length > 0,
    leftOut,
    typedOver: 0,
    taken: dateTaken(file, delimited),
  };
}

function dateTaken(file: string, { headers, rows }: Delimited): string | null {
  const dates = plotsTable.columns.filter(({ format }) => format === 'date').map(({ header }) => header);
  const columns = headers.flatMap((header, index) => (dates.includes(header) ? [index] : []));
  for (const { line, cells } of rows) {
    for (const given of columns.map((index) => cells[index] ?? '')) {
      const date = takenDate(given);
      if (date !== null) return fill(catalogue.commands.plan.listDateTaken, { file, line, given, date });
    }
  }
  return null;
}
