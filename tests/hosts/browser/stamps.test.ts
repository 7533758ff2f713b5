/** That they are never old ones is held by the edits of any kind in formulaLinks.test.ts. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { hashText } from '../../../src/workbook/hashText';
import { change, plots, settleMs } from '../../contract/contractWorkbook';
import { openTyped } from './typing';

vi.mock('../../../src/workbook/hashText', { spy: true });
afterEach(() => vi.clearAllMocks());

describe('the stamp of a sheet', () => {
  it('is worked out once for each edit, whatever is calculated or asked in between', async () => {
    const typed = openTyped();
    await typed.workbook.apply(change({ newSheets: [plots] }));
    await typed.workbook.settle(settleMs);
    const before = await typed.workbook.stamp('Plots');
    expect(await typed.workbook.stamp('Plots')).toBe(before);
    expect(hashText).toHaveBeenCalledTimes(1);

    await typed.type('Plots', 3, 1, [[{ v: 5 }]]);
    const after = await typed.workbook.stamp('Plots');
    expect(after).not.toBe(before);
    await typed.workbook.settle(settleMs);
    const { values } = await typed.workbook.read({ sheet: 'Plots', row: 3, column: 2, rows: 1, columns: 1 });
    expect(values).toEqual([[10]]);
    await typed.workbook.apply(change({ expect: [{ sheet: 'Plots', stamp: after }] }));
    expect(await typed.workbook.stamp('Plots')).toBe(after);
    expect(hashText).toHaveBeenCalledTimes(2);
    typed.workbook.dispose();
  });

  it('is worked out anew after a write that failed in its midst', async () => {
    let fails = false;
    const typed = openTyped((step) => {
      if (fails && step === 'table') throw new Error('stopped');
    });
    await typed.workbook.stamp('Kitchen');
    fails = true;
    await expect(
      typed.workbook.apply(
        change({ cells: [{ sheet: 'Kitchen', row: 0, column: 0, contents: [['x']] }], newSheets: [plots] }),
      ),
    ).rejects.toThrow();
    await typed.workbook.stamp('Kitchen');
    expect(hashText).toHaveBeenCalledTimes(2);
    typed.workbook.dispose();
  });
});
