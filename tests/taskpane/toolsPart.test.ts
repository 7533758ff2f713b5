// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Reentered } from '../../src/workbook/port';
import { HostError } from '../../src/workbook/port';
import { fillFake, openPane, until, type OpenPane } from './openPane';

const said = (pane: OpenPane, role: 'status' | 'alert'): string =>
  pane.section('Sheets').querySelector(`details [role=${role}]`)?.textContent ?? '';

describe('entering our formulas again', () => {
  const cases: readonly (readonly [Reentered, string])[] = [
    [{ cells: 12, locked: [] }, '12 formulas were entered again. Nothing else was touched.'],
    [{ cells: 1, locked: [] }, '1 formula was entered again. Nothing else was touched.'],
    [{ cells: 0, locked: [] }, 'No formula in this workbook uses our functions, so none was entered.'],
    [
      { cells: 0, locked: ['Plots', 'Own'] },
      'Protected, and so left alone: Plots, Own. Take the protection off, then try again.',
    ],
    [
      { cells: 3, locked: ['Own'] },
      '3 formulas were entered again. Nothing else was touched. Protected, and so left alone: Own. Take the protection off, then try again.',
    ],
  ];
  it.each(cases)('%j is said', async (reentered, sentence) => {
    const pane = await openPane();
    pane.workbook.reentered = reentered;
    pane.button('Enter our formulas again').click();
    await until(() => expect(said(pane, 'status')).toBe(sentence));
  });

  it('cut off says what became of the rest, and can be tried again', async () => {
    const pane = await openPane();
    pane.workbook.failNext('reenter', new HostError({ code: 'noAnswer' }));
    pane.button('Enter our formulas again').click();
    await until(() =>
      expect(said(pane, 'alert')).toBe(
        'Not every formula could be entered again; the others are as they were. The spreadsheet program does not answer. Check the connection, then try again.',
      ),
    );
    await until(() => expect(pane.root.getAttribute('aria-busy')).toBe('false'));
    pane.button('Enter our formulas again').click();
    await until(() => expect(said(pane, 'status')).toContain('No formula'));
    expect(said(pane, 'alert')).toBe('');
  });

  it('waits while another action writes', async () => {
    const pane = await openPane();
    const release = pane.workbook.hold();
    pane.button('Fill the sheets').click();
    const again = pane.button('Enter our formulas again');
    expect(again.getAttribute('aria-disabled')).toBe('true');
    again.click();
    release();
    await until(() => expect(pane.spoken()).toContain('Made:'));
    expect(said(pane, 'status')).toBe('');
  });
});

describe('a values-only copy', () => {
  afterEach(() => vi.useRealTimers());
  const idle = (pane: OpenPane): Promise<void> =>
    until(() => expect(pane.root.getAttribute('aria-busy')).toBe('false'));

  it('is made of every sheet of ours, with the day where the person is', async () => {
    // Half past eleven at night.
    vi.useFakeTimers({ toFake: ['Date'], now: new Date(2027, 4, 2, 23, 30) });
    const pane = await openPane((workbook) => fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]));
    pane.workbook.compute(pane.workbook.cell('Plots', 0, 'Plants'), { error: '#VALUE!', message: 'No.' });
    pane.button('Make a values-only copy').click();
    await until(() =>
      expect(said(pane, 'status')).toBe(
        'Made: Season values, Plots values, Calendar values, Weeks values, Seed order values, Prices values, By crop values, Budget values, Crops values, Crop ranges values. Later changes do not reach them. 1 cell holds an error and was copied as such: see "To look at".',
      ),
    );
    const { values } = await pane.workbook.read({
      sheet: 'Plots values',
      row: 0,
      column: 1,
      rows: 2,
      columns: 1,
    });
    expect(values[1]?.[0]).toMatch(
      /^Values only, from the figures of 2027-05-02\. Nothing on this sheet calc/,
    );
    expect(pane.section('Sheets').querySelector('dl')?.textContent).not.toContain('values');
  });

  it('is not made while cells are still being calculated, which are named', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    const cell = (row: number) => ({ sheet: 'Plots', row, column: 1 });
    const count = pane.workbook.changes.length;
    pane.workbook.unsettled = [cell(7)];
    pane.button('Make a values-only copy').click();
    await until(() =>
      expect(said(pane, 'status')).toBe(
        'Nothing was copied, because Plots B8 is still being calculated. Wait until it is done, then try again.',
      ),
    );
    pane.workbook.unsettled = [1, 2, 3, 4, 5, 6, 7].map(cell);
    await idle(pane);
    pane.button('Make a values-only copy').click();
    await until(() =>
      expect(said(pane, 'status')).toContain(
        'Plots B2, Plots B3, Plots B4, Plots B5, Plots B6 and 2 more are still being calculated. Wait until they are done',
      ),
    );
    expect(pane.workbook.changes).toHaveLength(count);
  });

  it('of a workbook without a sheet of ours says what to do', async () => {
    const pane = await openPane();
    pane.button('Make a values-only copy').click();
    await until(() => expect(said(pane, 'status')).toContain('no sheet of ours'));
    expect(pane.workbook.changes).toHaveLength(0);
  });

  it('refused by the program says so and changes nothing', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    pane.workbook.failNext('apply', new HostError({ code: 'workbookLocked' }));
    pane.button('Make a values-only copy').click();
    await until(() =>
      expect(said(pane, 'alert')).toMatch(/^Nothing was changed\. The workbook is protected/),
    );
  });
});
