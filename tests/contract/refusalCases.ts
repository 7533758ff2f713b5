import { beforeEach, describe, expect, test } from 'vitest';
import {
  change,
  expectRefusal,
  foreignSheet,
  newSheet,
  plotRow,
  plots,
  png,
  readWhole,
} from './contractWorkbook';
import type { Subject } from './workbookContract';

export function refusalCases(subject: Subject): void {
  describe('what cannot be done is refused, and nothing is written', () => {
    beforeEach(() => subject.port.apply(change({ newSheets: [plots] })));
    /** Stands in every change here: it must not be written. */
    const cells = [{ sheet: foreignSheet.name, row: 9, column: 0, contents: [['written']] }];
    const other = newSheet('Other', { names: { OTHER_NAME: [0, 0] } });
    const table = { row: 0, column: 0, rows: 2, columns: 1, headers: ['A'], grows: null };
    const blocks = [{ row: 0, column: 0, contents: [['A'], [1]] }];

    test('a sheet name in use', async () => {
      for (const sheet of ['Plots', 'plots', foreignSheet.name]) {
        await expectRefusal(subject.port, change({ cells, newSheets: [other, newSheet(sheet)] }), {
          code: 'sheetNameTaken',
          sheet,
        });
      }
      const twice = change({ cells, newSheets: [newSheet('New'), newSheet('NEW')] });
      await expectRefusal(subject.port, twice, { code: 'sheetNameTaken', sheet: 'NEW' });
    });

    test('a table name in use', async () => {
      for (const name of ['Plots', 'PLOTS', 'SEASON_YEAR']) {
        await expectRefusal(
          subject.port,
          change({ cells, newSheets: [newSheet('New', { blocks, tables: [{ ...table, name }] })] }),
          { code: 'tableNameTaken', table: name },
        );
      }
    });

    test('a name in use', async () => {
      for (const name of ['SEASON_YEAR', 'season_year', 'Plots']) {
        await expectRefusal(
          subject.port,
          change({ cells, newSheets: [newSheet('New', { names: { [name]: [0, 0] } })] }),
          { code: 'nameTaken', name },
        );
      }
      const twice = change({ cells, newSheets: [other, newSheet('New', { names: { other_name: [0, 0] } })] });
      await expectRefusal(subject.port, twice, { code: 'nameTaken', name: 'other_name' });
    });

    test('rows for a table that is not there', async () => {
      const refused = change({ cells, tableRows: [{ table: 'Beds', rows: [['x']] }] });
      await expectRefusal(subject.port, refused, { code: 'noSuchTable', table: 'Beds' });
    });

    test('cells, pictures and stamps of a sheet that is not there', async () => {
      const sheet = 'Cellar';
      const elsewhere = { sheet, row: 0, column: 0, contents: [[1]] };
      const picture = { name: 'dot', sheet, row: 0, column: 0, png, widthPx: 1, heightPx: 1, altText: 'dot' };
      for (const refused of [
        change({ cells: [...cells, elsewhere] }),
        change({ cells, pictures: [picture] }),
        change({ cells, expect: [{ sheet, stamp: '' }] }),
      ]) {
        await expectRefusal(subject.port, refused, { code: 'noSuchSheet', sheet });
      }
    });

    test('a sheet that changed since it was read', async () => {
      const stamp = await subject.port.stamp('Plots');
      const typed = { sheet: 'Plots', row: 3, column: 1, contents: [[101]] };
      await subject.port.apply(change({ cells: [typed] }));
      const refused = change({ cells, expect: [{ sheet: 'Plots', stamp }], newSheets: [other] });
      await expectRefusal(subject.port, refused, { code: 'changedMeanwhile', sheet: 'Plots' });
    });

    test('rows of a table where cells are in the way', async () => {
      const below = { sheet: 'Plots', row: 6, column: 2, contents: [['in the way']] };
      await subject.port.apply(change({ cells: [below] }));
      const rows = [plotRow('a', 1), plotRow('b', 2)];
      await expectRefusal(subject.port, change({ cells, tableRows: [{ table: 'Plots', rows }] }), {
        code: 'cellsInTheWay',
        sheet: 'Plots',
        row: 6,
        column: 2,
      });
      await subject.port.apply(change({ tableRows: [{ table: 'Plots', rows: rows.slice(0, 1) }] }));
      expect((await subject.port.readTable('Plots'))?.area.rows).toBe(4);
    });

    test('a column outside of a table is a fault of ours, and undone as one', async () => {
      const before = await readWhole(subject.port);
      const outside = {
        sheet: foreignSheet.name,
        row: 20,
        column: 0,
        contents: [[{ compute: { column: 'Length' } }]],
      };
      await expect(
        subject.port.apply(change({ title: 'try it', cells: [...cells, outside] })),
      ).rejects.toMatchObject({
        problem: { code: 'failed', action: 'try it' },
      });
      expect(await readWhole(subject.port)).toEqual(before);
    });
  });
}
