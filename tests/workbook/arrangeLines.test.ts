/** On the grid's own engine, with what people do to a table: cells typed over, formulas and columns of their own. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  addLines,
  arrangeLines,
  copyLine,
  countUsed,
  linesAsTheyAre,
  removeLine,
  swapLines,
  type PlannedLine,
} from '../../src/workbook/arrangeLines';
import { call, column } from '../../src/workbook/expressions';
import { layOut } from '../../src/workbook/layOut';
import type { CellsRead } from '../../src/workbook/port';
import { readLines, type LinesRead } from '../../src/workbook/readLines';
import type { SheetTemplate, TableColumn, TableTemplate } from '../../src/workbook/template';
import { change, settleMs } from '../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from '../hosts/browser/typing';

const columnOf = (header: string, parts: Partial<TableColumn>): TableColumn => ({
  header,
  kind: 'input',
  compute: null,
  format: 'general',
  width: 10,
  choices: [],
  note: '',
  unit: null,
  ...parts,
});

const table: TableTemplate = {
  name: 'Lines',
  heading: '',
  rows: null,
  grows: true,
  columns: [
    columnOf('Name', { format: 'text' }),
    columnOf('Length', { unit: 'ft' }),
    columnOf('Twice', { kind: 'computed', compute: call('TEST.DOUBLE', column('Length')) }),
  ],
};
const template: SheetTemplate = {
  id: 'lines',
  version: 1,
  sheet: 'Lines',
  title: 'Lines',
  lead: [],
  cautions: [],
  form: [],
  tables: [table],
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
};
const inputs = [
  { Name: 'north', Length: 10 },
  { Name: '007', Length: 20 },
  { Name: 'south', Length: 30 },
];
/** Under the title, an empty row, the units and the headers. */
const firstRow = 4;

let typed: TypedWorkbook;
beforeEach(() => {
  typed = openTyped();
});
afterEach(() => typed.workbook.dispose());

async function fill(rows: readonly Record<string, string | number>[] = inputs): Promise<void> {
  await typed.workbook.apply(change({ newSheets: [layOut(template, 'Lines', rows)] }));
}

async function read(): Promise<LinesRead> {
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  const lines = await readLines(typed.workbook, table);
  if (lines === null) throw new Error('no table');
  return lines;
}

/** Each line as name, length, twice, and what stands beside it. */
async function lines(): Promise<CellsRead['values']> {
  return (await read()).cells.values;
}

async function arrange(plan: (there: LinesRead) => readonly PlannedLine[]): Promise<void> {
  const there = await read();
  await typed.workbook.apply(arrangeLines(there, table, plan(there), 'arranged'));
}

test('a unit that is an error, as while it is calculated, is none', async () => {
  await fill();
  await typed.type('Lines', firstRow - 2, 1, [[{ f: '=NA()' }]]);
  expect((await read()).units).toEqual({ Name: '', Length: '', Twice: '' });
});

test('reads lines, units and who typed what', async () => {
  await fill();
  await typed.type('Lines', firstRow, 1, [[{ f: '=5+5' }]]);
  const there = await read();
  expect(there.units).toEqual({ Name: '', Length: 'ft', Twice: '' });
  expect(there.lines.map(({ values }) => values['Name'])).toEqual(['north', '007', 'south']);
  expect([...(there.lines[0]?.formulas ?? [])]).toEqual(['Length', 'Twice']);
  expect([...(there.lines[1]?.formulas ?? [])]).toEqual(['Twice']);
  expect(await readLines(typed.workbook, { ...table, name: 'Others' })).toBeNull();
});

test('a line that nobody typed into is blank; a formula in an input, or a cell beside it, is not nothing', async () => {
  await fill([{}]);
  expect((await read()).lines.map(({ isBlank }) => isBlank)).toEqual([true]);
  await typed.type('Lines', firstRow, 3, [[{ v: 'mine' }]]);
  expect((await read()).lines.map(({ isBlank }) => isBlank)).toEqual([false]);
  await typed.type('Lines', firstRow, 3, [[{ v: null }]]);
  await typed.type('Lines', firstRow, 1, [[{ f: '=5+5' }]]);
  expect((await read()).lines.map(({ isBlank }) => isBlank)).toEqual([false]);
});

