/** The Homework sheet and its key, in a file and in the browser's engine. */
import exceljs from 'exceljs';
import { afterEach, describe, expect, it } from 'vitest';
import { readPlanFile, writePlan } from '../../src/entries/planFiles';
import { functions } from '../../src/functions';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createMemoryWorkbook, type MemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../src/hosts/file/openXlsx';
import { answerFormats } from '../../src/templates/homework';
import { makeHomework } from '../../src/templates/makeHomework';
import { functionNamespace, knownTemplates } from '../../src/templates/sheets';
import { formatCodes } from '../../src/workbook/appearance';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue, LiveWorkbook, ReadValue, TableRead, WorkbookPort } from '../../src/workbook/port';
import { readFilling } from '../../src/workbook/readFilling';

const open: { dispose(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.dispose();
});
const registered = [...functions.values()];
const inFile = (): MemoryWorkbook => createMemoryWorkbook({ functions: registered });
function inBrowser(): WorkbookPort {
  const workbook = openHeadless({
    functions: registered,
    namespace: functionNamespace,
    firstSheet: 'Notepad',
  });
  open.push(workbook);
  return workbook;
}

const given = homeworkProblems(7, 80, 'us');
if ('wrong' in given) throw new Error(given.wrong);
const problems = given.value;
const make = (port: WorkbookPort, isKey = false): Promise<string> =>
  makeHomework(port, { number: 7, units: 'us' }, problems, isKey, 'homework');

async function table(port: WorkbookPort, name: string): Promise<TableRead> {
  expect(await port.settle(60_000)).toEqual([]);
  const read = await port.readTable(name);
  if (read === null) throw new Error(`no ${name}`);
  return read;
}
function columnOf({ headers, rows }: TableRead, header: string): ReadValue[] {
  return rows.map((row) => row[headers.indexOf(header)] ?? null);
}
/** Into the rows from the first on. */
async function type(port: WorkbookPort, name: string, answers: readonly CellValue[]): Promise<void> {
  const { area, headers } = await table(port, name);
  const cells = {
    sheet: area.sheet,
    row: area.row + 1,
    column: area.column + headers.indexOf('Answer'),
    contents: answers.map((answer) => [answer]),
  };
  await port.apply({
    title: 'typed',
    expect: [],
    newSheets: [],
    cells: [cells],
    tableRows: [],
    pictures: [],
    marks: [],
  });
}

describe.each([
  ['file', inFile],
  ['browser', inBrowser],
] as const)('in the %s', (_, openPort) => {
  it('has a problem a row, no verdict before an answer, and a verdict on each', async () => {
    const port = openPort();
    expect(await make(port)).toBe('Homework');
    const read = await table(port, 'Homework');
    expect(columnOf(read, 'Problem')).toEqual(problems.map(({ text }) => text));
    expect(columnOf(read, 'No').slice(0, 2)).toEqual(['7-1', '7-2']);
    expect(new Set(columnOf(read, 'Verdict'))).toEqual(new Set(['']));
    expect(columnOf(read, 'Steps')[0]).toBe(
      `=CUCURBIT.CHECK.WORKING("${problems[0]?.id}",${problems[0]?.args
        .map((one) => (typeof one === 'string' ? `"${one}"` : one))
        .join()})`,
    );

    await type(
      port,
      'Homework',
      problems.map(({ answer }) => answer),
    );
    expect(new Set(columnOf(await table(port, 'Homework'), 'Verdict'))).toEqual(new Set(['right']));
    const isDate = ({ id }: (typeof problems)[number]): boolean => answerFormats[id] === 'date';
    const numbers = problems.map(
      (one) => Math.abs(Number(one.answer)) * (isDate(one) ? 1 : 3) + (isDate(one) ? 300 : 1),
    );
    await type(port, 'Homework', numbers);
    const verdicts = columnOf(await table(port, 'Homework'), 'Verdict');
    problems.forEach(({ id }, i) =>
      expect(String(verdicts[i]), id).toMatch(/^(too high by|\d+ days? late|You )/),
    );
  });

  it('is a sheet of its own each time: answers on the one that is there stay', async () => {
    const port = openPort();
    await make(port);
    await type(port, 'Homework', [1, 2, 3]);
    const before = await table(port, 'Homework');
    expect(await make(port)).toBe('Homework 2');
    expect(await table(port, 'Homework')).toEqual(before);
    await type(port, 'Homework2', [problems[0]?.answer ?? null]);
    expect(columnOf(await table(port, 'Homework2'), 'Verdict')[0]).toBe('right');
    expect(await table(port, 'Homework')).toEqual(before);
  });

  it('leaves a sheet of that name alone that is somebody’s own', async () => {
    const port = openPort();
    const own = { ...(knownTemplates[0] as (typeof knownTemplates)[number]), sheet: 'Homework key' };
    await fillSheets(port, [{ template: own, inputs: [], form: {} }], 'own');
    expect(await make(port, true)).toBe('Homework key 2');
  });

  it('has a key of values only, the same answers to the same problems', async () => {
    const port = openPort();
    await make(port);
    expect(await make(port, true)).toBe('Homework key');
    const key = await table(port, 'HomeworkKey');
    expect(columnOf(key, 'Problem')).toEqual(problems.map(({ text }) => text));
    expect(columnOf(key, 'Right answer')).toEqual(problems.map(({ answer }) => answer));
    const used = (await port.sheets()).find(({ name }) => name === 'Homework key')?.used;
    if (used == null) throw new Error('no key');
    expect((await port.read(used)).formulas.flat().filter((formula) => formula !== null)).toEqual([]);
  });
});

