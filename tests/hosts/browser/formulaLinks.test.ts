/** What formulas read is noted once, and an edit is never answered from before it. */
import { RTree, type ICellData } from '@univerjs/core';
import { InsertRowCommand, RemoveRowCommand } from '@univerjs/sheets';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { RangesOnce } from '../../../src/hosts/browser/formulaLinks';
import { change, newSheet, plotRow, plots, readWhole, settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

const open: TypedWorkbook[] = [];
afterEach(() => {
  vi.restoreAllMocks();
  for (const { workbook } of open.splice(0)) workbook.dispose();
});
function opened(snapshot?: string): TypedWorkbook {
  const typed = openTyped(undefined, undefined, snapshot);
  open.push(typed);
  return typed;
}

/** Twice the length beside sums over the whole column, in the table and in a sheet of somebody's own. */
async function filled(lengths: readonly number[]): Promise<TypedWorkbook> {
  const typed = opened();
  const rows = lengths.map((length, i) => plotRow(`plot ${i}`, length));
  const blocks = plots.blocks.map((block) =>
    block.row === 0 ? block : { ...block, contents: [...block.contents.slice(0, 1), ...rows] },
  );
  const tables = plots.tables.map((table) => ({ ...table, rows: rows.length + 1 }));
  await typed.workbook.apply(change({ newSheets: [{ ...plots, blocks, tables }, newSheet('Own')] }));
  await typed.type('Own', 0, 0, [
    [{ f: '=SUM(Plots[Length])' }, { f: '=SUM(Plots[Twice])' }, { f: '=COUNTIF(Plots[Plot],"=plot 1")' }],
    [
      { f: '=A1+SUM(A1:C1)' },
      { f: '=SEASON_YEAR+A1' },
      { f: '=INDEX(Plots[Length],MATCH("plot 1",Plots[Plot],0))' },
    ],
    // Mostly as they were, whatever is edited.
    [{ f: '=IF(A1>100,"many","few")' }, { f: '=A3&"!"' }, { f: '=IF(B3="many!",B1,A1*0)' }],
  ]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  return typed;
}

describe('ranges noted once', () => {
  const range = fc
    .record({ row: fc.nat(6), column: fc.nat(3), rows: fc.nat(3), columns: fc.nat(2) })
    .map(({ row, column, rows, columns }) => ({
      startRow: row,
      startColumn: column,
      endRow: row + rows,
      endColumn: column + columns,
    }));
  const item = fc.record({
    unitId: fc.constant('book'),
    sheetId: fc.constantFrom('one', 'two'),
    range,
    id: fc.nat(4),
  });
  const deed = fc.oneof(
    { weight: 6, arbitrary: fc.record({ does: fc.constant('insert' as const), item }) },
    { weight: 2, arbitrary: fc.record({ does: fc.constant('remove' as const), item }) },
    { weight: 1, arbitrary: fc.record({ does: fc.constant('removeSheet' as const), item }) },
  );

  it('are found as the engine, which notes them again and again, finds them', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 40 }), (deeds) => {
        const usual = new RTree(true);
        const once = new RangesOnce(true);
        for (const { does, item: given } of deeds) {
          for (const tree of [usual, once]) {
            if (does === 'insert') tree.insert(given);
            else if (does === 'remove') tree.remove(given);
            else tree.removeById(given.unitId, given.sheetId);
          }
          const found = [usual, once].map((tree) => {
            tree.openKdTree();
            const ids = [...tree.bulkSearch([given])].map(Number);
            tree.closeKdTree();
            return ids.sort((a, b) => a - b);
          });
          expect(found[1]).toEqual(found[0]);
        }
      }),
    );
  });

  it('are asked for once: an edit of a value asks no formula, a formula that is written none but itself', async () => {
    const { workbook, type } = await filled([100, 40, 7]);
    const insert = vi.spyOn(RTree.prototype, 'insert');
    for (const length of [5, 6, 8]) {
      await type('Plots', 3, 1, [[{ v: length }]]);
      expect(await workbook.settle(settleMs)).toEqual([]);
    }
    expect(insert).not.toHaveBeenCalled();
    await type('Own', 5, 0, [[{ f: '=SUM(Plots[Twice])+A1' }]]);
    expect(await workbook.settle(settleMs)).toEqual([]);
    expect(new Set(insert.mock.calls.map(([{ id }]) => id)).size).toBe(1);
  });

  it('take no search to be forgotten: lines that go cost each what they read, whatever the others read', async () => {
    const tree = new RangesOnce(true);
    const column = { startRow: 1, endRow: 2000, startColumn: 0, endColumn: 0 };
    const around = { ...column, endColumn: 9 };
    const search = vi.spyOn(RTree.prototype, 'remove');
    for (let id = 0; id < 1000; id++) {
      tree.insert({ unitId: 'book', sheetId: 'one', id, range: column });
      tree.insert({
        unitId: 'book',
        sheetId: 'one',
        id,
        range: { startRow: id, endRow: id, startColumn: 3, endColumn: 3 },
      });
    }
    for (let id = 500; id < 1000; id++) tree.remove({ unitId: 'book', sheetId: 'one', id, range: around });
    // The one cell of each; the column is still read.
    expect(search.mock.calls.length).toBe(500);
    tree.openKdTree();
    expect(tree.bulkSearch([{ unitId: 'book', sheetId: 'one', range: column }]).size).toBe(500);
  });
});

