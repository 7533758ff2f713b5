/**
 * How arguments reach our functions. An empty cell is an argument left out, however the cell came to be empty, a 0
 * stays a 0, and a text stays a text: only our functions know which texts are dates.
 */
import { ClearSelectionContentCommand } from '@univerjs/sheets';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { functions } from '../../../src/functions';
import { contractFunctions } from '../../contract/contractFunctions';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

let typed: TypedWorkbook;
beforeAll(async () => {
  typed = openTyped(undefined, [...functions.values(), ...contractFunctions]);
  await typed.type('Kitchen', 0, 1, [
    [{ s: { n: { pattern: '0%' } } }],
    [{ v: 7 }],
    [{ v: '' }],
    [{ v: 7 }],
    [{ f: '=CUCURBIT.TEST.DOUBLE("x")', v: null }],
    [{ v: 0 }],
  ]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  await typed.type('Kitchen', 1, 1, [[{ v: null }]]);
  const erased = { startRow: 3, endRow: 4, startColumn: 1, endColumn: 1 };
  const place = { unitId: typed.engine.unitId, subUnitId: typed.idOf('Kitchen') };
  await typed.run(ClearSelectionContentCommand.id, { ...place, ranges: [erased] });
});
afterAll(() => typed.workbook.dispose());

async function calculate(formula: string): Promise<unknown> {
  await typed.type('Kitchen', 0, 8, [[{ f: formula, v: null }]]);
  expect(await typed.workbook.settle(settleMs)).toEqual([]);
  const area = { sheet: 'Kitchen', row: 0, column: 8, rows: 1, columns: 1 };
  return (await typed.workbook.read(area)).values[0]?.[0];
}

/** Never used, with a look only, erased in three ways, an error erased. */
const empties = ['A1', 'B1', 'B2', 'B3', 'B4', 'B5', 'A1:A1'];

test.each(empties)('%s arrives as null', async (cell) => {
  expect(await calculate(`=CUCURBIT.TEST.SHOW(${cell})`)).toMatch(/^\[(null|"")\]$/);
});

test.each([
  // Each kind of parameter: a number, a share, a choice, a word, a date, the units, whatever is given.
  ['HARVEST.YIELD(400,138,_)', 'HARVEST.YIELD(400,138)'],
  ['SEED.NEEDED(100,0.8,_)', 'SEED.NEEDED(100,0.8)'],
  ['PLANTS.INROWS(100,20,5,12,_,_)', 'PLANTS.INROWS(100,20,5,12)'],
  ['DATE.COVEROFF(46150,"cucumber",_,_)', 'DATE.COVEROFF(46150,"cucumber")'],
  ['DATE.LASTPICK(46200,21,_)', 'DATE.LASTPICK(46200,21)'],
  ['PLANTS.DENSITY(2,36,_)', 'PLANTS.DENSITY(2,36)'],
  ['SEED.NEEDED(100,_)', 'SEED.NEEDED(100,)'],
])('%s is as with the argument left out', async (call, without) => {
  const wanted = await calculate(`=CUCURBIT.${without}`);
  for (const cell of empties) {
    expect(await calculate(`=CUCURBIT.${call.replaceAll('_', cell)}`), cell).toEqual(wanted);
  }
});

test('a 0 in a cell stays a 0', async () => {
  expect(await calculate('=CUCURBIT.TEST.SHOW(B6)')).toBe('[0]');
  expect(await calculate('=CUCURBIT.SEED.NEEDED(100,0.8,B6)')).toMatchObject({ error: '#VALUE!' });
});

test('in a range each empty cell is null', async () => {
  expect(await calculate('=CUCURBIT.TEST.SHOW(B1:B6)')).toBe('[[[null],[null],[null],[null],[null],[0]]]');
});

test.each(['"5/2/2026"', '"May 2, 2026"', '"80%"', '"2026-05-02"', '"1:30"', '"007"', '"TRUE"'])(
  'the text %s arrives as it is',
  async (text) => {
    expect(await calculate(`=CUCURBIT.TEST.SHOW(${text})`)).toBe(`[${text}]`);
  },
);

test('a date written another way than 2026-05-02 is refused, in a formula and in a text cell', async () => {
  const refused = { error: '#VALUE!', message: expect.stringContaining('"5/2/2026"') as string };
  expect(await calculate('=CUCURBIT.DATE.FIRSTSOWING("5/2/2026")')).toEqual(refused);
  await typed.type('Kitchen', 7, 1, [[{ v: '5/2/2026', t: 1, s: { n: { pattern: '@' } } }]]);
  expect(await calculate('=CUCURBIT.DATE.FIRSTSOWING(B8)')).toEqual(refused);
  // functions.md: a week after 2026-05-02, which is 46144.
  expect(await calculate('=CUCURBIT.DATE.FIRSTSOWING("2026-05-02")')).toBe(46151);
});
