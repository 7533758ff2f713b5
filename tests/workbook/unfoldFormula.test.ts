import { describe, expect, test } from 'vitest';
import type { Area, ReadValue, WorkbookPort } from '../../src/workbook/port';
import { unfoldFormula, type Unfolded, type UnfoldOptions } from '../../src/workbook/unfoldFormula';

const sheet = 'Garden';
const table = {
  name: 'Beds',
  area: { sheet, row: 2, column: 0, rows: 4, columns: 3 },
  headers: ['Name', 'Length', 'Twice'],
  rows: [
    ['a', 10, 20],
    ['b', null, 0],
    ['c', 7, 14],
  ] as ReadValue[][],
};
/** Beds from A3; B1 is the name SHARE; D4 and on hold numbers of their own. */
const values: Record<string, ReadValue> = {
  '0 1': 0.5,
  '3 3': 100,
  '4 3': 200,
  '0 4': { error: '#N/A', message: 'why' },
};

/** A workbook in which the formula stands in the first row of Beds. */
function workbookWith(formula: string | null, shown: ReadValue = null): WorkbookPort {
  const valueAt = (row: number, column: number): ReadValue => {
    const inTable = row > 2 && row < 6 && column < 3 ? table.rows[row - 3]?.[column] : undefined;
    return inTable ?? values[`${row} ${column}`] ?? null;
  };
  const at = { row: 3, column: 2 };
  const read = (area: Area) =>
    Array.from({ length: area.rows }, (_, i) =>
      Array.from({ length: area.columns }, (__, j) => [area.row + i, area.column + j] as const),
    );
  const isAt = ([row, column]: readonly [number, number]): boolean => row === at.row && column === at.column;
  const port: Partial<WorkbookPort> = {
    sheets: () =>
      Promise.resolve([
        { name: sheet, mark: null, locked: false, used: { sheet, row: 0, column: 0, rows: 6, columns: 5 } },
      ]),
    read: (area) =>
      Promise.resolve({
        values: read(area).map((row) => row.map((cell) => (isAt(cell) ? shown : valueAt(...cell)))),
        formulas: read(area).map((row) => row.map((cell) => (isAt(cell) ? formula : null))),
      }),
    readTable: (name) => Promise.resolve(name.toLowerCase() === 'beds' ? table : null),
    locate: (name) =>
      Promise.resolve(
        {
          SHARE: { sheet, row: 0, column: 1, rows: 1, columns: 1 },
          LOTS: { sheet, row: 0, column: 0, rows: 200_000, columns: 1 },
        }[name] ?? null,
      ),
  };
  return port as WorkbookPort;
}

/** TWICE doubles, TOTAL adds up a range, PAIR gives a list, FAIL refuses. */
const run: UnfoldOptions['run'] = (id, args) => {
  const [first] = args;
  if (id === 'TEST.TWICE') return { value: 2 * Number(first) };
  if (id === 'TEST.TOTAL')
    return { value: (first as number[][]).flat().reduce((sum, one) => sum + Number(one), 0) };
  if (id === 'TEST.PAIR') return { value: [[1, 2]] };
  return id === 'TEST.FAIL' ? { error: '#VALUE!', message: 'no' } : null;
};

async function unfold(formula: string | null, shown?: ReadValue): Promise<Unfolded> {
  const at = { sheet, row: 3, column: 2, rows: 1, columns: 1 };
  const options = { namespace: 'OURS.', tables: ['Other', 'Beds'], run };
  const unfolded = await unfoldFormula(workbookWith(formula, shown), at, options);
  if (unfolded === null || unfolded === 'unreadable') throw new Error(String(unfolded));
  return unfolded;
}
const given = ({ calls }: Unfolded): unknown =>
  calls.map(({ values: all }) => all.map((one) => one && one.value));
const from = ({ calls }: Unfolded): unknown =>
  calls.map(({ args }) =>
    args.map((arg) =>
      arg?.from.map(({ area, label }) => [area.row, area.column, area.rows, area.columns, label]),
    ),
  );

