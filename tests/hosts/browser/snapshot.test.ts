/** A workbook opened from its snapshot is the workbook that was left. */
import { IResourceLoaderService } from '@univerjs/core';
import { DataValidationModel } from '@univerjs/data-validation';
import { ConditionalFormattingRuleModel } from '@univerjs/sheets-conditional-formatting';
import { ISheetDrawingService } from '@univerjs/sheets-drawing';
import { SheetRangeThemeModel } from '@univerjs/sheets';
import { SheetsNoteModel } from '@univerjs/sheets-note';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { change, newSheet, plots, png, readWhole, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('a workbook opened from its snapshot', () => {
  let left: TypedWorkbook;
  let opened: TypedWorkbook | null = null;
  beforeEach(async () => {
    left = openTyped();
    const picture = {
      name: 'dot',
      sheet: 'Plots',
      row: 8,
      column: 0,
      png,
      widthPx: 64,
      heightPx: 48,
      altText: 'A dot',
    };
    await left.workbook.apply(change({ newSheets: [plots, newSheet("Joe's")], pictures: [picture] }));
    await left.type('Kitchen', 3, 0, [[{ v: '=2+2', t: 1 }], [{ f: '=SUM(Plots[Length])' }]]);
    await left.type('Plots', 5, 0, [[{ v: 'ten' }, { v: 'ten' }]]);
    await left.workbook.settle(settleMs);
  });
  afterEach(() => {
    left.workbook.dispose();
    opened?.workbook.dispose();
  });
  const reopen = async (): Promise<TypedWorkbook> => {
    opened = openTyped(undefined, undefined, left.workbook.snapshot());
    await opened.workbook.settle(settleMs);
    return opened;
  };

  test('has the same cells, formulas, results and marks, and says again what an error says', async () => {
    const before = await readWhole(left.workbook);
    expect(JSON.stringify(before)).toContain('Length must be a number');
    expect(await readWhole((await reopen()).workbook)).toEqual(before);
  });

  test('has the same named cells, tables, lists, rules, notes, pictures, looks and frozen rows', async () => {
    const parts = async ({ workbook, engine, idOf }: TypedWorkbook): Promise<object> => {
      const sheet = idOf('Plots');
      const config = engine.workbook.getSheetBySheetId(sheet)?.getConfig();
      const { unitId } = engine;
      const tableRange = { startRow: 2, endRow: 5, startColumn: 0, endColumn: 2 };
      return {
        name: await workbook.locate('SEASON_YEAR'),
        table: await workbook.readTable('Plots'),
        lists: engine.accessor.get(DataValidationModel).getRules(unitId, sheet),
        rules: engine.accessor.get(ConditionalFormattingRuleModel).getSubunitRules(unitId, sheet),
        notes: [...(engine.accessor.get(SheetsNoteModel).getSheetNotes(unitId, sheet)?.values() ?? [])],
        pictures: Object.values(engine.accessor.get(ISheetDrawingService).getDrawingData(unitId, sheet)).map(
          (picture) => ({ ...picture, unitId: picture.unitId === unitId }),
        ),
        theme: engine.accessor
          .get(SheetRangeThemeModel)
          .getRegisteredRangeThemeStyle({ unitId, subUnitId: sheet, range: tableRange }),
        styles: engine.workbook.getSnapshot().styles,
        freeze: config?.freeze,
        widths: config?.columnData,
        heights: config?.rowData,
      };
    };
    const before = await parts(left);
    expect(before).toMatchObject({
      lists: [{}],
      rules: [{}],
      notes: [{}],
      pictures: [{ unitId: true }],
      theme: 'table-as-its-cells',
      freeze: { ySplit: 3 },
    });
    expect(await parts(await reopen())).toEqual(before);
  });

  test('was written with each formula once, or as it was kept at first with each written out', async () => {
    const before = await readWhole(left.workbook);
    const text = left.workbook.snapshot();
    const twice = before.sheets
      .flatMap(({ cells }) => cells?.formulas.flat() ?? [])
      .find((f) => f?.includes('DOUBLE'));
    expect(text.split(JSON.stringify(twice).slice(1, -1))).toHaveLength(2);
    const first = JSON.stringify(
      left.engine.accessor.get(IResourceLoaderService).saveUnit(left.engine.unitId),
    );
    opened = openTyped(undefined, undefined, first);
    await opened.workbook.settle(settleMs);
    expect(await readWhole(opened.workbook)).toEqual(before);
  });

  test('has nothing to undo: what filled it cannot be taken back by a slip', async () => {
    const { workbook } = await reopen();
    const before = await readWhole(workbook);
    expect(await workbook.undo()).toBeNull();
    expect(await readWhole(workbook)).toEqual(before);
  });

  test('grows its table, and calculates on', async () => {
    const { workbook, type } = await reopen();
    await type('Plots', 6, 0, [[{ v: 'south' }, { v: 60 }]]);
    await workbook.settle(settleMs);
    expect(await workbook.readTable('Plots')).toMatchObject({
      area: { rows: 5 },
      rows: [{}, {}, {}, ['south', 60, 120]],
    });
    const sum = await workbook.read({ sheet: 'Kitchen', row: 4, column: 0, rows: 1, columns: 1 });
    expect(sum.values).toEqual([[200]]);
  });

  test('paints no stripes of the engine’s own over lines that come later', async () => {
    const { workbook, engine, idOf, type } = await reopen();
    for (const row of [6, 7, 8]) await type('Plots', row, 1, [[{ v: 60 }]]);
    await workbook.settle(settleMs);
    const looks = [5, 6, 7, 8].map((row) =>
      engine.workbook.getSheetBySheetId(idOf('Plots'))?.getComposedCellStyle(row, 2),
    );
    expect(new Set(looks.map((look) => JSON.stringify(look))).size).toBe(1);
    expect(looks[0]?.bg).toBeUndefined();
  });

  test.each(['', '{', 'null', '[]', '{"id":"workbook"}', '{"id":"workbook","sheetOrder":["a"],"sheets":{}}'])(
    'a text that is none is refused: %s',
    (text) => {
      expect(() => openTyped(undefined, undefined, text)).toThrow();
    },
  );

  test('is due after what is written and what comes of it, not at each turn of a calculation', async () => {
    const told = async (formulas: number): Promise<number> => {
      await left.type(
        'Kitchen',
        10,
        0,
        Array.from({ length: formulas }, () => [{ f: '=B1+1' }]),
      );
      await left.workbook.settle(settleMs);
      let count = 0;
      const stop = left.workbook.onMutation(() => (count += 1));
      await left.type('Kitchen', 0, 1, [[{ v: formulas }]]);
      await left.workbook.settle(settleMs);
      stop();
      return count;
    };
    const forOne = await told(1);
    expect(forOne).toBeGreaterThan(1);
    expect(await told(150)).toBe(forOne);
  });
});
