import { describe, expect, test } from 'vitest';
import {
  allOf,
  call,
  column,
  given,
  input,
  lookUp,
  native,
  operate,
  when,
} from '../../src/workbook/expressions';
import type { CellContent, Expression, ReadValue } from '../../src/workbook/port';
import { notKnown, notNumber } from './contractFunctions';
import { change, formulaSheet, newSheet, plotRow, plots, settleMs, sumOfLengths } from './contractWorkbook';
import type { Subject } from './workbookContract';

export function formulaCases(subject: Subject): void {
  /** The results of formulas that stand beside the Plots sheet. */
  async function compute(...expressions: Expression[]): Promise<readonly ReadValue[]> {
    const contents = [expressions.map((each) => ({ compute: each }))];
    await subject.port.apply(change({ newSheets: [plots, formulaSheet('Results', contents)] }));
    expect(await subject.port.settle(settleMs)).toEqual([]);
    const area = { sheet: 'Results', row: 0, column: 0, rows: 1, columns: expressions.length };
    return (await subject.port.read(area)).values[0] ?? [];
  }

  /** What the host gives of what our function said. */
  const said = (message: string): string | null => (subject.host.keepsMessages ? message : null);

  describe('calculating', () => {
    test('formulas are read in en-US, with structured references', async () => {
      await subject.port.apply(
        change({
          newSheets: [
            plots,
            formulaSheet('Results', [
              [
                { compute: sumOfLengths },
                { compute: operate(input('SEASON_YEAR'), '*', 0.5) },
                { compute: native('IF', true, 'a;b', '"') },
                { compute: call('TEST.SHOW', 1, null, 2, null) },
                7,
                '=7',
              ],
            ]),
          ],
        }),
      );
      await subject.port.settle(settleMs);
      const row = await subject.port.read({ sheet: 'Plots', row: 3, column: 0, rows: 1, columns: 3 });
      expect(row.formulas).toEqual([[null, null, '=CUCURBIT.TEST.DOUBLE(Plots[[#This Row],[Length]])']]);
      const results = await subject.port.read({ sheet: 'Results', row: 0, column: 0, rows: 1, columns: 6 });
      expect(results.formulas).toEqual([
        [
          '=SUM(Plots[Length])',
          '=SEASON_YEAR*0.5',
          '=IF(TRUE,"a;b","""")',
          '=CUCURBIT.TEST.SHOW(1,,2)',
          null,
          null,
        ],
      ]);
    });

    test('a result follows the cells that it is made of', async () => {
      expect(await compute(sumOfLengths, operate(input('SEASON_YEAR'), '+', 1))).toEqual([140, 2027]);
      await subject.port.apply(
        change({
          cells: [
            { sheet: 'Plots', row: 3, column: 1, contents: [[1], [2]] },
            { sheet: 'Plots', row: 0, column: 1, contents: [[1999]] },
          ],
        }),
      );
      expect(await subject.port.settle(settleMs)).toEqual([]);
      const read = await subject.port.read({ sheet: 'Results', row: 0, column: 0, rows: 1, columns: 2 });
      expect(read.values).toEqual([[3, 2000]]);
      expect((await subject.port.readTable('Plots'))?.rows.map((row) => row[2])).toEqual([2, 4]);
    });

    test('our functions see values as they are: omitted and empty as null, ranges as rows', async () => {
      await subject.port.apply(
        change({
          newSheets: [
            newSheet('Input', {
              blocks: [{ row: 0, column: 0, contents: [['007', null, true, 0.5]] }],
              names: { A_TEXT: [0, 0], AN_EMPTY: [0, 1], A_TRUTH: [0, 2], A_NUMBER: [0, 3] },
            }),
          ],
        }),
      );
      const [scalars, range, optional] = await compute(
        call(
          'TEST.SHOW',
          input('A_TEXT'),
          input('AN_EMPTY'),
          null,
          input('A_TRUTH'),
          input('A_NUMBER'),
          'x',
          2,
        ),
        call('TEST.SHOW', allOf('Plots', 'Plot'), allOf('Plots', 'Twice')),
        call('TEST.SHOW', given(input('AN_EMPTY')), given(input('A_NUMBER'))),
      );
      expect(JSON.parse(String(scalars))).toEqual(['007', null, null, true, 0.5, 'x', 2]);
      expect(JSON.parse(String(range))).toEqual([
        [['north'], ['007']],
        [[200], [80]],
      ]);
      expect(JSON.parse(String(optional))).toEqual(['', 0.5]);
    });

    test('results of every type', async () => {
      expect(
        await compute(
          call('TEST.DOUBLE', 0.25),
          call('TEST.KNOWN', 'melon'),
          call('TEST.SHOW', '007'),
          call('TEST.DAY'),
          operate('00', '&', 7),
          native('AND', true, operate(1, '<', 2)),
          operate(operate(1, '-', 4), '/', 2),
        ),
      ).toEqual([0.5, true, '["007"]', 46144, '007', true, -1.5]);
    });

    test('errors keep what our function said; those of the program have no message', async () => {
      expect(
        await compute(
          call('TEST.DOUBLE', 'long'),
          call('TEST.KNOWN', 'rock'),
          call('TEST.HUGE'),
          operate(1, '/', 0),
          native('MATCH', 'nowhere', allOf('Plots', 'Plot'), 0),
          native('IFERROR', call('TEST.DOUBLE', 'long'), 'caught'),
          native('ISERROR', call('TEST.KNOWN', 'rock')),
          native('ISERR', call('TEST.KNOWN', 'rock')),
          native('ISERR', operate(call('TEST.DOUBLE', 'long'), '&', native('NA'))),
          native('NA'),
        ),
      ).toEqual([
        { error: '#VALUE!', message: said(notNumber) },
        { error: '#N/A', message: said(notKnown) },
        { error: '#NUM!', message: said('The result is too large.') },
        { error: '#DIV/0!', message: null },
        { error: '#N/A', message: null },
        'caught',
        true,
        false,
        true,
        { error: '#N/A', message: null },
      ]);
    });

    test('an error handed to our function goes through; in a range it is seen in its place', async () => {
      await subject.port.apply(
        change({
          newSheets: [
            newSheet('Bad', {
              blocks: [
                { row: 0, column: 0, contents: [['Value'], [{ compute: operate(1, '/', 0) }], [null], [2]] },
              ],
              tables: [
                { name: 'Bad', headers: ['Value'], row: 0, column: 0, rows: 4, columns: 1, grows: null },
              ],
            }),
          ],
        }),
      );
      const [passed, seen] = await compute(
        call('TEST.DOUBLE', operate(1, '/', 0)),
        call('TEST.SHOW', allOf('Bad', 'Value')),
      );
      expect(passed).toEqual({ error: '#DIV/0!', message: null });
      expect(JSON.parse(String(seen))).toEqual([[[{ error: '#DIV/0!', message: null }], [null], [2]]]);
    });

    test('an error in one row spoils that row alone', async () => {
      await subject.port.apply(change({ newSheets: [plots] }));
      const rows = [plotRow('c', 'long'), plotRow('d', 5)];
      await subject.port.apply(change({ tableRows: [{ table: 'Plots', rows }] }));
      await subject.port.settle(settleMs);
      expect((await subject.port.readTable('Plots'))?.rows.map((row) => row[2])).toEqual([
        200,
        80,
        { error: '#VALUE!', message: said(notNumber) },
        10,
      ]);
      const mended = [{ sheet: 'Plots', row: 5, column: 1, contents: [[6]] }];
      await subject.port.apply(change({ cells: mended }));
      await subject.port.settle(settleMs);
      expect((await subject.port.readTable('Plots'))?.rows.map((row) => row[2])).toEqual([200, 80, 12, 10]);
    });

    test('one table looks up in another, by INDEX and MATCH', async () => {
      const crops = [
        ['melon', 80, 'vine'],
        ['okra', 55, ''],
      ];
      const days = lookUp(column('Crop'), 'Crops', 'Crop', 'Days');
      const row = (crop: string): CellContent[] => [
        crop,
        { compute: days },
        { compute: operate(days, '+', 1) },
      ];
      const table = { row: 0, column: 0, rows: 3, columns: 3, grows: null };
      await subject.port.apply(
        change({
          newSheets: [
            newSheet('Sown', {
              blocks: [
                { row: 0, column: 0, contents: [['Crop', 'Days', 'After'], row('okra'), row('gourd')] },
              ],
              tables: [{ ...table, name: 'Sown', headers: ['Crop', 'Days', 'After'] }],
            }),
            newSheet('Crops', {
              blocks: [{ row: 0, column: 0, contents: [['Crop', 'Days', 'Habit'], ...crops] }],
              tables: [{ ...table, name: 'Crops', headers: ['Crop', 'Days', 'Habit'] }],
            }),
          ],
        }),
      );
      await subject.port.settle(settleMs);
      const missing = { error: '#N/A', message: null };
      expect((await subject.port.readTable('Sown'))?.rows).toEqual([
        ['okra', 55, 56],
        ['gourd', missing, missing],
      ]);
    });

    describe('a list that spills', () => {
      const anchor = (most: number): CellContent => ({
        compute: call('TEST.SQUARES', input('HOW_MANY')),
        spillsOver: { rows: most, columns: 2 },
      });
      /** How many are asked for, the sum of the squares by their name, and the list under both. */
      const squares = (howMany: CellContent, below: CellContent = null) =>
        newSheet('Squares', {
          blocks: [
            { row: 0, column: 0, contents: [[howMany, { compute: native('SUM', input('ALL_SQUARES')) }]] },
            { row: 2, column: 0, contents: [[anchor(6)]] },
            ...(below === null ? [] : [{ row: 4, column: 0, contents: [[below]] }]),
          ],
          names: { HOW_MANY: [0, 0], ALL_SQUARES: [2, 1, 6] },
          dressings: [{ row: 2, column: 1, rows: 6, columns: 1, role: 'plain', format: 'date' }],
        });
      const read = async (rows: number) => {
        expect(await subject.port.settle(settleMs)).toEqual([]);
        return subject.port.read({ sheet: 'Squares', row: 0, column: 0, rows, columns: 2 });
      };

      test('fills the cells under its formula, and other formulas read them by their name', async () => {
        await subject.port.apply(change({ newSheets: [squares(3)] }));
        const { values, formulas } = await read(6);
        expect(values).toEqual([
          [3, 14],
          [null, null],
          [1, 1],
          [2, 4],
          [3, 9],
          [null, null],
        ]);
        expect(formulas.slice(2)).toEqual([
          ['=CUCURBIT.TEST.SQUARES(HOW_MANY)', null],
          [null, null],
          [null, null],
          [null, null],
        ]);
        const { used } = (await subject.port.sheets()).find(({ name }) => name === 'Squares') ?? {};
        expect(used).toMatchObject({ row: 0, column: 0, rows: 5, columns: 2 });
        expect(await subject.port.locate('ALL_SQUARES')).toEqual({
          sheet: 'Squares',
          row: 2,
          column: 1,
          rows: 6,
          columns: 1,
        });
      });

      test.each([
        ['before', operate(10, '+', call('TEST.SQUARES', 2))],
        ['after', operate(call('TEST.SQUARES', 2), '+', 10)],
      ])('counts with each of its values, a number %s it', async (_, compute) => {
        const contents: CellContent[][] = [[{ compute, spillsOver: { rows: 6, columns: 2 } }]];
        await subject.port.apply(change({ newSheets: [formulaSheet('Results', contents)] }));
        expect(await subject.port.settle(settleMs)).toEqual([]);
        const area = { sheet: 'Results', row: 0, column: 0, rows: 3, columns: 2 };
        expect((await subject.port.read(area)).values).toEqual([
          [11, 11],
          [12, 14],
          [null, null],
        ]);
      });

      test('grows and shrinks with what it is made of', async () => {
        await subject.port.apply(change({ newSheets: [squares(2)] }));
        for (const [howMany, sum] of [
          [5, 55],
          [1, 1],
        ] as const) {
          await subject.port.apply(
            change({ cells: [{ sheet: 'Squares', row: 0, column: 0, contents: [[howMany]] }] }),
          );
          const { values } = await read(8);
          expect(values[0]).toEqual([howMany, sum]);
          expect(values.slice(2).filter(([first]) => first !== null)).toHaveLength(howMany);
        }
      });

      test('is read right where it hangs on another list', async () => {
        const list = (howMany: Expression): CellContent => ({
          compute: call('TEST.SQUARES', howMany),
          spillsOver: { rows: 9, columns: 2 },
        });
        const chained = newSheet('Chained', {
          blocks: [
            { row: 0, column: 0, contents: [[2, { compute: native('SUM', input('SECOND_SQUARES')) }]] },
            { row: 2, column: 0, contents: [[list(input('HOW_MANY'))]] },
            { row: 2, column: 3, contents: [[list(native('MAX', input('FIRST_SQUARES')))]] },
          ],
          names: { HOW_MANY: [0, 0], FIRST_SQUARES: [2, 1, 9], SECOND_SQUARES: [2, 4, 9] },
        });
        await subject.port.apply(change({ newSheets: [chained] }));
        // 1 + 4 + 9 + 16; of one square alone 1; of nine 285.
        for (const [howMany, sum] of [
          [2, 30],
          [3, 285],
          [1, 1],
        ] as const) {
          const cells = [{ sheet: 'Chained', row: 0, column: 0, contents: [[howMany]] }];
          await subject.port.apply(change({ cells }));
          expect(await subject.port.settle(settleMs)).toEqual([]);
          const area = { sheet: 'Chained', row: 0, column: 1, rows: 1, columns: 1 };
          expect((await subject.port.read(area)).values).toEqual([[sum]]);
        }
      });

      test('overwrites nothing: with a cell in its way it is an error', async () => {
        await subject.port.apply(change({ newSheets: [squares(3, 'mine')] }));
        const { values } = await read(6);
        expect(values[2]?.[0]).toEqual({ error: '#SPILL!', message: null });
        expect(values.slice(3)).toEqual([
          [null, null],
          ['mine', null],
          [null, null],
        ]);
      });
    });

    test('native functions', async () => {
      const lengths = allOf('Plots', 'Length');
      expect(
        await compute(
          when(operate(2, '>=', 2), 'yes', 'no'),
          native('OR', false, operate(2, '<', 1)),
          native('ISNUMBER', 5),
          native('COUNTIF', lengths, '>50'),
          native('COUNTIFS', allOf('Plots', 'Plot'), '*', lengths, '>50'),
          native('SUMIFS', lengths, lengths, '>50'),
          native('MINIFS', lengths, lengths, '>50'),
          native('MIN', lengths, 3),
          native('MAX', lengths),
          native('DATE', 2026, 5, 2),
          native('YEAR', 46144),
          native('MONTH', 46144),
          native('DAY', 46144),
          native('COUNT', allOf('Plots', 'Plot'), allOf('Plots', 'Length')),
          native('MEDIAN', allOf('Plots', 'Length'), 3, 4),
          native('ROUNDUP', 2.01, 0),
          native('INT', -2.01),
          native('ROUND', -2.345, 2),
          operate('a', '&', 1),
          operate('a', '<>', 'A'),
          operate(operate(7, '-', operate(3, '-', 2)), '*', 2),
          native('INDEX', allOf('Plots', 'Plot'), 2),
        ),
      ).toEqual([
        'yes',
        false,
        true,
        1,
        1,
        100,
        100,
        3,
        100,
        46144,
        2026,
        5,
        2,
        2,
        22,
        3,
        -3,
        -2.35,
        'a1',
        false,
        12,
        '007',
      ]);
    });
  });
}