test('all that is not followed beside a call is named, on both sides of an operator', async () => {
  const { calls, notFollowed } = await unfold('=LET(x,2,x)*OURS.TEST.TWICE(D4)+OFFSET(A1,1,0)');
  expect(calls.map(({ id, isAsked }) => [id, isAsked])).toEqual([['TEST.TWICE', true]]);
  expect(notFollowed).toEqual([
    { text: 'LET(x,2,x)', why: 'function' },
    { text: 'OFFSET(A1,1,0)', why: 'function' },
  ]);
});

describe('what is around the calls', () => {
  const around = async (formula: string): Promise<unknown> =>
    (await unfold(formula)).around.map(({ text, value }) => [text, value]);

  test('is worked out part by part', async () => {
    // 2 x 100 = 200; / 3 = 66.66…, to one place 66.7, twice that 133.4.
    expect(await around('=ROUND(OURS.TEST.TWICE(D4)/3,1)*2')).toEqual([
      ['TEST.TWICE(…)/3', 200 / 3],
      ['ROUND(TEST.TWICE(…)/3,1)', 66.7],
      ['ROUND(TEST.TWICE(…)/3,1)*2', 133.4],
    ]);
  });

  test('names both of two that are joined, and what they are compared with', async () => {
    expect(await around('=OURS.TEST.TWICE(D4)+OURS.TEST.TWICE(D4)')).toEqual([
      ['TEST.TWICE(…)+TEST.TWICE(…)', 400],
    ]);
    expect(await around('=IF(OURS.TEST.TWICE(D4)>300,"much","little")')).toEqual([
      ['TEST.TWICE(…)>300', false],
      ['IF(TEST.TWICE(…)>300,"much","little")', 'little'],
    ]);
  });

  test('is nothing where it hands on what they give, is inside one, is not come to, or gives an error', async () => {
    expect(await around('=IF(D4="","",OURS.TEST.TWICE(D4))')).toEqual([]);
    expect(await around('=OURS.TEST.TWICE(OURS.TEST.TWICE(SHARE)+0.2)')).toEqual([]);
    expect(await around('=IF(D4>1,7,OURS.TEST.TWICE(D4)*3)')).toEqual([]);
    expect(await around('=OURS.TEST.FAIL(1)+1')).toEqual([]);
    expect(await around('=OURS.TEST.TWICE(D4)+LET(x,2,x)')).toEqual([]);
  });
});

describe('what the whole comes to when a call gives something else', () => {
  /** With 300 in place of what the last call gives, because of its first argument. */
  const whole = async (formula: string): Promise<unknown> =>
    (await unfold(formula)).calls.at(-1)?.wholeWith(0, { value: 300 });

  test('is worked out with all else as it is', async () => {
    expect(await whole('=ROUND(OURS.TEST.TWICE(D4)/7,1)+D5')).toBe(242.9);
    expect(await whole('=OURS.TEST.TWICE(D4)')).toBe(300);
    // 2 x 300, through the function around it.
    const { calls } = await unfold('=OURS.TEST.TWICE(OURS.TEST.TWICE(SHARE)+0.5)-1');
    expect(calls[0]?.wholeWith(0, { value: 300 })).toBe(600);
    expect(await whole('=IF(OURS.TEST.TWICE(D4)>250,"much","little")')).toBe('much');
    const failed = await unfold('=OURS.TEST.TWICE(D4)+1');
    expect(failed.calls[0]?.wholeWith(0, { error: '#N/A', message: 'why' })).toMatchObject({ error: '#N/A' });
  });

  test('the very same call moves along', async () => {
    expect(await whole('=OURS.TEST.TWICE(D4)+OURS.TEST.TWICE(D4)')).toBe(600);
  });

  test('is not told where the cell speaks elsewhere too, but for a test whether it is blank', async () => {
    expect(await whole('=OURS.TEST.TWICE(D4)+D4')).toBeUndefined();
    expect(await whole('=OURS.TEST.TWICE(D4)+SUM(D4:D5)')).toBeUndefined();
    expect(await whole('=IF(OURS.TEST.TWICE(D4)>250,1,D4)')).toBeUndefined();
    expect(await whole('=OURS.TEST.TWICE(OURS.TEST.TOTAL(D4:D5))+OURS.TEST.TWICE(D5)')).toBeUndefined();
    expect(await whole('=IF(D4="","",OURS.TEST.TWICE(D4)*2)')).toBe(600);
  });

  test('nor where it is not come to, not followed, or a list', async () => {
    expect(await whole('=IF(D5>1,7,OURS.TEST.TWICE(D4)*3)')).toBeUndefined();
    expect(await whole('=OURS.TEST.TWICE(D4)+LET(x,2,x)')).toBeUndefined();
    const { calls } = await unfold('=OURS.TEST.PAIR(D4)');
    expect(calls[0]?.wholeWith(0, { value: [[3, 4]] })).toBeUndefined();
  });
});

