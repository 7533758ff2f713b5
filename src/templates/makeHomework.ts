/** Makes a Homework sheet, or its key, as a sheet of its own: one that is there may have somebody's answers. */
import { fillSheets } from '../workbook/fillSheets';
import type { WorkbookPort } from '../workbook/port';
import { call } from '../workbook/expressions';
import { printFormula } from '../workbook/printFormula';
import type { InputRow, SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { argumentHeaders, homeworkKeyTemplate, homeworkTemplate, nthTemplate } from './homework';
import { functionNamespace } from './sheets';

const { columns: headers, numbered } = catalogue.homework;

/** What a class tells one another: the same number and units give the same problems. */
export interface HomeworkName {
  readonly number: number;
  readonly units: 'us' | 'metric';
}

/** A problem as the functions have it. */
export interface HomeworkProblem {
  readonly text: string;
  readonly id: string;
  readonly args: readonly (string | number)[];
  /** Serial for a date. */
  readonly answer: string | number | boolean;
}

/**
 * @param name that the problems were made from
 * @returns the name of the new sheet
 * @throws HostError; then nothing was written
 */
export async function makeHomework(
  port: WorkbookPort,
  { number, units }: HomeworkName,
  problems: readonly HomeworkProblem[],
  isKey: boolean,
  title: string,
): Promise<string> {
  const template = await withFreeNames(port, isKey ? homeworkKeyTemplate : homeworkTemplate);
  const inputs = problems.map((problem, index): InputRow => ({
    [headers.position.header]: fill(numbered[units], { number, position: index + 1 }),
    [headers.problem.header]: problem.text,
    [headers.function.header]: problem.id,
    ...(isKey ? { [headers.rightAnswer.header]: problem.answer } : questionOf(problem)),
  }));
  const { made } = await fillSheets(port, [{ template, inputs, form: {} }], title);
  return made.join();
}

function questionOf({ id, args }: HomeworkProblem): InputRow {
  const steps = printFormula(call('CHECK.WORKING', id, ...args), {
    namespace: functionNamespace,
    table: null,
  });
  return {
    [headers.steps.header]: steps,
    ...Object.fromEntries(
      args.flatMap((argument, index) => (argument === '' ? [] : [[argumentHeaders[index] ?? '', argument]])),
    ),
  };
}

/** The template of a sheet that is not there yet, its table called as no other. */
async function withFreeNames(port: WorkbookPort, template: SheetTemplate): Promise<SheetTemplate> {
  const marks = new Set((await port.sheets()).map(({ mark }) => mark?.template));
  for (let n = 1; ; n++) {
    const nth = nthTemplate(template, n);
    const found = await Promise.all(nth.tables.map(({ name }) => port.readTable(name)));
    if (!marks.has(nth.id) && found.every((table) => table === null)) return nth;
  }
}
