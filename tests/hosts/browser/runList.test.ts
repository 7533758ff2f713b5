/** What reads only cells that came out as they were is not calculated, and no cell keeps an old answer. */
import { FormulaDependencyTree } from '@univerjs/engine-formula';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { RunList } from '../../../src/hosts/browser/runList';
import type { SheetFunction } from '../../../src/hosts/browser/sheetFunction';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

describe('a list of formulas', () => {
  /** Each reads some of those before it, and of the sums that it makes many are alike. */
  const sheet = fc
    .array(fc.record({ reads: fc.array(fc.nat(20)), isWritten: fc.boolean(), adds: fc.nat(3) }), {
      minLength: 1,
      maxLength: 20,
    })
    .map((cells) =>
      cells.map(({ reads, ...cell }, i) => ({
        ...cell,
        reads: i === 0 ? [] : [...new Set(reads.map((each) => each % i))],
      })),
    );

  it('gives what calculating all of them gives, and calculates those alone that read what changed', () => {
    fc.assert(
      fc.property(sheet, (cells) => {
        const valueOf = (i: number, values: readonly number[], adds: number): number =>
          ((cells[i]?.reads ?? []).reduce((sum, each) => sum + (values[each] ?? 0), 0) + adds) % 3;
        const before: number[] = [];
        cells.forEach((_, i) => before.push(valueOf(i, before, 0)));
        const all: number[] = [];
        cells.forEach(({ isWritten, adds }, i) => all.push(valueOf(i, all, isWritten ? adds : 0)));

        const values = [...before];
        const calculated: number[] = [];
        const list = new RunList(
          cells.map((_, i) => new FormulaDependencyTree(i)).reverse(),
          new Set(cells.flatMap(({ isWritten }, i) => (isWritten ? [i] : []))),
          ({ treeId }) => cells.flatMap(({ reads }, i) => (reads.includes(treeId) ? [i] : [])),
          ({ treeId }) => values[treeId] !== before[treeId],
        );
        while (list.length > 0) {
          const { treeId } = list.pop() ?? { treeId: NaN };
          values[treeId] = valueOf(treeId, values, cells[treeId]?.isWritten ? (cells[treeId]?.adds ?? 0) : 0);
          calculated.push(treeId);
        }
        expect(values).toEqual(all);
        const wanted = cells.flatMap(({ isWritten, reads }, i) =>
          isWritten || reads.some((each) => all[each] !== before[each]) ? [i] : [],
        );
        expect(calculated).toEqual(wanted);
      }),
    );
  });
});

describe('in the grid', () => {
  let typed: TypedWorkbook | null = null;
  afterEach(() => typed?.workbook.dispose());

  it('a function is not called for an argument that came out as it was; other words of an error are said', async () => {
    let calls = 0;
    const counted: SheetFunction = {
      id: 'COUNTED',
      run([given]) {
        calls += 1;
        return { value: Number(given) * 10 };
      },
    };
    const refusing: SheetFunction = {
      id: 'REFUSING',
      run: ([given]) => ({ error: '#VALUE!', message: `not ${String(given)}` }),
    };
    typed = openTyped(undefined, [counted, refusing]);
    const { workbook, type } = typed;
    const read = async (): Promise<unknown> => {
      expect(await workbook.settle(settleMs)).toEqual([]);
      return (await workbook.read({ sheet: 'Kitchen', row: 0, column: 1, rows: 1, columns: 4 })).values[0];
    };
    await type('Kitchen', 0, 0, [
      [
        { v: 5 },
        { f: '=IF(A1>3,1,0)' },
        { f: '=CUCURBIT.COUNTED(B1)' },
        { f: '=CUCURBIT.REFUSING(A1)' },
        { f: '=ISERROR(D1)' },
      ],
    ]);
    const refusal = (given: number) => ({ error: '#VALUE!', message: `not ${given}` });
    expect(await read()).toEqual([1, 10, refusal(5), true]);
    const callsBefore = calls;
    await type('Kitchen', 0, 0, [[{ v: 6 }]]);
    expect(await read()).toEqual([1, 10, refusal(6), true]);
    expect(calls).toBe(callsBefore);
    await type('Kitchen', 0, 0, [[{ v: 2 }]]);
    expect(await read()).toEqual([0, 0, refusal(2), true]);
    expect(calls).toBe(callsBefore + 1);
  });
});