describe('arguments', () => {
  test('cells, names, columns of the row and of the table, with where they stand', async () => {
    const unfolded = await unfold(
      '=OURS.TEST.TWICE(Beds[[#This Row],[Length]],[@Length],D4,SHARE,3)+OURS.TEST.TOTAL(Beds[Length])+OURS.TEST.TOTAL(D4:E5)',
    );
    expect(given(unfolded)).toEqual([
      [10, 10, 100, 0.5, 3],
      [[[10], [null], [7]]],
      [
        [
          [100, null],
          [200, null],
        ],
      ],
    ]);
    expect(from(unfolded)).toEqual([
      [[[3, 1, 1, 1, 'Length']], [[3, 1, 1, 1, 'Length']], [[3, 3, 1, 1, '']], [[0, 1, 1, 1, 'SHARE']], []],
      [[[3, 1, 3, 1, 'Length']]],
      [[[3, 3, 2, 2, '']]],
    ]);
    // 2 x 10 + (10 + 7) + (100 + 200).
    expect(unfolded.result).toBe(337);
    expect(unfolded.notFollowed).toEqual([]);
  });

  test('no cell is named for a value that cannot be followed: it may come from another one', async () => {
    const unfolded = await unfold('=OURS.TEST.TWICE(OFFSET(D4,1,0),D4)');
    expect(given(unfolded)).toEqual([[null, 100]]);
    expect(from(unfolded)).toEqual([[[], [[3, 3, 1, 1, '']]]]);
    expect(unfolded.calls[0]?.args[0]).toMatchObject({ text: 'OFFSET(D4,1,0)', isSum: true });
  });

  test('a whole column ends where the sheet does', async () => {
    expect(given(await unfold('=OURS.TEST.TOTAL(D:D)'))).toEqual([
      [[[null], [null], [null], [100], [200], [null]]],
    ]);
  });

  test('left out, and worked out of nothing but what is written', async () => {
    const { calls } = await unfold('=OURS.TEST.TWICE(2*3,,OURS.TEST.TWICE(D4)/2)');
    expect(calls.map(({ text }) => text)).toEqual([
      'OURS.TEST.TWICE(D4)',
      'OURS.TEST.TWICE(2*3,,OURS.TEST.TWICE(D4)/2)',
    ]);
    expect(calls[1]?.args).toMatchObject([
      { text: '2*3', isSum: true, calls: [] },
      null,
      { isSum: false, calls: ['TEST.TWICE'], from: [] },
    ]);
    expect(calls[1]?.values.map((one) => one?.value)).toEqual([6, null, 100]);
  });

  test('a blank that stands for "not given" is told from where it was looked for', async () => {
    const blank = 'IF(A1&""="","",A1)';
    const unfolded = await unfold(`=OURS.TEST.TWICE(${blank},IF(A1&""="",SHARE,B4))`);
    expect(given(unfolded)).toEqual([['', 0.5]]);
    // B4 is not asked for, so it is not where the value came from.
    expect(from(unfolded)).toEqual([
      [
        [[0, 0, 1, 1, '']],
        [
          [0, 0, 1, 1, ''],
          [0, 1, 1, 1, 'SHARE'],
        ],
      ],
    ]);
  });
});

