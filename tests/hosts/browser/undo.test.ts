import { ICommandService, IPermissionService } from '@univerjs/core';
import { DataValidationModel } from '@univerjs/data-validation';
import { SetDefinedNameMutation } from '@univerjs/engine-formula';
import { InsertSheetMutation, SetRangeValuesMutation, WorksheetEditPermission } from '@univerjs/sheets';
import { ConditionalFormattingRuleModel } from '@univerjs/sheets-conditional-formatting';
import { ISheetDrawingService, SetDrawingApplyMutation } from '@univerjs/sheets-drawing';
import { SheetsNoteModel } from '@univerjs/sheets-note';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  change,
  expectRefusal,
  newSheet,
  plotRow,
  plots,
  png,
  readWhole,
  settleMs,
} from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('a change is one undo step', () => {
  let typed: TypedWorkbook;
  beforeEach(async () => {
    typed = openTyped();
    await typed.type('Kitchen', 0, 0, [[{ v: 'beans' }, { v: 42 }]]);
  });
  afterEach(() => typed.workbook.dispose());

  /** What hangs on sheets beside their cells. */
  const attachments = () => {
    const { accessor, unitId, workbook } = typed.engine;
    return workbook.getSheets().map((sheet) => ({
      notes: [...(accessor.get(SheetsNoteModel).getSheetNotes(unitId, sheet.getSheetId())?.values() ?? [])],
      lists: accessor.get(DataValidationModel).getRules(unitId, sheet.getSheetId()),
      rules: accessor.get(ConditionalFormattingRuleModel).getSubunitRules(unitId, sheet.getSheetId()) ?? [],
      drawings: Object.keys(
        accessor.get(ISheetDrawingService).getDrawingData(unitId, sheet.getSheetId()) ?? {},
      ),
    }));
  };
  const whole = async () => structuredClone({ cells: await readWhole(typed.workbook), more: attachments() });

  const picture = {
    name: 'dot',
    sheet: 'Plots',
    row: 8,
    column: 0,
    png,
    widthPx: 50,
    heightPx: 60,
    altText: 'a dot',
  };
  const first = change({ newSheets: [plots], pictures: [picture] });
  const second = change({
    newSheets: [newSheet('Beds', { names: { OTHER_NAME: [0, 0] } })],
    cells: [{ sheet: 'Kitchen', row: 0, column: 0, contents: [[null, 43, '007']] }],
    tableRows: [{ table: 'Plots', rows: [plotRow('c', 3)] }],
    pictures: [{ ...picture, altText: 'another' }],
  });

  test('undone and done again, in any depth', async () => {
    const states = [await whole()];
    for (const each of [first, second]) {
      const steps = typed.undoSteps();
      await typed.workbook.apply(each);
      expect(typed.undoSteps()).toBe(steps + 1);
      states.push(await whole());
    }
    for (let round = 0; round < 2; round++) {
      for (const index of [1, 0]) {
        expect(await typed.workbook.undo()).toBe([first, second][index]?.title);
        expect(await whole()).toEqual(states[index]);
      }
      for (const index of [1, 2]) {
        expect(await typed.workbook.redo()).toBe([first, second][index - 1]?.title);
        expect(await whole()).toEqual(states[index]);
      }
    }
    // Below it lies what was typed before, which has no title.
    const titles: unknown[] = [];
    for (let i = 0; i < 4; i++) titles.push(await typed.workbook.undo());
    expect(titles).toEqual([second.title, first.title, '', null]);
    const read = await typed.workbook.read({ sheet: 'Kitchen', row: 0, column: 0, rows: 1, columns: 2 });
    expect(read.values).toEqual([[null, null]]);
  });

  test('a change that fails leaves no step and no trace, and what can be done again stays so', async () => {
    let fail = false;
    typed.workbook.dispose();
    typed = openTyped((step) => {
      if (fail && step === 'tableRange') throw new Error('a fault made by the test');
    });
    await typed.workbook.apply(first);
    await typed.type('Kitchen', 0, 0, [[{ v: 'x' }]]);
    await typed.workbook.undo();
    const before = await whole();
    const steps = typed.undoSteps();
    fail = true;
    await expect(typed.workbook.apply(second)).rejects.toMatchObject({ problem: { code: 'failed' } });
    expect(typed.undoSteps()).toBe(steps);
    expect(await whole()).toEqual(before);
    await typed.workbook.redo();
    const read = await typed.workbook.read({ sheet: 'Kitchen', row: 0, column: 0, rows: 1, columns: 1 });
    expect(read.values).toEqual([['x']]);
  });

  test.each([
    ['before', SetDefinedNameMutation.id],
    ['after', SetDefinedNameMutation.id],
    ['before', InsertSheetMutation.id],
    ['after', InsertSheetMutation.id],
    ['after', SetRangeValuesMutation.id],
    ['after', SetDrawingApplyMutation.id],
  ])('the engine fails %s it did %s: nothing is left of the change', async (when, id) => {
    await typed.workbook.apply(first);
    const before = await whole();
    const commands = typed.engine.accessor.get(ICommandService);
    let isArmed = true;
    const fail = (command: { id: string }): void => {
      if (!isArmed || command.id !== id) return;
      isArmed = false;
      throw new Error('a fault made by the test');
    };
    const listening =
      when === 'before' ? commands.beforeCommandExecuted(fail) : commands.onCommandExecuted(fail);
    await expect(typed.workbook.apply(second)).rejects.toMatchObject({
      problem: { code: 'failed', action: 'test' },
    });
    listening.dispose();
    expect(isArmed).toBe(false);
    expect(await whole()).toEqual(before);
    await typed.workbook.apply(second);
  });

  test('a picture keeps its alt text', async () => {
    await typed.workbook.apply(first);
    const { accessor, unitId } = typed.engine;
    const drawings = accessor.get(ISheetDrawingService).getDrawingData(unitId, typed.idOf('Plots'));
    expect(Object.values(drawings)).toMatchObject([
      { description: 'a dot', transform: { width: 50, height: 60 } },
    ]);
  });
});

