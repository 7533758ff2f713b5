import { describe, expect, test } from 'vitest';
import { column, native } from '../../src/workbook/expressions';
import { HostError, type Area, type Change } from '../../src/workbook/port';
import {
  change,
  foreignSheet,
  formulaSheet,
  newSheet,
  plotRow,
  plots,
  png,
  readWhole,
  settleMs,
  sumOfLengths,
  type MakeHost,
} from './contractWorkbook';
import type { Subject } from './workbookContract';

/** Touches everything that a change can touch. Wants `plots` there. */
const everything: Change = change({
  title: 'everything',
  newSheets: [
    newSheet('Beds', {
      blocks: [
        {
          row: 0,
          column: 0,
          contents: [
            ['Bed', 'Half'],
            ['b1', { compute: sumOfLengths }],
          ],
        },
      ],
      tables: [
        {
          name: 'Beds',
          headers: ['Bed', 'Half'],
          row: 0,
          column: 0,
          rows: 2,
          columns: 2,
          grows: [null, null],
        },
      ],
      dressings: [{ row: 0, column: 0, rows: 1, columns: 2, role: 'header', format: 'general' }],
      lists: [{ row: 1, column: 0, rows: 1, columns: 1, values: ['b1', 'b2'] }],
      notes: [{ row: 0, column: 0, text: 'Which bed.' }],
      names: { OTHER_NAME: [1, 1] },
      widths: [20],
    }),
    formulaSheet('Totals', [[{ compute: sumOfLengths }]]),
  ],
  cells: [
    { sheet: foreignSheet.name, row: 0, column: 1, contents: [[43], [null]] },
    { sheet: 'Plots', row: 0, column: 1, contents: [[2027]] },
    { sheet: 'Plots', row: 4, column: 2, contents: [[{ compute: native('SUM', column('Length'), 1) }]] },
  ],
  tableRows: [{ table: 'Plots', rows: [plotRow('south', 7), plotRow('=2+2', 3)] }],
  pictures: [
    { name: 'dot', sheet: 'Beds', row: 3, column: 0, png, widthPx: 40, heightPx: 30, altText: 'a dot' },
    {
      name: 'dot',
      sheet: 'Plots',
      row: 12,
      column: 0,
      png,
      widthPx: 40,
      heightPx: 30,
      altText: 'another dot',
    },
  ],
  marks: [{ sheet: 'plots', mark: { template: 'plots', version: 2 } }],
});

