/** Texts written in formulas are made once, and mean in every cell and after every edit what they mean at first. */
import { StringValueObject } from '@univerjs/engine-formula';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ReadValue } from '../../../src/workbook/port';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('texts written in formulas', () => {
  let typed: TypedWorkbook;
  beforeEach(() => {
    typed = openTyped();
  });
  afterEach(() => {
    vi.restoreAllMocks();
    typed.workbook.dispose();
  });

  async function results(rows: number, columns: number): Promise<ReadValue[][]> {
    expect(await typed.workbook.settle(settleMs)).toEqual([]);
    const { values } = await typed.workbook.read({ sheet: 'Kitchen', row: 0, column: 1, rows, columns });
    return values.map((row) => [...row]);
  }

  it('are the same after each of several edits, also where they read as a number or a date', async () => {
    const formulas = [
      '=IF($A$1>1,"over","under")&"!"',
      '="20%"&$A$1',
      '=IF($A$1>1,"2027-05-16","")&""',
      '=SUM("3",$A$1)',
      '="5"*$A$1',
    ];
    await typed.type('Kitchen', 0, 0, [[{ v: 1 }]]);
    await typed.type(
      'Kitchen',
      0,
      1,
      Array.from({ length: 2 }, () => formulas.map((f) => ({ f }))),
    );
    const first = await results(2, formulas.length);
    // By hand.
    expect(first[0]).toMatchObject(['under!', '20%1', '', 4, 5]);
    expect(first[1]).toEqual(first[0]);
    for (const v of [2, 1, 2, 1]) {
      await typed.type('Kitchen', 0, 0, [[{ v }]]);
      const again = await results(2, formulas.length);
      expect(again[1]).toEqual(again[0]);
      if (v === 1) expect(again).toEqual(first);
      else expect(again[0]?.slice(0, 2)).toEqual(['over!', '20%2']);
    }
  });

  it('are not made again in the next cell, nor at the next calculation', async () => {
    const create = vi.spyOn(StringValueObject, 'create');
    const made = (): number => create.mock.calls.filter(([text]) => text === 'not again').length;
    const row = { f: '=IF($A$1>1,"not again","never")' };
    await typed.type('Kitchen', 0, 0, [[{ v: 2 }]]);
    await typed.type(
      'Kitchen',
      0,
      1,
      Array.from({ length: 30 }, () => [row]),
    );
    expect((await results(30, 1)).at(-1)).toEqual(['not again']);
    const once = made();
    expect(once).toBe(1);
    await typed.type('Kitchen', 0, 0, [[{ v: 3 }]]);
    expect((await results(30, 1)).at(-1)).toEqual(['not again']);
    expect(made()).toBe(once);
  });
});