describe('a workbook with a person in front of it', () => {
  let typed: TypedWorkbook;
  beforeEach(async () => {
    typed = openTyped();
    await typed.workbook.apply(change({ newSheets: [plots] }));
    await typed.workbook.settle(settleMs);
  });
  afterEach(() => typed.workbook.dispose());

  test('shows what is revealed and tells what is selected', async () => {
    const heard: unknown[] = [];
    const stop = typed.workbook.onSelection((area) => heard.push(area));
    const area = { sheet: 'Plots', row: 3, column: 1, rows: 2, columns: 1 };
    await typed.workbook.reveal(area);
    expect(await typed.workbook.selection()).toEqual(area);
    expect(heard).toEqual([area]);
    stop();
    await typed.workbook.reveal({ ...area, sheet: 'Kitchen' });
    expect(heard).toHaveLength(1);
    await expect(typed.workbook.reveal({ ...area, sheet: 'Cellar' })).rejects.toMatchObject({
      problem: { code: 'noSuchSheet', sheet: 'Cellar' },
    });
  });

  test('tells of a run of changes once, of the results too, and stops when asked', async () => {
    let told = 0;
    const stop = typed.workbook.onChange(() => (told += 1));
    const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 80));
    for (const value of [1, 2, 3]) await typed.type('Plots', 3, 1, [[{ v: value }]]);
    await soon();
    expect(told).toBe(1);
    await typed.workbook.settle(settleMs);
    await soon();
    expect(told).toBe(2);
    stop();
    await typed.type('Plots', 3, 1, [[{ v: 9 }]]);
    await soon();
    expect(told).toBe(2);
  });

  test('a locked sheet is listed as locked, and nothing is written to it', async () => {
    const { accessor, unitId } = typed.engine;
    const { id } = new WorksheetEditPermission(unitId, typed.idOf('Plots'));
    accessor.get(IPermissionService).updatePermissionPoint(id, false);
    expect((await typed.workbook.sheets()).map(({ locked }) => locked)).toEqual([false, true]);
    const refused = [
      change({ cells: [{ sheet: 'Plots', row: 0, column: 0, contents: [[1]] }] }),
      change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 3)] }] }),
    ];
    for (const each of refused) {
      await expectRefusal(typed.workbook, each, { code: 'sheetLocked', sheet: 'Plots' });
    }
  });

  test('what is undone in the editor of a cell, before the cell is written, is no edit of the workbook', async () => {
    let edits = 0;
    typed.workbook.onEdit(() => (edits += 1));
    typed.engine.undo.pushUndoRedo({ unitID: 'a cell editor', undoMutations: [], redoMutations: [] });
    expect(edits).toBe(0);
    await typed.type('Kitchen', 0, 0, [[{ v: 'peas' }]]);
    expect(edits).toBe(1);
    await typed.workbook.apply(change({ newSheets: [newSheet('Beds', {})] }));
    expect(edits).toBe(2);
  });
});
