import { describe, expect, test } from 'vitest';
import type { CellContent } from '../../src/workbook/port';
import { change, foreignSheet, formulaSheet, newSheet, plots, settleMs } from './contractWorkbook';
import type { Subject } from './workbookContract';

export function readCases(subject: Subject): void {
  describe('reading', () => {
    test.each<[string, CellContent]>([
      ['a whole number', 12],
      ['a fraction', 0.125],
      ['a negative number', -3.5],
      ['a large number', 1e15],
      ['zero', 0],
      ['TRUE', true],
      ['FALSE', false],
      ['a text', 'north field'],
      ['a text with a line break', 'one\ntwo'],
      ['a text with signs of other alphabets', 'čočka 南瓜 🎃'],
      ['a text with quotes', 'Joe\'s "best"'],
      ['a text of digits', '007'],
      ['a text of a long number', '12345678901234567890'],
      ['a text like a number with an exponent', '1e3'],
      ['a text with spaces around it', ' 5 '],
      ['a text like a percentage', '50%'],
      ['a text like a formula', '=2+2'],
      ['a text with a plus', '+1'],
      ['a text with a minus', '-x'],
      ['a text with an at sign', '@x'],
      ['a text like a truth value', 'TRUE'],
      ['a text like a date', '2026-05-02'],
      ['a text like a fraction', '1/2'],
      ['nothing', null],
    ])('%s comes back as it was written', async (_, value) => {
      await subject.port.apply(
        change({
          newSheets: [newSheet('Values', { blocks: [{ row: 1, column: 1, contents: [[value, 'end']] }] })],
          cells: [{ sheet: foreignSheet.name, row: 4, column: 0, contents: [[value]] }],
        }),
      );
      await subject.port.settle(settleMs);
      const inNew = await subject.port.read({ sheet: 'Values', row: 1, column: 1, rows: 1, columns: 2 });
      expect(inNew).toEqual({ values: [[value, 'end']], formulas: [[null, null]] });
      const inOld = await subject.port.read({
        sheet: foreignSheet.name,
        row: 4,
        column: 0,
        rows: 1,
        columns: 1,
      });
      expect(inOld).toEqual({ values: [[value]], formulas: [[null]] });
    });

    test('values are raw, whatever the format shows', async () => {
      await subject.port.apply(
        change({
          newSheets: [
            newSheet('Formats', {
              blocks: [{ row: 0, column: 0, contents: [[46144, 0.925, 1234.567, 2.25, 7.6, '007', 12.5]] }],
              dressings: (['date', 'percent', 'money', 'tenth', 'whole', 'text', 'hundredth'] as const).map(
                (format, column) => ({ row: 0, column, rows: 1, columns: 1, role: 'input', format }),
              ),
            }),
          ],
        }),
      );
      await subject.port.settle(settleMs);
      const read = await subject.port.read({ sheet: 'Formats', row: 0, column: 0, rows: 1, columns: 7 });
      expect(read.values).toEqual([[46144, 0.925, 1234.567, 2.25, 7.6, '007', 12.5]]);
    });

    test('cells beyond the content are empty', async () => {
      const read = await subject.port.read({
        sheet: foreignSheet.name,
        row: 50,
        column: 9,
        rows: 1,
        columns: 2,
      });
      expect(read).toEqual({ values: [[null, null]], formulas: [[null, null]] });
    });

    test('somebody’s sheet is listed as it stands, ours with their mark', async () => {
      await subject.port.apply(
        change({ newSheets: [plots, newSheet('Empty', { mark: { template: 'none', version: 7 } })] }),
      );
      const sheets = await subject.port.sheets();
      expect(sheets.map(({ name }) => name)).toEqual([foreignSheet.name, 'Plots', 'Empty']);
      expect(sheets[0]?.used).toEqual({ sheet: foreignSheet.name, row: 0, column: 0, rows: 2, columns: 2 });
      expect(sheets[0]?.mark?.template).not.toBe('plots');
      expect(sheets[1]).toEqual({
        name: 'Plots',
        mark: { template: 'plots', version: 1 },
        locked: false,
        used: { sheet: 'Plots', row: 0, column: 0, rows: 5, columns: 3 },
      });
      expect(sheets[2]).toEqual({
        name: 'Empty',
        mark: { template: 'none', version: 7 },
        locked: false,
        used: null,
      });
      const seeded = await subject.port.read({
        sheet: foreignSheet.name,
        row: 0,
        column: 0,
        rows: 2,
        columns: 2,
      });
      expect(seeded.values).toEqual(foreignSheet.contents);
    });

    test('a sheet is found whatever the case of its name; one that is not there is refused', async () => {
      const area = { sheet: 'kitchen', row: 0, column: 0, rows: 1, columns: 1 };
      expect((await subject.port.read(area)).values).toEqual([['beans']]);
      await expect(subject.port.read({ ...area, sheet: 'Cellar' })).rejects.toMatchObject({
        problem: { code: 'noSuchSheet', sheet: 'Cellar' },
      });
      await expect(subject.port.stamp('Cellar')).rejects.toMatchObject({
        problem: { code: 'noSuchSheet', sheet: 'Cellar' },
      });
    });

    test('a table is read with its headers, results and place', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      await subject.port.settle(settleMs);
      expect(await subject.port.readTable('plots')).toEqual({
        name: 'Plots',
        area: { sheet: 'Plots', row: 2, column: 0, rows: 3, columns: 3 },
        headers: ['Plot', 'Length', 'Twice'],
        rows: [
          ['north', 100, 200],
          ['007', 40, 80],
        ],
      });
      expect(await subject.port.readTable('Beds')).toBeNull();
    });

    test('a named cell is located, on a sheet of whatever name', async () => {
      const name = "Joe's 2nd & last";
      await subject.port.apply(
        change({
          newSheets: [
            newSheet(name, {
              blocks: [{ row: 3, column: 30, contents: [[5]] }],
              names: { OTHER_NAME: [3, 30] },
            }),
            formulaSheet('Uses', [[{ compute: { input: 'OTHER_NAME' } }]]),
          ],
        }),
      );
      await subject.port.settle(settleMs);
      expect(await subject.port.locate('OTHER_NAME')).toEqual({
        sheet: name,
        row: 3,
        column: 30,
        rows: 1,
        columns: 1,
      });
      expect(await subject.port.locate('other_name')).not.toBeNull();
      expect(await subject.port.locate('SEASON_YEAR')).toBeNull();
      const read = await subject.port.read({ sheet: 'Uses', row: 0, column: 0, rows: 1, columns: 1 });
      expect(read.values).toEqual([[5]]);
    });
  });
}