export function changeCases(subject: Subject, makeHost: MakeHost): void {
  const markOfPlots = async () => (await subject.port.sheets()).find(({ name }) => name === 'Plots')?.mark;

  describe('changing', () => {
    test('a change of every kind arrives whole, with rising progress', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const progress: number[] = [];
      await subject.port.apply(everything, (done) => progress.push(done));
      expect(progress[0]).toBe(0);
      expect(progress.at(-1)).toBe(1);
      expect(progress).toEqual([...progress].sort((a, b) => a - b));
      await subject.port.settle(settleMs);
      const { rows, area } = (await subject.port.readTable('Plots')) ?? {};
      expect(area).toEqual({ sheet: 'Plots', row: 2, column: 0, rows: 5, columns: 3 });
      expect(rows).toEqual([
        ['north', 100, 200],
        ['007', 40, 41],
        ['south', 7, 14],
        ['=2+2', 3, 6],
      ]);
      expect((await subject.port.readTable('Beds'))?.rows).toEqual([['b1', 150]]);
      const kitchen = await subject.port.read({ sheet: 'Kitchen', row: 0, column: 0, rows: 2, columns: 2 });
      expect(kitchen.values).toEqual([
        ['beans', 43],
        ['=1+1 is text', null],
      ]);
      expect((await subject.port.sheets()).map(({ name }) => name)).toEqual([
        'Kitchen',
        'Plots',
        'Beds',
        'Totals',
      ]);
      expect(await markOfPlots()).toEqual({ template: 'plots', version: 2 });
    });

    test('a picture goes when another of its name comes to its sheet, and no other does', async () => {
      const dot = { name: 'dot', sheet: 'Plots', row: 8, column: 0, png, widthPx: 4, heightPx: 3 };
      const pictures = [
        { ...dot, altText: 'a dot' },
        { ...dot, name: 'blot', row: 12, altText: 'a blot' },
        { ...dot, sheet: 'Kitchen', altText: 'a dot in the kitchen' },
      ];
      const seen = async (): Promise<string[]> => [...(await subject.host.pictures())].sort();
      await subject.port.apply(change({ newSheets: [plots], pictures }));
      expect(await seen()).toEqual(['a blot', 'a dot', 'a dot in the kitchen']);
      const refreshed = change({
        title: 'draw',
        pictures: [{ ...dot, sheet: 'plots', altText: 'a newer dot' }],
      });
      await subject.port.apply(refreshed);
      expect(await seen()).toEqual(['a blot', 'a dot in the kitchen', 'a newer dot']);
      // Cut off, the older one is there still.
      for (let fault = 0; ; fault++) {
        subject.host.failAt(fault);
        const failed = await subject.port
          .apply({ ...refreshed, pictures: [{ ...dot, altText: `dot ${fault}` }] })
          .then(
            () => false,
            () => true,
          );
        subject.host.failAt(null);
        const wanted = failed ? 'a newer dot' : `dot ${fault}`;
        expect(await seen(), `fault ${fault}`).toEqual(['a blot', 'a dot in the kitchen', wanted]);
        if (!failed) break;
        expect(fault).toBeLessThan(50);
      }
    });

    test('rules come to a sheet that is there once, after its own, and not where one on that text holds', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const span = { sheet: 'plots', row: 3, column: 0, rows: 40, columns: 3, shade: 'pale' } as const;
      const refreshed = change({
        title: 'rules',
        rules: [
          { ...span, equals: 'say "north"' },
          { ...span, equals: 'south' },
          { ...span, column: 2, columns: 1, equals: 'say "north"' },
        ],
      });
      const own = ['say "north"'];
      const now = async () => (await subject.host.rules('Plots')).map((text) => text.replaceAll('""', '"'));
      for (let fault = 0; ; fault++) {
        subject.host.failAt(fault);
        const failed = await subject.port.apply(refreshed).then(
          () => false,
          () => true,
        );
        subject.host.failAt(null);
        if (!failed) break;
        expect(await now(), `fault ${fault}`).toEqual(own);
        expect(fault).toBeLessThan(50);
      }
      const all = [...own, 'south', 'say "north"'];
      expect(await now()).toEqual(all);
      await subject.port.apply(refreshed);
      expect(await now()).toEqual(all);
      await expect(
        subject.port.apply(change({ rules: [{ ...span, sheet: 'Nowhere', equals: 'x' }] })),
      ).rejects.toMatchObject({ problem: { code: 'noSuchSheet' } });
    });

    test('a change of nothing is none', async () => {
      const before = await readWhole(subject.port);
      await subject.port.apply(change({}));
      expect(await readWhole(subject.port)).toEqual(before);
    });

    test('a table grows by rows given in two parts, and sums over it with it', async () => {
      await subject.port.apply(
        change({ newSheets: [plots, formulaSheet('Totals', [[{ compute: sumOfLengths }]])] }),
      );
      await subject.port.apply(
        change({
          tableRows: [
            { table: 'Plots', rows: [plotRow('a', 1)] },
            { table: 'plots', rows: [plotRow('b', 2), plotRow('c', null)] },
          ],
        }),
      );
      await subject.port.settle(settleMs);
      const table = await subject.port.readTable('Plots');
      expect(table?.area.rows).toBe(6);
      expect(table?.rows.slice(2).map(([name, length]) => [name, length])).toEqual([
        ['a', 1],
        ['b', 2],
        ['c', null],
      ]);
      const total = await subject.port.read({ sheet: 'Totals', row: 0, column: 0, rows: 1, columns: 1 });
      expect(total.values).toEqual([[143]]);
    });

    test('a line is carried to another row, into the table and under it, as it stood before', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const put = (row: number, contents: Change['cells'][number]['contents']): Promise<void> =>
        subject.port.apply(change({ cells: [{ sheet: 'Plots', row, column: 1, contents }] }));
      // Something typed over the first line's formula; two lines change places and the first comes again below.
      await put(3, [['007', 5]]);
      const line = (carriedFrom: number) => [{ carriedFrom }, { carriedFrom }, { carriedFrom }];
      await subject.port.apply(
        change({
          cells: [{ sheet: 'Plots', row: 3, column: 0, contents: [line(4), line(3)] }],
          tableRows: [{ table: 'Plots', rows: [['south', ...line(4).slice(1)], line(3)] }],
        }),
      );
      await subject.port.settle(settleMs);
      const { area, rows } = (await subject.port.readTable('Plots')) ?? {};
      expect(rows).toEqual([
        ['007', 40, 80],
        ['north', '007', 5],
        ['south', 40, 80],
        ['north', '007', 5],
      ]);
      const { formulas } = await subject.port.read({
        ...area,
        row: 3,
        rows: 4,
        column: 2,
        columns: 1,
      } as Area);
      expect(formulas.map(([formula]) => formula !== null)).toEqual([true, false, true, false]);
      await put(3, [[null, null]]);
      await put(4, [[{ carriedFrom: 3 }, { carriedFrom: 3 }]]);
      expect((await subject.port.readTable('Plots'))?.rows[1]).toEqual(['north', null, null]);
    });

    test('a stamp changes with a value or a formula of its sheet, and with nothing else', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      await subject.port.settle(settleMs);
      const stamps = [await subject.port.stamp('Plots')];
      const noted = async (): Promise<void> => {
        await subject.port.settle(settleMs);
        stamps.push(await subject.port.stamp('Plots'));
      };
      await noted();
      expect(stamps[1]).toBe(stamps[0]);
      await subject.port.apply(
        change({ cells: [{ sheet: foreignSheet.name, row: 0, column: 0, contents: [['x']] }] }),
      );
      await noted();
      expect(stamps[2]).toBe(stamps[0]);
      const put = (contents: Change['cells'][number]['contents']): Promise<void> =>
        subject.port.apply(change({ cells: [{ sheet: 'Plots', row: 3, column: 1, contents }] }));
      await put([['100']]);
      await noted();
      await put([[99]]);
      await noted();
      await put([[{ compute: { value: 99 } }]]);
      await noted();
      expect(new Set(stamps.slice(2)).size).toBe(4);
      await put([[100]]);
      await noted();
      expect(stamps.at(-1)).toBe(stamps[0]);
    });

    test('a stamp that holds lets the change through', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const stamp = await subject.port.stamp('Plots');
      const cells = [{ sheet: 'Plots', row: 3, column: 1, contents: [[50]] }];
      await subject.port.apply(change({ expect: [{ sheet: 'Plots', stamp }], cells }));
      expect((await subject.port.readTable('Plots'))?.rows[0]?.[1]).toBe(50);
    });

    test('a fault at any write step leaves the workbook as it was, and the change can be made after it', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const before = await readWhole(subject.port);
      let faults = 0;
      for (;;) {
        subject.host.failAt(faults);
        const error = await subject.port.apply(everything).then(
          () => null,
          (reason: unknown) => reason,
        );
        if (error === null) break;
        expect(error).toBeInstanceOf(HostError);
        expect(error).toMatchObject({ problem: { code: 'failed', action: 'everything' } });
        expect(await readWhole(subject.port)).toEqual(before);
        faults += 1;
      }
      expect(faults).toBeGreaterThan(3);
      subject.host.failAt(null);

      const untroubled = await makeHost();
      try {
        await untroubled.port.apply(change({ newSheets: [plots] }));
        await untroubled.port.apply(everything);
        expect(await readWhole(subject.port)).toEqual(await readWhole(untroubled.port));
      } finally {
        await untroubled.dispose();
      }
    });

    test('of two changes at once the second waits', async () => {
      const first = subject.port.apply(change({ newSheets: [plots] }));
      const second = subject.port.apply(change({ tableRows: [{ table: 'Plots', rows: [plotRow('c', 5)] }] }));
      const third = subject.port.apply(change({ newSheets: [plots] }));
      await Promise.all([first, second]);
      await expect(third).rejects.toMatchObject({ problem: { code: 'sheetNameTaken', sheet: 'Plots' } });
      await subject.port.settle(settleMs);
      expect((await subject.port.readTable('Plots'))?.rows[2]).toEqual(['c', 5, 10]);
    });

    test('a refused change does not hold up the next one', async () => {
      const refused = subject.port.apply(change({ newSheets: [newSheet(foreignSheet.name)] }));
      const next = subject.port.apply(change({ newSheets: [plots] }));
      await expect(refused).rejects.toBeInstanceOf(HostError);
      await next;
      expect((await subject.port.sheets()).map(({ name }) => name)).toContain('Plots');
    });

    test('settling comes to an end where there is nothing to wait for', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      expect(await subject.port.settle(settleMs)).toEqual([]);
      expect(await subject.port.settle(settleMs)).toEqual([]);
    });
  });
}