it('a cell of spaces alone is blank, in words', async () => {
  const port = inBrowser();
  await make(port);
  await type(port, 'Homework', [' ', '\u00a0']);
  expect(columnOf(await table(port, 'Homework'), 'Verdict').slice(0, 3)).toEqual([
    'blank: no answer yet',
    'blank: no answer yet',
    '',
  ]);
});

it('a date and a share are shown as such in a file, typed as they are or saved anew, and so is the key', async () => {
  const port = inFile();
  await make(port);
  await make(port, true);
  const formatsIn = async (bytes: Uint8Array, sheet: string, header: string): Promise<unknown[]> => {
    const file = new exceljs.Workbook();
    await file.xlsx.load(bytes.buffer as ArrayBuffer);
    const page = file.getWorksheet(sheet);
    const headerRow = [...Array(12).keys()].find((row) => page?.getCell(row + 1, 1).value === 'No') ?? NaN;
    const column = [...Array(20).keys()].find((at) => page?.getCell(headerRow + 1, at + 1).value === header);
    return problems.map((_, i) => page?.getCell(headerRow + 2 + i, Number(column) + 1).numFmt ?? 'General');
  };
  const wanted = problems.map(({ id }) => formatCodes[answerFormats[id] ?? 'general']);
  expect(new Set(wanted)).toEqual(new Set(['General', 'yyyy-mm-dd', '0.00%']));
  const bytes = await port.bytes();
  expect(await formatsIn(bytes, 'Homework', 'Answer')).toEqual(wanted);
  expect(await formatsIn(bytes, 'Homework key', 'Right answer')).toEqual(wanted);
  const saved = await writePlan(port);
  if (saved === null) throw new Error('no plan');
  expect(await formatsIn(saved, 'Homework', 'Answer')).toEqual(wanted);
});

it('answers go into a file and come back with their problems', async () => {
  const port = inFile();
  await make(port);
  const answers = [problems[0]?.answer ?? null, 'half a word'];
  await type(port, 'Homework', answers);
  const filling = await readFilling(openXlsx(await port.bytes()), knownTemplates, inFile);
  const again = inFile();
  await fillSheets(again, filling?.requests ?? [], 'again');
  expect(await again.readTable('Homework')).toEqual(await port.readTable('Homework'));
  expect(columnOf(await table(again, 'Homework'), 'Answer').slice(0, 2)).toEqual(answers);
});

it('each homework goes into the file that Save writes, and comes back with its answers', async () => {
  const port = inFile();
  const metric = homeworkProblems(8, 3, 'metric');
  if ('wrong' in metric) throw new Error(metric.wrong);
  await make(port);
  await makeHomework(port, { number: 8, units: 'metric' }, metric.value, false, 'homework');
  await makeHomework(port, { number: 9, units: 'us' }, problems.slice(0, 2), false, 'homework');
  await type(port, 'Homework', [problems[0]?.answer ?? null, 'half a word']);
  await type(port, 'Homework2', [metric.value[0]?.answer ?? null, 0.5]);
  await type(port, 'Homework3', [null, '2027-05-16']);

  const bytes = await writePlan(port);
  if (bytes === null) throw new Error('no plan');
  const read = await readPlanFile('plan.xlsx', bytes, inBrowser() as LiveWorkbook);
  if (!('fill' in read)) throw new Error(read.refused);
  const again = inFile();
  await read.fill(again);
  for (const name of ['Homework', 'Homework2', 'Homework3']) {
    expect(await again.readTable(name), name).toEqual(await port.readTable(name));
  }
  expect(columnOf(await table(again, 'Homework2'), 'Verdict')[0]).toBe('right');
  expect(columnOf(await table(again, 'Homework2'), 'No')[0]).toBe('8m-1');
  expect(await makeHomework(again, { number: 1, units: 'us' }, problems.slice(0, 1), false, 'more')).toBe(
    'Homework 4',
  );
});

it('is renewed where it is, answers and all', async () => {
  const port = inFile();
  await make(port);
  await type(port, 'Homework', [problems[0]?.answer ?? null]);
  const before = await table(port, 'Homework');
  const homework = knownTemplates.filter(({ id }) => id === 'homework');
  const report = await fillSheets(
    port,
    homework.map((template) => ({ template, inputs: [], form: {} })),
    'again',
  );
  expect(report).toMatchObject({ made: [], kept: 0, gone: [] });
  expect(await table(port, 'Homework')).toEqual(before);
});
