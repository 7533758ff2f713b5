import { describe, expect, it } from 'vitest';
import { createFileWorkbook } from '../../../src/hosts/file/createFileWorkbook';
import type { FileFunction } from '../../../src/hosts/file/evaluate';
import { allOf, call, column, input, native, operate } from '../../../src/workbook/expressions';
import { isCellError, type Expression, type ReadValue } from '../../../src/workbook/port';
import { change } from '../../contract/contractWorkbook';
import { sampleHeaders, sampleSheet, semantics } from './semantics';

const emptyChange = change({});
const resultCell = { sheet: 'Sample', row: 1, column: sampleHeaders.length, rows: 1, columns: 1 };

async function evaluateOne(
  expression: Expression,
  functions: readonly FileFunction[] = [],
): Promise<ReadValue> {
  const workbook = createFileWorkbook({ functions });
  await workbook.apply({ ...emptyChange, newSheets: [sampleSheet(expression)] });
  return (await workbook.read(resultCell)).values[0]?.[0] ?? null;
}

for (const [title, cases] of Object.entries(semantics)) {
  describe(title, () => {
    it.each(
      cases.map(([expression, expected]) => [JSON.stringify(expression), expected, expression] as const),
    )('%s is %j', async (_, expected, expression) => {
      const value = await evaluateOne(expression);
      expect(isCellError(value) ? value.error : value).toEqual(expected);
    });
  });
}

describe('our functions', () => {
  const seen: unknown[][] = [];
  const recorder: FileFunction = {
    id: 'TEST.SEE',
    run: (args) => {
      seen.push(args);
      return { value: 1 };
    },
  };
  const refuser: FileFunction = {
    id: 'TEST.REFUSE',
    run: () => ({ error: '#N/A', message: 'No such thing.' }),
  };
  const lister: FileFunction = {
    id: 'TEST.LIST',
    run: () => ({
      value: [
        [1, 'a'],
        [2, 'b'],
      ],
    }),
  };

  it('see an omitted argument and an empty cell as null, a column as rows with holes', async () => {
    seen.length = 0;
    await evaluateOne(
      call('test.see', null, input('NO_VALUE'), 'x', input('SOME_TRUTH'), allOf('Sample', 'Mix'), null),
      [recorder],
    );
    const mix = [[true], ['x'], ['5'], [null], [2], ['TRUE'], [false], [0]];
    expect(seen).toEqual([[null, null, 'x', true, mix]]);
  });

  it('are not run on an error; it goes on without a message that is not its own', async () => {
    seen.length = 0;
    expect(await evaluateOne(call('TEST.SEE', operate(1, '/', 0)), [recorder])).toEqual({
      error: '#DIV/0!',
      message: null,
    });
    expect(seen).toEqual([]);
  });

  it('keep the message of a refusal, also one passed on inside the same cell', async () => {
    const refusal = { error: '#N/A', message: 'No such thing.' };
    expect(await evaluateOne(call('TEST.REFUSE'), [refuser])).toEqual(refusal);
    expect(await evaluateOne(call('TEST.SEE', call('TEST.REFUSE')), [refuser, recorder])).toEqual(refusal);
    expect(await evaluateOne(native('IFERROR', call('TEST.REFUSE'), 0), [refuser])).toBe(0);
  });

  it('give lists to other functions; a list in a cell has no room', async () => {
    expect(await evaluateOne(native('SUM', call('TEST.LIST')), [lister])).toBe(3);
    expect(await evaluateOne(native('INDEX', call('TEST.LIST'), 2, 2), [lister])).toBe('b');
    expect(await evaluateOne(call('TEST.LIST'), [lister])).toEqual({ error: '#VALUE!', message: null });
  });

  it('that are not there are #NAME?, numbers that are none #NUM!', async () => {
    const infinite: FileFunction = { id: 'TEST.INFINITE', run: () => ({ value: Infinity }) };
    expect(await evaluateOne(call('TEST.NONE'))).toMatchObject({ error: '#NAME?' });
    // The file host reads no formulas.
    expect(await evaluateOne({ typed: 'A1' })).toMatchObject({ error: '#NAME?' });
    expect(await evaluateOne(call('TEST.INFINITE'), [infinite])).toMatchObject({ error: '#NUM!' });
  });

  it('that throw take the change back', async () => {
    const broken: FileFunction = {
      id: 'TEST.BROKEN',
      run: () => {
        throw new TypeError('broken');
      },
    };
    const workbook = createFileWorkbook({ functions: [broken] });
    const change = { ...emptyChange, newSheets: [sampleSheet(call('TEST.BROKEN'))] };
    await expect(workbook.apply(change)).rejects.toMatchObject({
      problem: { code: 'failed', action: 'TEST.BROKEN' },
      cause: new TypeError('broken'),
    });
    expect(await workbook.sheets()).toEqual([]);
  });
});

describe('cells that need each other', () => {
  it('are computed in whatever order they need', async () => {
    const workbook = createFileWorkbook({ functions: [] });
    const sheet = chainSheet([operate(column('B'), '+', 1), operate(column('C'), '*', 2), { value: 5 }]);
    await workbook.apply({ ...emptyChange, newSheets: [sheet] });
    expect((await workbook.readTable('Chain'))?.rows).toEqual([[11, 10, 5]]);
  });

  it('are an error when they go round', async () => {
    const workbook = createFileWorkbook({ functions: [] });
    const sheet = chainSheet([column('B'), column('A'), native('SUM', allOf('Chain', 'C'))]);
    await workbook.apply({ ...emptyChange, newSheets: [sheet] });
    const [row] = (await workbook.readTable('Chain'))?.rows ?? [];
    expect(row).toEqual(Array.from({ length: 3 }, () => ({ error: '#CYCLE!', message: null })));
  });
});

function chainSheet(formulas: readonly Expression[]): ReturnType<typeof sampleSheet> {
  const headers = ['A', 'B', 'C'];
  const contents = [headers, formulas.map((compute) => ({ compute }))];
  return {
    ...sampleSheet({ value: 0 }),
    names: {},
    blocks: [{ row: 0, column: 0, contents }],
    tables: [{ name: 'Chain', headers, row: 0, column: 0, rows: 2, columns: 3, grows: null }],
  };
}