interface Deed {
  readonly does:
    'length' | 'name' | 'own' | 'year' | 'undo' | 'redo' | 'insertLine' | 'removeLine' | 'filled' | 'under';
  readonly row: number;
  readonly cell: ICellData;
}

describe('after edits of any kind', () => {
  const value = fc.oneof(
    fc.integer({ min: 1, max: 99 }).map((v) => ({ v })),
    fc.constant({ v: null }),
  );
  const formula = fc.constantFrom(
    '=SUM(Plots[Twice])',
    '=B4*2',
    '=SEASON_YEAR',
    '=COUNTIF(Plots[Length],">50")',
    // Whole columns, and references that the engine finds out when it calculates.
    '=SUM(Plots!C:C)',
    '=SUM(INDIRECT("Plots!C4:C6"))',
    '=SUM(INDIRECT("Plots[Twice]"))',
    '=SUM(OFFSET(Plots!B4,0,0,3,2))',
    '=SUM(Plots!B4:INDEX(Plots!C4:C9,2))',
  );
  const edit = fc.oneof(
    fc.record({ does: fc.constant('length' as const), row: fc.nat(5), cell: value }),
    fc.record({
      does: fc.constant('name' as const),
      row: fc.nat(5),
      cell: fc.nat(3).map((n) => ({ v: `plot ${n}` })),
    }),
    fc.record({ does: fc.constant('own' as const), row: fc.nat(3), cell: formula.map((f) => ({ f })) }),
    fc.record({ does: fc.constant('year' as const), row: fc.constant(0), cell: value }),
    fc.record({
      does: fc.constantFrom(
        'undo' as const,
        'redo' as const,
        'insertLine' as const,
        'removeLine' as const,
        'filled' as const,
      ),
      row: fc.nat(2),
      cell: fc.constant({}),
    }),
    fc.record({ does: fc.constant('under' as const), row: fc.nat(2), cell: value }),
  );

  async function carryOut(typed: TypedWorkbook, { does, row, cell }: Deed): Promise<void> {
    const area = (await typed.workbook.readTable('Plots'))?.area;
    const lines = { unitId: typed.engine.unitId, subUnitId: typed.idOf('Plots') };
    const range = { startRow: 3 + row, endRow: 3 + row, startColumn: 0, endColumn: 25 };
    // The engine's table listens to lines that come and go on the sheet in front.
    await typed.workbook.reveal({ sheet: 'Plots', row: 3, column: 0, rows: 1, columns: 1 });
    switch (does) {
      case 'undo':
        await typed.workbook.undo();
        break;
      case 'redo':
        await typed.workbook.redo();
        break;
      case 'insertLine':
        await typed.run(InsertRowCommand.id, { ...lines, range, direction: 0 });
        break;
      case 'removeLine':
        await typed.run(RemoveRowCommand.id, { ...lines, range });
        break;
      case 'filled':
        // As the engine writes what is drawn out of one formula. It reads what lies left of it and is read from the
        // line below, so that no cell reads itself: such a circle has no answer to compare.
        await typed.type('Own', 3, 1, [[{ f: '=A4*2+Plots!$B$4', si: 'drawn' }], [{ si: 'drawn' }]]);
        break;
      case 'under':
        if (area === undefined) break;
        await typed.type(
          'Plots',
          area.row + area.rows,
          0,
          Array.from({ length: row + 1 }, () => [{ v: 'plot 1' }, cell]),
        );
        break;
      case 'own':
        await typed.type('Own', 4 + row, 0, [[cell]]);
        break;
      case 'year':
        await typed.type('Plots', 0, 1, [[cell]]);
        break;
      default:
        await typed.type('Plots', 3 + row, does === 'name' ? 0 : 1, [[cell]]);
    }
  }

  it('every cell has the answer that the workbook opened anew has', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 8 }), async (edits) => {
        const typed = await filled([100, 40]);
        for (const each of edits) {
          // Kept from then on: one that a deed does not spoil is an old answer too.
          for (const { name } of await typed.workbook.sheets()) await typed.workbook.stamp(name);
          await carryOut(typed, each);
          expect(await typed.workbook.settle(settleMs)).toEqual([]);
        }
        const anew = opened(typed.workbook.snapshot());
        const [kept, fresh] = [await readWhole(typed.workbook), await readWhole(anew.workbook)];
        for (const { workbook } of open.splice(0)) workbook.dispose();
        expect(kept).toEqual(fresh);
      }),
      { numRuns: 25 },
    );
  }, 240_000);
});
