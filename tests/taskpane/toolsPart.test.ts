// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import type { Reentered } from '../../src/workbook/port';
import { HostError } from '../../src/workbook/port';
import { openPane, until, type OpenPane } from './openPane';

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
