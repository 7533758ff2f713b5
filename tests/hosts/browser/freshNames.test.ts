import { AstTreeBuilder } from '@univerjs/engine-formula';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { CellContent, CellValue } from '../../../src/workbook/port';
import { change, plotRow, plots, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

/** The same sheet with other lengths, so that an answer from an earlier parsing shows. */
const plotsOf = (lengths: readonly number[]) => ({
  ...plots,
  blocks: plots.blocks.map((block) =>
    block.row === 0
      ? block
      : {
          ...block,
          contents: [
            block.contents[0] as CellContent[],
            ...lengths.map((length, i) => plotRow(`plot ${i}`, length)),
          ],
        },
  ),
});

describe('names and tables that come in', () => {
  let typed: TypedWorkbook;
  beforeEach(() => {
    typed = openTyped();
  });
  afterEach(() => typed.workbook.dispose());

  async function valuesAt(sheet: string, row: number, column: number, rows: number): Promise<CellValue[]> {
    expect(await typed.workbook.settle(settleMs)).toEqual([]);
    const read = await typed.workbook.read({ sheet, row, column, rows, columns: 1 });
    return read.values.map(([value]) => value as CellValue);
  }
  const fill = (lengths: readonly number[]) =>
    typed.workbook.apply(change({ newSheets: [plotsOf(lengths)] }));

  it('wake the formulas that somebody typed before they were there', async () => {
    await typed.type('Kitchen', 0, 0, [[{ f: '=SUM(Plots[Length])' }], [{ f: '=SEASON_YEAR+1' }]]);
    await typed.workbook.settle(settleMs);
    await fill([100, 40]);
    expect(await valuesAt('Kitchen', 0, 0, 2)).toEqual([140, 2027]);
  });

  it('are read afresh when they come a second time', async () => {
    await fill([100, 40]);
    expect(await valuesAt('Plots', 3, 2, 2)).toEqual([200, 80]);
    expect(await typed.workbook.undo()).toBe(true);
    await fill([7, 8]);
    expect(await valuesAt('Plots', 3, 2, 2)).toEqual([14, 16]);
    await typed.type('Kitchen', 0, 0, [[{ f: '=SUM(Plots[Twice])' }], [{ f: '=SEASON_YEAR' }]]);
    expect(await valuesAt('Kitchen', 0, 0, 2)).toEqual([30, 2026]);
    await typed.type('Plots', 0, 1, [[{ v: 2030 }]]);
    expect(await valuesAt('Kitchen', 1, 0, 1)).toEqual([2030]);
  });

  // Of a formula longer than 64 characters the engine keeps a hash, in which no name is found.
  it.each([
    ['short', '=SUM(Plots[Length])'],
    ['long', `=SUM(Plots[Length])+0*LEN("${'so that the formula is a long one '.repeat(2)}")`],
  ])('are read afresh in a %s formula when the table became longer after it was read', async (_, formula) => {
    await fill([100, 40]);
    await typed.type('Kitchen', 0, 0, [[{ f: formula }]]);
    await typed.type('Plots', 3, 1, [[{ v: 90 }]]);
    expect(await valuesAt('Kitchen', 0, 0, 1)).toEqual([130]);
    await typed.type('Plots', 5, 1, [[{ v: 8 }]]);
    expect(await valuesAt('Kitchen', 0, 0, 1)).toEqual([138]);
    await typed.type('Plots', 5, 1, [[{ v: 9 }]]);
    expect(await valuesAt('Kitchen', 0, 0, 1)).toEqual([139]);
  });

  it('come back with their answers on redo', async () => {
    await fill([100, 40]);
    await typed.workbook.settle(settleMs);
    await typed.workbook.undo();
    await typed.workbook.redo();
    expect(await valuesAt('Plots', 3, 2, 2)).toEqual([200, 80]);
  });

  it('make no more parsing the more rows a table becomes longer by', async () => {
    const parse = vi.spyOn(AstTreeBuilder.prototype, 'parse');
    const parsedFor = async (row: number, rows: number): Promise<number> => {
      await typed.workbook.settle(settleMs);
      parse.mockClear();
      await typed.type(
        'Plots',
        row,
        0,
        Array.from({ length: rows }, (_, i) => [{ v: `plot ${i}` }, { v: i }]),
      );
      expect(await valuesAt('Plots', row, 2, rows)).toEqual(Array.from({ length: rows }, (_, i) => 2 * i));
      return parse.mock.calls.length;
    };
    await fill([100, 40]);
    const forOne = await parsedFor(5, 1);
    expect(forOne).toBeGreaterThan(0);
    expect(await parsedFor(6, 30)).toBe(forOne);
    parse.mockRestore();
  });

  it('are those of their own workbook when another one has calculated in between', async () => {
    const other = openTyped();
    try {
      await fill([100, 40]);
      await typed.workbook.settle(settleMs);
      await other.workbook.apply(change({ newSheets: [plotsOf([7, 8])] }));
      await other.workbook.settle(settleMs);
      for (const { type, workbook } of [typed, other]) {
        await type('Kitchen', 0, 0, [[{ f: '=SUM(Plots[Twice])+SEASON_YEAR' }]]);
        await workbook.settle(settleMs);
      }
      await typed.type('Plots', 3, 1, [[{ v: 1 }]]);
      expect(await valuesAt('Kitchen', 0, 0, 1)).toEqual([82 + 2026]);
      await other.type('Plots', 3, 1, [[{ v: 2 }]]);
      await other.workbook.settle(settleMs);
      const { values } = await other.workbook.read({
        sheet: 'Kitchen',
        row: 0,
        column: 0,
        rows: 1,
        columns: 1,
      });
      expect(values).toEqual([[20 + 2026]]);
    } finally {
      other.workbook.dispose();
    }
  });
});
