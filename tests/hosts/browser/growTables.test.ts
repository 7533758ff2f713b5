import { DataValidationModel } from '@univerjs/data-validation';
import { SheetsDataValidationValidatorService } from '@univerjs/sheets-data-validation';
import { InsertRowCommand, MoveRangeCommand, RemoveRowCommand } from '@univerjs/sheets';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  change,
  formulaSheet,
  plots,
  readWhole,
  settleMs,
  sumOfLengths,
} from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('a growing table', () => {
  let typed: TypedWorkbook;
  beforeEach(async () => {
    typed = openTyped();
    await typed.workbook.apply(
      change({ newSheets: [plots, formulaSheet('Totals', [[{ compute: sumOfLengths }]])] }),
    );
    await typed.workbook.settle(settleMs);
  });
  afterEach(() => typed.workbook.dispose());

  const table = async () => {
    await typed.workbook.settle(settleMs);
    return typed.workbook.readTable('Plots');
  };
  const total = async () =>
    (await typed.workbook.read({ sheet: 'Totals', row: 0, column: 0, rows: 1, columns: 1 })).values[0]?.[0];

  test('takes in a row typed under it, with its formula, in one undo step', async () => {
    const before = await readWhole(typed.workbook);
    const steps = typed.undoSteps();
    await typed.type('Plots', 5, 1, [[{ v: 60 }]]);
    expect(typed.undoSteps()).toBe(steps + 1);
    expect(await table()).toMatchObject({
      area: { rows: 4 },
      rows: [
        ['north', 100, 200],
        ['007', 40, 80],
        [null, 60, 120],
      ],
    });
    expect(await total()).toBe(200);
    const formulas = await typed.workbook.read({ sheet: 'Plots', row: 5, column: 0, rows: 1, columns: 3 });
    expect(formulas.formulas).toEqual([[null, null, '=CUCURBIT.TEST.DOUBLE(Plots[[#This Row],[Length]])']]);
    const after = await readWhole(typed.workbook);

    await typed.workbook.undo();
    expect(await readWhole(typed.workbook)).toEqual(before);
    await typed.workbook.redo();
    expect(await readWhole(typed.workbook)).toEqual(after);
    await typed.workbook.undo();
    expect(await readWhole(typed.workbook)).toEqual(before);
  });

  test('keeps formulas between sheets awake, and leaves none of the old ones behind', async () => {
    const complaints = vi.spyOn(console, 'error');
    await typed.type('Totals', 3, 0, [[{ f: '=Plots!B4*10' }]]);
    await typed.type('Plots', 0, 4, [[{ f: '=Totals!A6+1' }]]);
    await table();
    await typed.type('Plots', 5, 1, [[{ v: 60 }]]);
    await table();
    await typed.type('Plots', 3, 1, [[{ v: 7 }]]);
    await typed.type('Totals', 4, 0, [[{ f: '=A7' }], [{ f: '=A7' }], [{ v: 5 }]]);
    await table();
    const one = (sheet: string, row: number, column: number) =>
      typed.workbook.read({ sheet, row, column, rows: 1, columns: 1 });
    expect((await one('Totals', 3, 0)).values).toEqual([[70]]);
    expect((await one('Plots', 0, 4)).values).toEqual([[6]]);
    expect(complaints.mock.calls).toEqual([]);
    complaints.mockRestore();
  });

  test('grows again after an undo, and row by row', async () => {
    await typed.type('Plots', 5, 0, [[{ v: 'a' }]]);
    await typed.workbook.undo();
    for (const row of [5, 6, 7]) await typed.type('Plots', row, 1, [[{ v: row }]]);
    expect((await table())?.rows.slice(2)).toEqual([
      [null, 5, 10],
      [null, 6, 12],
      [null, 7, 14],
    ]);
  });

  test('keeps text as it is typed under it', async () => {
    for (const [i, text] of ['007', '1e3', 'TRUE', '2026-05-02'].entries()) {
      await typed.type('Plots', 5 + i, 0, [[{ v: text }]]);
    }
    expect((await table())?.rows.slice(2).map(([name]) => name)).toEqual([
      '007',
      '1e3',
      'TRUE',
      '2026-05-02',
    ]);
  });

  test('takes in as many rows as are put under it at once', async () => {
    await typed.type('Plots', 5, 0, [
      [{ v: 'a' }, { v: 1 }],
      [{ v: '' }, { v: '' }],
      [{ v: 'c' }, { v: 3 }],
      [{ v: '' }, { v: '' }],
    ]);
    expect((await table())?.rows.slice(2)).toEqual([
      ['a', 1, 2],
      [null, null, { error: '#VALUE!', message: 'Length must be a number, for example 100.' }],
      ['c', 3, 6],
    ]);
  });

  test('leaves a computed cell that was put in by hand', async () => {
    await typed.type('Plots', 5, 0, [[{ v: 'a' }, { v: 1 }, { v: 99 }]]);
    expect((await table())?.rows[2]).toEqual(['a', 1, 99]);
  });

  test('calculates the lines that come, and of the others none but the last', async () => {
    const doubled = vi.fn((args: readonly unknown[]) => ({ value: Number(args[0]) * 2 }));
    typed.workbook.dispose();
    typed = openTyped(undefined, [{ id: 'TEST.DOUBLE', run: doubled }]);
    await typed.workbook.apply(change({ newSheets: [plots] }));
    await typed.type('Plots', 5, 0, [
      [{ v: 'c' }, { v: 3 }],
      [{ v: 'd' }, { v: 4 }],
      [{ v: 'e' }, { v: 5 }],
    ]);
    await typed.workbook.settle(settleMs);
    const calculatedBy = async (edit: () => Promise<unknown>): Promise<unknown[]> => {
      doubled.mockClear();
      await edit();
      await typed.workbook.settle(settleMs);
      return doubled.mock.calls.map(([[length]]) => length);
    };
    const two = [
      [{ v: 'f' }, { v: 6 }],
      [{ v: 'g' }, { v: 7 }],
    ];
    expect(await calculatedBy(() => typed.type('Plots', 8, 0, two))).toEqual([5, 6, 7]);
    expect(await calculatedBy(() => typed.workbook.undo())).toEqual([5]);
    expect(await calculatedBy(() => typed.workbook.redo())).toEqual([5, 6, 7]);
  });

  test('stays as it is when the edit is elsewhere', async () => {
    await typed.type('Plots', 6, 0, [[{ v: 'two below' }]]);
    await typed.type('Plots', 5, 3, [[{ v: 'beside' }]]);
    await typed.type('Plots', 5, 0, [[{ v: '' }]]);
    await typed.type('Totals', 5, 0, [[{ v: 'another sheet' }]]);
    expect((await table())?.area.rows).toBe(3);
  });

  test('does not take in somebody’s cells', async () => {
    await typed.type('Plots', 6, 0, [[{ v: 'mine' }]]);
    await typed.type(
      'Plots',
      5,
      0,
      [
        [{ v: 'a' }, { v: 1 }],
        [{ v: 'b' }, { v: 2 }],
      ].slice(0, 1),
    );
    expect((await table())?.rows).toHaveLength(3);
    await typed.type('Plots', 6, 1, [[{ v: 5 }]]);
    expect((await table())?.rows).toHaveLength(3);
  });

  test('continues the look and the pick list of its last row', async () => {
    const sheetId = typed.idOf('Plots');
    const lists = () =>
      typed.engine.accessor
        .get(DataValidationModel)
        .getRules(typed.engine.unitId, sheetId)
        .map(({ ranges }) => ranges[0].endRow);
    const style = (row: number, column: number) =>
      typed.engine.workbook.getSheetBySheetId(sheetId)?.getCellMatrix().getValue(row, column)?.s;
    expect(lists()).toEqual([4]);
    await typed.type('Plots', 5, 1, [[{ v: 1 }]]);
    expect(lists()).toEqual([5]);
    for (const column of [0, 1, 2]) expect(style(5, column)).toBe(style(4, column));
    await typed.workbook.undo();
    expect(lists()).toEqual([4]);
    await typed.workbook.redo();
    expect(lists()).toEqual([5]);
  });

  test('has no pick list held to when its workbook was put away meanwhile', async () => {
    const { accessor, unitId } = typed.engine;
    const validator = accessor.get(SheetsDataValidationValidatorService);
    const sheetId = typed.idOf('Plots');
    const column = [{ startRow: 3, endRow: 4, startColumn: 0, endColumn: 0 }];
    expect((await validator.validatorRanges(unitId, sheetId, column)).flat().length).toBeGreaterThan(0);
    typed.workbook.dispose();
    expect(await validator.validatorRanges(unitId, sheetId, column)).toEqual([]);
  });

  test('fills the formulas of a row inserted into it when the row gets its first value', async () => {
    const { unitId } = typed.engine;
    await typed.run(InsertRowCommand.id, {
      unitId,
      subUnitId: typed.idOf('Plots'),
      range: { startRow: 4, endRow: 4, startColumn: 0, endColumn: 2 },
      direction: 0,
    });
    expect((await table())?.area.rows).toBe(4);
    await typed.type('Plots', 4, 1, [[{ v: 8 }]]);
    expect((await table())?.rows).toEqual([
      ['north', 100, 200],
      [null, 8, 16],
      ['007', 40, 80],
    ]);
    expect(await total()).toBe(148);
  });

  test('takes in cells that are moved under it', async () => {
    await typed.type('Plots', 12, 0, [[{ v: 'moved' }, { v: 9 }]]);
    await typed.run(MoveRangeCommand.id, {
      fromRange: { startRow: 12, endRow: 12, startColumn: 0, endColumn: 1 },
      toRange: { startRow: 5, endRow: 5, startColumn: 0, endColumn: 1 },
      fromSubUnitId: typed.idOf('Plots'),
      toSubUnitId: typed.idOf('Plots'),
      fromUnitId: typed.engine.unitId,
      toUnitId: typed.engine.unitId,
    });
    expect((await table())?.rows[2]).toEqual(['moved', 9, 18]);
  });

  test('shrinks with a row that is deleted, and comes back with undo', async () => {
    const before = await readWhole(typed.workbook);
    // The engine's table listens to deletions on the sheet in front.
    await typed.workbook.reveal({ sheet: 'Plots', row: 3, column: 0, rows: 1, columns: 1 });
    await typed.run(RemoveRowCommand.id, {
      unitId: typed.engine.unitId,
      subUnitId: typed.idOf('Plots'),
      range: { startRow: 3, endRow: 3, startColumn: 0, endColumn: 25 },
    });
    expect((await table())?.rows).toEqual([['007', 40, 80]]);
    expect(await total()).toBe(40);
    await typed.workbook.undo();
    expect(await readWhole(typed.workbook)).toEqual(before);
  });
});