describe('lines with typed-over cells and own columns', () => {
  beforeEach(async () => {
    await fill();
    // Typed over our formula; a formula of one's own in an input; a column of one's own beside the table.
    await typed.type('Lines', firstRow, 2, [[{ v: 'by hand' }]]);
    await typed.type('Lines', firstRow + 1, 1, [[{ f: '=LEN(A6)*5' }]]);
    await typed.type('Lines', firstRow, 3, [[{ f: '=B5+1' }], [{ f: '=B6+1' }], [{ v: 'note' }]]);
  });
  const asFilled = [
    ['north', 10, 'by hand', 11],
    ['007', 15, 30, 16],
    ['south', 30, 60, 'note'],
  ];

  test('change places, and back', async () => {
    expect(await lines()).toEqual(asFilled);
    await arrange((there) => swapLines(there, 0, 1));
    expect(await lines()).toEqual([asFilled[1], asFilled[0], asFilled[2]]);
    const { formulas } = (await read()).cells;
    expect(formulas[0]?.[1]).toBe('=LEN(A5)*5');
    expect(formulas.map((line) => line[3])).toEqual(['=B5+1', '=B6+1', null]);
    await arrange((there) => swapLines(there, 0, 1));
    expect(await lines()).toEqual(asFilled);
    expect((await read()).cells.formulas[1]?.[1]).toBe('=LEN(A6)*5');
  });

  test('a line taken out leaves a blank one at the end, which the next new line fills', async () => {
    await arrange((there) => removeLine(there, 0));
    expect((await lines()).slice(0, 2)).toEqual([asFilled[1], asFilled[2]]);
    const there = await read();
    expect(countUsed(there)).toBe(2);
    expect(there.lines[2]?.values['Name']).toBeNull();
    expect(there.lines[2]?.formulas.has('Twice')).toBe(true);
    await arrange((now) => addLines(now, [{ Name: 'west', Length: 4 }, { Name: 'east' }]));
    expect((await lines()).map((line) => line.slice(0, 3))).toEqual([
      ['007', 15, 30],
      ['south', 30, 60],
      ['west', 4, 8],
      ['east', null, expect.anything()],
    ]);
    expect((await read()).area.rows).toBe(5);
  });

  test('a copy comes right below, whole, under its own name', async () => {
    await arrange((there) => copyLine(there, 1, [{ Name: '007 2' }]));
    expect(await lines()).toEqual([asFilled[0], asFilled[1], ['007 2', 25, 50, 26], asFilled[2]]);
    // Typed as a text, it is one still.
    expect((await read()).lines[1]?.values['Name']).toBe('007');
  });

  test('inputs are put into a line and nothing else is touched', async () => {
    const there = await read();
    const planned = linesAsTheyAre(there).map((line, i) =>
      i === 2 ? { ...line, put: { Length: null } } : line,
    );
    const { cells, tableRows } = arrangeLines(there, table, planned, 'put');
    expect(cells).toEqual([{ sheet: 'Lines', row: firstRow + 2, column: 1, contents: [[null]] }]);
    expect(tableRows).toEqual([]);
  });

  test('a formula in a column beside the table goes on into new lines', async () => {
    await typed.type('Lines', firstRow + 2, 3, [[{ f: '=B7+1' }]]);
    await arrange((there) => addLines(there, [{ Name: 'west', Length: 4 }]));
    expect((await lines())[3]).toEqual(['west', 4, 8, 5]);
  });

  test('each is one undo step', async () => {
    for (const plan of [
      (there: LinesRead) => swapLines(there, 0, 2),
      (there: LinesRead) => removeLine(there, 1),
      (there: LinesRead) => copyLine(there, 0, [{ Name: 'a' }, { Name: 'b' }]),
      (there: LinesRead) => addLines(there, [{ Name: 'west', Length: 4 }]),
    ]) {
      const before = (await read()).cells;
      const steps = typed.undoSteps();
      await arrange(plan);
      expect(typed.undoSteps()).toBe(steps + 1);
      await typed.workbook.undo();
      expect((await read()).cells).toEqual(before);
    }
  });

  test('refuses when somebody typed since the lines were read', async () => {
    const there = await read();
    await typed.type('Lines', firstRow, 0, [[{ v: 'mine' }]]);
    const before = await lines();
    await expect(
      typed.workbook.apply(arrangeLines(there, table, removeLine(there, 0), 'late')),
    ).rejects.toMatchObject({ problem: { code: 'changedMeanwhile', sheet: 'Lines' } });
    expect(await lines()).toEqual(before);
  });
});

test('many lines are written in few rectangles, our formulas not at all', async () => {
  await fill(Array.from({ length: 300 }, (_, i) => ({ Name: `n${i}`, Length: i })));
  const there = await read();
  const { cells } = arrangeLines(there, table, removeLine(there, 3), 'taken out');
  expect(
    cells.map(({ row, column, contents }) => [row, column, contents.length, contents[0]?.length]),
  ).toEqual([[firstRow + 3, 0, 297, 2]]);
});
