/** Somebody deletes one of our sheets, or a part of one: filling makes it again, or says what is missing. */
import { RemoveColCommand, RemoveRowCommand, RemoveSheetCommand } from '@univerjs/sheets';
import { afterEach, describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { demoFilling } from '../../src/templates/demoGarden';
import { allTemplates } from '../../src/templates/sheets';
import { fillSheets, type FillReport } from '../../src/workbook/fillSheets';
import type { LiveWorkbook, ReadValue } from '../../src/workbook/port';
import { deleteSheet } from '../excelStandIn/book';
import { openStandIn } from '../excelStandIn/openStandIn';
import { sheetNamed } from '../hosts/excel/openTestWorkbook';
import { openTyped, type TypedWorkbook } from '../hosts/browser/typing';

const registered = [...functions.values()];
const settleMs = 60_000;

interface Opened {
  readonly workbook: LiveWorkbook;
  /** As somebody does it at the sheet's tab. */
  remove(sheet: string): Promise<unknown>;
}

const open: (() => void)[] = [];
afterEach(() => {
  for (const close of open.splice(0)) close();
});

function openBrowser(): Opened & { readonly typed: TypedWorkbook } {
  const typed = openTyped(undefined, registered);
  open.push(() => typed.workbook.dispose());
  const { workbook, engine, idOf, run } = typed;
  return {
    typed,
    workbook,
    remove: (sheet) => run(RemoveSheetCommand.id, { unitId: engine.unitId, subUnitId: idOf(sheet) }),
  };
}

function openExcel(): Opened {
  const standIn = openStandIn({ firstSheet: 'Kitchen', functions: registered });
  open.push(() => standIn.close());
  return {
    workbook: openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.' }),
    remove: async (sheet) => deleteSheet(standIn.book, sheetNamed(standIn, sheet)),
  };
}

const fill = (workbook: LiveWorkbook): Promise<FillReport> => fillSheets(workbook, demoFilling, 'fill');

/** Every value of our sheets, and where each named cell is. */
async function wholeOf(workbook: LiveWorkbook) {
  expect(await workbook.settle(settleMs)).toEqual([]);
  const cells: Record<string, readonly (readonly ReadValue[])[]> = {};
  for (const { name, mark, used } of await workbook.sheets()) {
    if (mark !== null && used !== null) cells[name] = (await workbook.read(used)).values;
  }
  const lines = allTemplates.flatMap((template) => template.form.map((line) => line.name));
  const names = await Promise.all(lines.map(async (name) => [name, await workbook.locate(name)] as const));
  return { cells, names: Object.fromEntries(names) };
}

const sheets = allTemplates.map((template) => template.sheet);

describe.each([
  ['browser', openBrowser],
  ['excel', openExcel],
] as const)('in the %s host', (_, openHost) => {
  test.each(['Season', 'Crops'])(
    '%s, deleted, is made again, and the other sheets calculate with it',
    async (sheet) => {
      const { workbook, remove } = openHost();
      await fill(workbook);
      const before = await wholeOf(workbook);
      await remove(sheet);
      const report = await fill(workbook);
      expect(report.made).toEqual([sheet]);
      expect(report.refreshed).toEqual(sheets.filter((each) => each !== sheet));
      expect(await wholeOf(workbook)).toEqual(before);
    },
  );

  test('all of them, deleted one after the other, are made again', async () => {
    const { workbook, remove } = openHost();
    await fill(workbook);
    const before = await wholeOf(workbook);
    for (const sheet of sheets) await remove(sheet);
    expect((await fill(workbook)).made).toEqual(sheets);
    expect(await wholeOf(workbook)).toEqual(before);
  });
});

test('making it again and deleting it are undone and done again', async () => {
  const { workbook, typed, remove } = openBrowser();
  await fill(workbook);
  const states = [await wholeOf(workbook)];
  await remove('Season');
  states.push(await wholeOf(workbook));
  await fill(workbook);
  states.push(await wholeOf(workbook));
  for (const index of [1, 0]) {
    await typed.workbook.undo();
    expect((await wholeOf(workbook)).names).toEqual(states[index]?.names);
  }
  for (const index of [1, 2]) {
    await typed.workbook.redo();
    expect((await wholeOf(workbook)).names).toEqual(states[index]?.names);
  }
  expect((await wholeOf(workbook)).cells).toEqual(states[2]?.cells);
});

describe('a part of a sheet that is gone is named, and nothing is written', () => {
  const row = (startRow: number) => ({ startRow, endRow: startRow, startColumn: 0, endColumn: 99 });
  const column = (startColumn: number) => ({ startRow: 0, endRow: 99, startColumn, endColumn: startColumn });

  test.each([
    [
      'the line of a frost date',
      'Season',
      RemoveRowCommand.id,
      row(6),
      'sheetDamaged',
      'Last frost of spring',
    ],
    ['the headers of a table', 'Plots', RemoveRowCommand.id, row(6), 'sheetDamaged', 'Plots'],
    ['a column of inputs', 'Plots', RemoveColCommand.id, column(3), 'columnGone', 'Length'],
    ['a column of results', 'Plots', RemoveColCommand.id, column(7), 'columnGone', 'Plants'],
  ])('%s', async (_, sheet, command, range, code, missing) => {
    const { workbook, typed } = openBrowser();
    await fill(workbook);
    const at = { sheet, row: range.startRow, column: range.startColumn, rows: 1, columns: 1 };
    await workbook.reveal(at);
    await typed.run(command, { unitId: typed.engine.unitId, subUnitId: typed.idOf(sheet), range });
    const before = await wholeOf(workbook);
    await expect(fill(workbook)).rejects.toMatchObject({
      problem: { code, sheet, missing },
    });
    expect(await wholeOf(workbook)).toEqual(before);
  });
});
