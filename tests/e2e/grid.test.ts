/** The browser host in a page: a person types, pastes and undoes. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Area, Change, CellsRead, LiveWorkbook, TableRead } from '../../src/workbook/port';
import { change, formulaSheet, newSheet, plots, png, sumOfLengths } from '../contract/contractWorkbook';
import { gridHands } from './gridPage/gridHands';
import { openGridPage, type GridPage } from './gridPage/openGridPage';

declare global {
  interface Window {
    readonly workbook: LiveWorkbook;
  }
}

const patience = { timeout: 20_000, interval: 200 };
const cell = (row: number, column: number): Area => ({ sheet: 'Plots', row, column, rows: 1, columns: 1 });

describe('the grid in a page', () => {
  let grid: GridPage;
  beforeAll(async () => {
    grid = await openGridPage();
    await apply(change({ newSheets: [plots, formulaSheet('Totals', [[{ compute: sumOfLengths }]])] }));
  }, 240_000);
  afterAll(() => grid.close());

  /** A change in JSON: pictures go by another way. */
  const apply = (each: Change): Promise<void> =>
    grid.page.evaluate((given) => window.workbook.apply(given as Change), each as unknown);
  const table = (): Promise<TableRead | null> =>
    grid.page.evaluate(async () => {
      await window.workbook.settle(20_000);
      return window.workbook.readTable('Plots');
    });
  const read = (area: Area): Promise<CellsRead> =>
    grid.page.evaluate((given) => window.workbook.read(given), area);
  const select = async (area: Area): Promise<void> => {
    await grid.page.evaluate((given) => window.workbook.reveal(given), area);
    // The editor follows the selection a moment later.
    await grid.page.waitForTimeout(300);
  };
  const type = async (row: number, column: number, text: string): Promise<void> => {
    await select(cell(row, column));
    await grid.page.keyboard.type(text, { delay: 20 });
    await grid.page.keyboard.press('Enter');
    await grid.page.waitForTimeout(300);
  };
  const press = async (keys: string): Promise<void> => {
    await grid.page.keyboard.press(keys);
    await grid.page.waitForTimeout(300);
  };

  test('a row typed under the table joins it; one undo takes it all back, one redo brings it again', async () => {
    const before = await table();
    await type(5, 1, '60');
    const grown = await table();
    expect(grown?.rows).toEqual([
      ['north', 100, 200],
      ['007', 40, 80],
      [null, 60, 120],
    ]);
    await press('Control+z');
    expect(await table()).toEqual(before);
    expect((await read(cell(5, 1))).values).toEqual([[null]]);
    await press('Control+y');
    expect(await table()).toEqual(grown);
    expect((await read(cell(5, 2))).formulas).toEqual([
      ['=CUCURBIT.TEST.DOUBLE(Plots[[#This Row],[Length]])'],
    ]);
  });

  test('what people type as names stays text', async () => {
    for (const text of ['007', '=2+2', '+1', '@x', '-x']) {
      const row = 2 + ((await table())?.area.rows ?? 0);
      await type(row, 0, text);
      expect((await table())?.rows.at(-1)?.[0]).toBe(text);
      expect((await read(cell(row, 0))).formulas).toEqual([[null]]);
    }
  });

  test('several rows pasted under the table join it in one step', async () => {
    const before = await table();
    const under = 2 + (before?.area.rows ?? 0);
    await grid.page.evaluate(() => navigator.clipboard.writeText('a\t1\nb\t2\nc\t3'));
    await select(cell(under, 0));
    await press('Control+v');
    await grid.page.waitForTimeout(700);
    expect((await table())?.rows.slice(-3)).toEqual([
      ['a', 1, 2],
      ['b', 2, 4],
      ['c', 3, 6],
    ]);
    await press('Control+z');
    expect(await table()).toEqual(before);
  });

  test('text that is pasted into cells stays as it is, tags and all', async () => {
    const text = '<b>Creek</b> & <i>x\t1 < 2\n<script>one\t&amp; &lt; two';
    await grid.page.evaluate((given) => navigator.clipboard.writeText(given), text);
    await select(cell(19, 6));
    await press('Control+v');
    const pasted = { ...cell(19, 6), rows: 2, columns: 2 };
    await expect
      .poll(async () => (await read(pasted)).values, patience)
      .toEqual(text.split('\n').map((line) => line.split('\t')));
    await press('Control+z');
  });

  test('erasing a cell leaves nothing in it', async () => {
    await select(cell(3, 1));
    await press('Delete');
    expect((await read(cell(3, 1))).values).toEqual([[null]]);
    await press('Control+z');
    expect((await read(cell(3, 1))).values).toEqual([[100]]);
  });

  test('what is being typed stays when a cell in the same place of another sheet is written meanwhile', async () => {
    await select(cell(9, 6));
    await grid.page.keyboard.type('half ', { delay: 20 });
    // As a calculation does that ends while somebody types.
    await apply(change({ cells: [{ sheet: 'Totals', row: 9, column: 6, contents: [['other']] }] }));
    await grid.page.keyboard.type('typed', { delay: 20 });
    await press('Enter');
    await expect.poll(async () => (await read(cell(9, 6))).values, patience).toEqual([['half typed']]);
    await press('Control+z');
  });

  test('what is being typed stays when a formula of the same place is calculated meanwhile', async () => {
    const sum = { compute: sumOfLengths };
    await apply(change({ cells: [{ sheet: 'Totals', row: 9, column: 7, contents: [[sum]] }] }));
    await select(cell(9, 7));
    await grid.page.keyboard.type('half ', { delay: 20 });
    await apply(change({ cells: [{ sheet: 'Plots', row: 3, column: 1, contents: [[140]] }] }));
    await expect
      .poll(async () => (await read({ ...cell(9, 7), sheet: 'Totals' })).values, patience)
      // With the 40 and 60 that stand in the table besides.
      .toEqual([[240]]);
    await grid.page.keyboard.type('typed', { delay: 20 });
    await press('Enter');
    await expect.poll(async () => (await read(cell(9, 7))).values, patience).toEqual([['half typed']]);
  });

  test('a formula stays as it was typed, whatever list of functions its beginning brought up', async () => {
    const listed = grid.page.locator('[data-u-comp="sheets-formula-editor"] li');
    for (const [column, end] of ['Tab', 'Enter', 'ArrowDown'].entries()) {
      await select(cell(12, 6 + column));
      await grid.page.keyboard.type('=SU', { delay: 20 });
      await listed.first().waitFor();
      // The list follows three tenths of a second later: the key finds the old one.
      await grid.page.keyboard.type('BTOTAL(9,B4:B5)');
      await press(end);
      expect((await read(cell(12, 6 + column))).formulas).toEqual([['=SUBTOTAL(9,B4:B5)']]);
    }
  });

  test('a name is taken from the list of what stands there, and the typing goes on behind it', async () => {
    await select(cell(13, 6));
    await grid.page.keyboard.type('=CONCATEN', { delay: 20 });
    await grid.page.locator('[data-u-comp="sheets-formula-editor"] li').first().waitFor();
    await press('Tab');
    await grid.page.keyboard.type('B4,"!")', { delay: 20 });
    await press('Enter');
    expect((await read(cell(13, 6))).formulas).toEqual([['=CONCATENATE(B4,"!")']]);
  });

  test('a selection is told, a change is told', async () => {
    const heard = await grid.page.evaluate(async () => {
      const areas: Area[] = [];
      let changes = 0;
      const stops = [
        window.workbook.onSelection((area) => areas.push(area)),
        window.workbook.onChange(() => (changes += 1)),
      ];
      await window.workbook.reveal({ sheet: 'Totals', row: 2, column: 1, rows: 2, columns: 2 });
      const cells = [{ sheet: 'Totals', row: 5, column: 0, contents: [['told']] }];
      await window.workbook.apply({
        title: 'tell',
        expect: [],
        newSheets: [],
        cells,
        tableRows: [],
        pictures: [],
        marks: [],
      });
      await new Promise((resolve) => setTimeout(resolve, 300));
      stops.forEach((stop) => stop());
      return { areas, changes };
    });
    expect(heard.areas.at(-1)).toEqual({ sheet: 'Totals', row: 2, column: 1, rows: 2, columns: 2 });
    expect(heard.changes).toBeGreaterThan(0);
  });

  test('a cell that is shown stands whole beside a wider frozen column', async () => {
    const wide = newSheet('Wide', { widths: [20, ...Array.from({ length: 40 }, () => 9)], frozenColumns: 1 });
    await apply(change({ newSheets: [wide] }));
    for (const column of [35, 7]) await select({ ...cell(9, column), sheet: 'Wide' });
    const hands = gridHands(grid.page);
    expect(await hands.where()).toBe('H10');
    /** The columns met every 10 pixels along a row. */
    const met: string[] = [];
    for (let x = 60; x < 400; x += 10) {
      await grid.page.mouse.click(x, 400);
      await grid.page.waitForTimeout(100);
      met.push((await hands.where()).replace(/\d+/, ''));
    }
    const clicksOn = (name: string): number => met.filter((each) => each === name).length;
    // As wide as the next, give or take where the clicks fall.
    expect(Math.abs(clicksOn('H') - clicksOn('I'))).toBeLessThanOrEqual(1);
    expect(clicksOn('I')).toBeGreaterThan(4);
  });

  test('of a list that spills all chosen cells are copied by value; its own cell alone goes with its formula', async () => {
    const formula = '=CUCURBIT.TEST.SQUARES(3)';
    await type(24, 6, formula);
    const list = { ...cell(24, 6), rows: 3, columns: 2 };
    const squares = [
      [1, 1],
      [2, 4],
      [3, 9],
    ];
    await expect.poll(async () => (await read(list)).values, patience).toEqual(squares);
    const copy = async (from: Area, to: Area): Promise<void> => {
      await select(from);
      await press('Control+c');
      await select(to);
      await press('Control+v');
    };
    const copied = { ...list, column: 9 };
    await copy(list, copied);
    await expect.poll(async () => (await read(copied)).values, patience).toEqual(squares);
    expect((await read(copied)).formulas.flat().filter((each) => each !== null)).toEqual([]);
    await copy(cell(24, 6), cell(30, 6));
    await expect.poll(async () => (await read(cell(30, 6))).formulas, patience).toEqual([[formula]]);
  });

  test('a picture, a note and a new sheet are drawn, and nothing in the page complains', async () => {
    const noted = newSheet('Noted', {
      blocks: [{ row: 0, column: 0, contents: [['note here']] }],
      notes: [{ row: 0, column: 0, text: 'Said about this cell.' }],
    });
    await grid.page.evaluate(
      async ({ sheet, bytes }) => {
        const picture = {
          name: 'dot',
          sheet: 'Noted',
          row: 2,
          column: 1,
          widthPx: 120,
          heightPx: 80,
          altText: 'a dot',
        };
        await window.workbook.apply({
          title: 'draw',
          expect: [],
          newSheets: [sheet as Change['newSheets'][number]],
          cells: [],
          tableRows: [],
          marks: [],
          pictures: [{ ...picture, png: Uint8Array.from(bytes) }],
        });
        await window.workbook.reveal({ sheet: 'Noted', row: 0, column: 0, rows: 1, columns: 1 });
      },
      { sheet: noted as unknown, bytes: [...png] },
    );
    await grid.page.waitForTimeout(500);
    expect((await grid.page.screenshot()).length).toBeGreaterThan(10_000);
    expect(grid.troubles).toEqual([]);
  });
});
