/** Makes a Homework sheet, or its key, as a sheet of its own: one that is there may have somebody's answers. */
import { fillSheets } from '../workbook/fillSheets';
import type { WorkbookPort } from '../workbook/port';
import { call } from '../workbook/expressions';
import { printFormula } from '../workbook/printFormula';
import type { InputRow, SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { argumentHeaders, homeworkKeyTemplate, homeworkTemplate } from './homework';
import { functionNamespace } from './sheets';

const { columns: headers, numbered } = catalogue.homework;

/** A problem as the functions have it. */
export interface HomeworkProblem {
  readonly text: string;
  readonly id: string;
  readonly args: readonly (string | number)[];
  readonly answer: string | number | boolean;
}

/**
 * @param number of the homework
 * @returns the name of the new sheet
 * @throws HostError; then nothing was written
 */
export async function makeHomework(
  port: WorkbookPort,
  number: number,
  problems: readonly HomeworkProblem[],
  isKey: boolean,
  title: string,
): Promise<string> {
  const template = await withFreeNames(port, isKey ? homeworkKeyTemplate : homeworkTemplate);
  const inputs = problems.map((problem, index): InputRow => ({
    [headers.position.header]: fill(numbered, { number, position: index + 1 }),
    [headers.problem.header]: problem.text,
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
    [headers.function.header]: id,
    ...Object.fromEntries(args.map((argument, index) => [argumentHeaders[index] ?? '', argument])),
  };
}

/** The template of a sheet that is not there yet, its table called as no other. */
async function withFreeNames(port: WorkbookPort, template: SheetTemplate): Promise<SheetTemplate> {
  const marks = new Set((await port.sheets()).map(({ mark }) => mark?.template));
  for (let n = 1; ; n++) {
    const suffix = n === 1 ? '' : String(n);
    const id = `${template.id}${suffix}`;
    const tables = template.tables.map((table) => ({ ...table, name: `${table.name}${suffix}` }));
    const found = await Promise.all(tables.map(({ name }) => port.readTable(name)));
    if (!marks.has(id) && found.every((table) => table === null)) return { ...template, id, tables };
  }
}