describe('several calls', () => {
  test('the inner ones first, each with what it was given', async () => {
    const unfolded = await unfold('=ROUNDUP(OURS.TEST.TWICE(OURS.TEST.TWICE(SHARE)+0.2),0)');
    expect(given(unfolded)).toEqual([[0.5], [1.2]]);
    // 2 x (2 x 0.5 + 0.2) = 2.4, rounded up.
    expect(unfolded.result).toBe(3);
  });

  test('in a branch that is not taken it is worked out all the same, and said to be idle', async () => {
    const unfolded = await unfold('=IF(B4>5,OURS.TEST.TWICE(B4),OURS.TEST.TWICE(D4))');
    expect(unfolded.calls.map(({ isAsked, values: all }) => [isAsked, all[0]?.value])).toEqual([
      [true, 10],
      [false, 100],
    ]);
    expect(unfolded.result).toBe(20);
  });

  test('of a list the first stands in the cell', async () => {
    expect((await unfold('=OURS.TEST.PAIR()')).result).toBe(1);
    expect((await unfold('=INDEX(OURS.TEST.PAIR(),1,2)')).result).toBe(2);
  });

  test('errors of ours and of cells', async () => {
    expect((await unfold('=IFERROR(OURS.TEST.FAIL(),7)')).result).toBe(7);
    // A program hands an error on without asking the function.
    expect((await unfold('=OURS.TEST.TWICE(E1)')).result).toEqual({ error: '#N/A', message: null });
  });
});

describe('what is not followed is named', () => {
  test.each([
    ['=OURS.TEST.TWICE(VLOOKUP(1,A1:B2,2))', 'VLOOKUP(1,A1:B2,2)', 'function'],
    ['=OURS.TEST.TWICE(2^3)', '2^3', 'notation'],
    ["=OURS.TEST.TWICE('[other.xlsx]Sheet1'!A1)", "'[other.xlsx]Sheet1'!A1", 'notation'],
    ['=OURS.TEST.TWICE(NOBODY)', 'NOBODY', 'name'],
    ['=OURS.TEST.TWICE(Elsewhere!A1)', 'Elsewhere!A1', 'name'],
    ['=OURS.TEST.TWICE(Beds[Width])', 'Beds[Width]', 'table'],
    ['=OURS.TEST.TWICE(Sheds[Length])', 'Sheds[Length]', 'table'],
    ['=OURS.TEST.TWICE(D4:D5*2)', 'D4:D5', 'list'],
    ['=OURS.TEST.TOTAL(LOTS)', 'LOTS', 'tooMany'],
    ['=OURS.TEST.NOBODY(1)', 'OURS.TEST.NOBODY(1)', 'function'],
  ])('%s', async (formula, text, why) => {
    const unfolded = await unfold(formula);
    expect(unfolded.notFollowed).toContainEqual({ text, why });
    expect(unfolded.result).toBeUndefined();
  });

  test('the arguments beside it are worked out, and so are calls inside a function of the program', async () => {
    const unfolded = await unfold('=TEXT(OURS.TEST.TWICE(TODAY(),D4,OURS.TEST.TWICE(B4)),"0")');
    expect(given(unfolded)).toEqual([[10], [null, 100, 20]]);
    expect(unfolded.calls.map(({ isAsked }) => isAsked)).toEqual([true, true]);
    expect(unfolded.notFollowed.map(({ text }) => text)).toEqual([
      'TODAY()',
      expect.stringMatching(/^TEXT\(/),
    ]);
  });

  test('where a branch cannot be chosen, nobody says that it was taken', async () => {
    const unfolded = await unfold('=IF(TODAY()>5,OURS.TEST.TWICE(1),OURS.TEST.TWICE(2))');
    expect(unfolded.calls.map(({ isAsked }) => isAsked)).toEqual([null, null]);
    const chosen = await unfold('=IFS(TRUE,OURS.TEST.TWICE(1))');
    expect(chosen.calls.map(({ isAsked }) => isAsked)).toEqual([null]);
  });
});

test('a cell without a formula, one without a call of ours, and one that cannot be read', async () => {
  const at = { sheet, row: 3, column: 2, rows: 1, columns: 1 };
  const options = { namespace: 'OURS.', tables: [], run };
  expect(await unfoldFormula(workbookWith(null, 5), at, options)).toBeNull();
  expect(await unfoldFormula(workbookWith('=SUM(A1:A2)'), at, options)).toBeNull();
  expect(await unfoldFormula(workbookWith('=SUM(A1 A2)'), at, options)).toBeNull();
  expect(await unfoldFormula(workbookWith('=ours.test.twice(A1 A2)'), at, options)).toBe('unreadable');
});
