/** What people do to a workbook between two clicks, and what they are told. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { hostErrorOf } from '../../../src/hosts/excel/askExcel';
import { english } from '../../../src/texts/english';
import { fillSheets, type FillRequest } from '../../../src/workbook/fillSheets';
import { demoSeason } from '../../../src/templates/demoGarden';
import { seasonTemplate } from '../../../src/templates/season';
import { HostError, type Change, type HostProblem } from '../../../src/workbook/port';
import { change, newSheet, plotRow, plots } from '../../contract/contractWorkbook';
import { deleteSheet } from '../../excelStandIn/book';
import { snapshotBook } from '../../excelStandIn/snapshotBook';
import { openTestWorkbook, sheetNamed, type TestWorkbook } from './openTestWorkbook';

async function expectRefusal({ standIn, workbook }: TestWorkbook, refused: Change, problem: HostProblem) {
  const before = snapshotBook(standIn.book);
  const error = await workbook.apply(refused).then(
    () => null,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(HostError);
  expect((error as HostError).problem).toEqual(problem);
  expect(english.pane.problems[problem.code]).not.toBe('');
  standIn.book.isCellBeingEdited = false;
  expect(snapshotBook(standIn.book)).toEqual(before);
}

const typing = change({ cells: [{ sheet: 'kitchen', row: 0, column: 0, contents: [['x']] }] });

describe('a change is refused, and nothing is written,', () => {
  test('in a protected sheet', async () => {
    const opened = openTestWorkbook();
    await opened.workbook.apply(change({ newSheets: [plots] }));
    sheetNamed(opened.standIn, 'Kitchen').isProtected = true;
    sheetNamed(opened.standIn, 'Plots').isProtected = true;
    await expectRefusal(opened, typing, { code: 'sheetLocked', sheet: 'Kitchen' });
    const rows = change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 1)] }] });
    await expectRefusal(opened, rows, { code: 'sheetLocked', sheet: 'Plots' });
    expect((await opened.workbook.sheets()).map(({ locked }) => locked)).toEqual([true, true]);
    await opened.workbook.apply(change({ newSheets: [newSheet('More')] }));
  });

  test('in a protected workbook', async () => {
    const opened = openTestWorkbook();
    opened.standIn.book.isProtected = true;
    await expectRefusal(opened, change({ newSheets: [plots] }), { code: 'workbookLocked' });
    await expectRefusal(opened, typing, { code: 'workbookLocked' });
  });

  test('in a workbook that counts its days from 1904', async () => {
    const opened = openTestWorkbook();
    opened.standIn.book.countsFrom1904 = true;
    await expectRefusal(opened, change({ newSheets: [plots] }), { code: 'daysFrom1904' });
    await expectRefusal(opened, typing, { code: 'daysFrom1904' });
    opened.standIn.book.countsFrom1904 = false;
    await opened.workbook.apply(change({ newSheets: [plots] }));
  });

  test('while a cell is being edited', async () => {
    const opened = openTestWorkbook();
    opened.standIn.book.isCellBeingEdited = true;
    await expectRefusal(opened, change({ newSheets: [plots] }), { code: 'cellBeingEdited' });
    await opened.workbook.apply(change({ newSheets: [plots] }));
  });

  test('where somebody typed meanwhile', async () => {
    const opened = openTestWorkbook();
    const stamp = await opened.workbook.stamp('Kitchen');
    opened.standIn.type(opened.kitchen, 7, 3, 'typed');
    const refused = { ...typing, expect: [{ sheet: 'Kitchen', stamp }] };
    await expectRefusal(opened, refused, { code: 'changedMeanwhile', sheet: 'Kitchen' });
  });

  test('under a table that shows totals', async () => {
    const opened = openTestWorkbook();
    await opened.workbook.apply(change({ newSheets: [plots] }));
    const [table] = opened.standIn.book.tables;
    if (table !== undefined) table.showTotals = true;
    const rows = change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 1)] }] });
    await expectRefusal(opened, rows, { code: 'cellsInTheWay', sheet: 'Plots', row: 4, column: 0 });
    expect((await opened.workbook.readTable('Plots'))?.rows.length).toBe(1);
  });

  test('for a sheet name that Excel does not take', async () => {
    const opened = openTestWorkbook();
    for (const name of ['a/b', "'quoted'", 'x'.repeat(32), '']) {
      const refused = change({ title: 'make it', newSheets: [newSheet(name)] });
      await expectRefusal(opened, refused, { code: 'failed', action: 'make it' });
    }
  });
});

describe('a sheet of ours', () => {
  const requests: FillRequest[] = [{ template: seasonTemplate, inputs: [], form: demoSeason }];

  async function filled(): Promise<TestWorkbook> {
    const opened = openTestWorkbook();
    await fillSheets(opened.workbook, requests, 'fill');
    return opened;
  }

  test('that is renamed is refreshed under its new name', async () => {
    const { standIn, workbook } = await filled();
    sheetNamed(standIn, 'Season').name = 'My season';
    expect((await fillSheets(workbook, requests, 'refresh')).refreshed).toEqual(['My season']);
    expect(standIn.book.sheets.map(({ name }) => name)).toEqual(['Kitchen', 'My season']);
  });

  test('is made beside somebody’s sheet of the same name', async () => {
    const { standIn, workbook, kitchen } = openTestWorkbook();
    kitchen.name = 'SEASON';
    expect((await fillSheets(workbook, requests, 'fill')).made).toEqual(['Season 2']);
    expect(standIn.book.sheets[0]).toBe(kitchen);
  });

  test('that has lost a named cell is called damaged, whether the name or the cell is gone', async () => {
    for (const isNameGone of [true, false]) {
      const { standIn, workbook } = await filled();
      const { names } = standIn.book;
      const index = names.findIndex(({ name }) => name === 'LAST_FROST');
      names.splice(
        index,
        1,
        ...(isNameGone ? [] : [{ name: 'LAST_FROST', visible: true, target: '=#REF!' }]),
      );
      await expect(fillSheets(workbook, requests, 'refresh')).rejects.toMatchObject({
        problem: { code: 'sheetDamaged', sheet: 'Season', missing: 'Last frost of spring' },
      });
    }
  });

  test('that lost its table to a deletion is no table any more', async () => {
    const { standIn, workbook } = openTestWorkbook();
    await workbook.apply(change({ newSheets: [plots] }));
    standIn.book.tables.splice(0);
    expect(await workbook.readTable('Plots')).toBeNull();
    await expect(
      workbook.apply(change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 1)] }] })),
    ).rejects.toMatchObject({ problem: { code: 'noSuchTable', table: 'Plots' } });
  });

  test('that was deleted leaves names of nothing, unless somebody gave one to something else', async () => {
    const { standIn, workbook } = await filled();
    deleteSheet(standIn.book, sheetNamed(standIn, 'Season'));
    expect(await workbook.locate('LAST_FROST')).toBeNull();
    const name = standIn.book.names.find((each) => each.name === 'FIRST_FROST');
    if (name !== undefined) name.target = '=46670';
    await expect(fillSheets(workbook, requests, 'fill')).rejects.toMatchObject({
      problem: { code: 'nameTaken', name: 'FIRST_FROST' },
    });
  });
});

test.each([
  ['AccessDenied', 'notWritable'],
  ['ConnectionFailure', 'noAnswer'],
  ['ApiNotFound', 'programTooOld'],
  ['InactiveWorkbook', 'notInFront'],
  ['ItemAlreadyExists', 'changedByOthers'],
  ['FilteredRangeConflict', 'cellsJoined'],
  ['ResponsePayloadSizeLimitExceeded', 'tooLarge'],
  ['GeneralException', 'failed'],
])('the library’s %s is told as %s', (code, told) => {
  const cause = Object.assign(new Error(code), { code });
  const error = hostErrorOf(cause, 'do it');
  expect(error.problem.code).toBe(told);
  expect(error.cause).toBe(cause);
});

/** Codes of the published types that only a fault of ours could bring, or that belong to what we do not use. */
const ours = [
  'DirtySupportingFormula',
  'EmptyChartSeries',
  'FormulaLengthExceedsLimit',
  'GeneralException',
  'InvalidArgument',
  'InvalidBinding',
  'InvalidOperation',
  'InvalidReference',
  'InvalidSelection',
  'NonBlankCellOffSheet',
  'OpenWorkbookLinksBlocked',
  'PowerQueryRefreshResourceChallenge',
  'RangeImageExceedsLimit',
  'RefreshWorkbookLinksBlocked',
  'UnsupportedFillType',
  'UnsupportedSheet',
];

test('every other code of the library has advice of its own', () => {
  const types = readFileSync(createRequire(import.meta.url).resolve('@types/office-js/index.d.ts'), 'utf8');
  const inExcel = types.slice(types.indexOf('declare namespace Excel {'));
  const [list = ''] = /enum ErrorCodes \{[^}]*\}/.exec(inExcel) ?? [];
  const codes = [...list.matchAll(/= "(\w+)"/g)].map(([, code = '']) => code);
  expect(codes.length).toBeGreaterThan(ours.length);
  const unworded = codes.filter((code) => {
    const { problem } = hostErrorOf(Object.assign(new Error(code), { code }), 'do it');
    return problem.code === 'failed';
  });
  expect(unworded).toEqual(ours);
});
