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
    expect(await typed.workbook.undo()).toBe(change({}).title);
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

  it.each([
    ['calculated in between', async (both: TypedWorkbook[]) => both[0]?.workbook.settle(settleMs)],
    ['calculates at once', async () => undefined],
  ])('are those of their own workbook when another one of its sheets %s', async (_, wait) => {
    await fill([100, 40]);
    await typed.workbook.settle(settleMs);
    // Opened from what was kept: even its sheets are known by the same ids.
    const other = openTyped(undefined, undefined, typed.workbook.snapshot());
    try {
      const both = [typed, other];
      await Promise.all(both.map(({ workbook }) => workbook.settle(settleMs)));
      await other.type('Plots', 3, 1, [[{ v: 7 }], [{ v: 8 }], [{ v: 9 }]]);
      await Promise.all(both.map(({ workbook }) => workbook.settle(settleMs)));
      const formulas = [
        '=SUM(Plots[Twice])+SEASON_YEAR',
        '=SUMPRODUCT(B4:B6+0)',
        // More than the engine calculates before it lets the other one go on.
        ...Array.from({ length: 50 }, (_each, row) => `=COUNTIF(B$4:B$6,"<9")+SUM(Plots[Length])+${row}`),
      ];
      for (const each of both) {
        await each.type(
          'Plots',
          0,
          4,
          formulas.map((f) => [{ f }]),
        );
        await wait(both);
      }
      const expected = (counted: number, length: number, twice: number): CellValue[] => [
        twice + 2026,
        length,
        ...Array.from({ length: 50 }, (_each, row) => counted + length + row),
      ];
      const values = [];
      for (const { workbook } of both) {
        expect(await workbook.settle(settleMs)).toEqual([]);
        const area = { sheet: 'Plots', row: 0, column: 4, rows: formulas.length, columns: 1 };
        values.push((await workbook.read(area)).values.flat());
      }
      expect(values).toEqual([expected(0, 140, 280), expected(2, 24, 48)]);
    } finally {
      other.workbook.dispose();
    }
  });
});
