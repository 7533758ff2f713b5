/** Dates that people type into the grid. */
import { CellValueType } from '@univerjs/core';
import { SheetInterceptorService } from '@univerjs/sheets';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inOneMeaning, readTypedDates } from '../../../src/hosts/browser/typedDates';
import { wordsOf, written } from '../../workbook/wordsOfDates';
import { openTyped } from './typing';

const spanish = wordsOf('es-MX', true);
const english = wordsOf('en-US', false);
const thisYear = new Date().getFullYear();

const dayMs = 86_400_000;
const isoOf = (day: number): string => new Date(day * dayMs).toISOString().slice(0, 10);

describe('dates that are typed', () => {
  test('in Spanish every day from 1930 to 2029, as ICU writes it in four countries', () => {
    const anyDay = fc.integer({ min: Date.UTC(1930, 0, 1) / dayMs, max: Date.UTC(2029, 11, 31) / dayMs });
    fc.assert(
      fc.property(anyDay, fc.constantFrom('es-MX', 'es-US', 'es-CO', 'es-AR'), (day, locale) => {
        for (const dateStyle of ['short', 'medium', 'long'] as const) {
          const text = written(day, locale, { dateStyle });
          expect(inOneMeaning(text, spanish), text).toBe(isoOf(day));
        }
      }),
      { seed: 20260605 },
    );
  });

  test.each([
    ['05/06/2026', '2026-06-05'],
    ['25/06/2026', '2026-06-25'],
    [' 5/6/26 ', '2026-06-05'],
    ['5-6-26', '2026-06-05'],
    ['5.6.26', '2026-06-05'],
    // Two figures of a year: of the last century from 30 on, as Excel documents it.
    ['5/6/29', '2029-06-05'],
    ['5/6/30', '1930-06-05'],
    ['5/6', `${thisYear}-06-05`],
    ['5 dic', `${thisYear}-12-05`],
    ['5 de ago.', `${thisYear}-08-05`],
    ['5 ene 2026', '2026-01-05'],
    ['2026-06-05', '2026-06-05'],
    ['05/06/2026 14:00', '2026-06-05 14:00'],
    ['5/6/2026, 2:05 pm', '2026-06-05 2:05 pm'],
    ['31/06/2026', '31/06/2026'],
    ['2026', '2026'],
    ['5.6', '5.6'],
    ['5,6', '5,6'],
    ['-5', '-5'],
    ['14:00', '14:00'],
    ['5 hileras', '5 hileras'],
    ['dic 2026', 'dic 2026'],
    ['mayo 23', `${thisYear}-05-23`],
    ['', ''],
  ])('in Spanish %j is handed on as %j', (text, given) => {
    expect(inOneMeaning(text, spanish)).toBe(given);
  });

  test.each([
    // By figures only the engine's own English reads them: the month first.
    ['05/06/2026', '05/06/2026'],
    ['25/06/2026', '25/06/2026'],
    ['5/6', '5/6'],
    ['June 5, 2026', '2026-06-05'],
    ['5 Jun 2026', '2026-06-05'],
    ['May 23', `${thisYear}-05-23`],
    ['june 10', `${thisYear}-06-10`],
    ['Sep. 5', `${thisYear}-09-05`],
    ['10 June', `${thisYear}-06-10`],
    ['June 10 14:00', `${thisYear}-06-10 14:00`],
    // Month and year, and no day of the month.
    ['May 2027', 'May 2027'],
    ['May 40', 'May 40'],
    ['June 31', 'June 31'],
    ['May 0', 'May 0'],
    ['Row 5', 'Row 5'],
    ['2026-06-05', '2026-06-05'],
  ])('in English %j is handed on as %j', (text, given) => {
    expect(inOneMeaning(text, english)).toBe(given);
  });

  test('neither a formula nor what is typed into a cell of texts is touched', async () => {
    const { workbook, engine, type } = openTyped();
    readTypedDates(engine.accessor, spanish);
    await type('Kitchen', 1, 0, [[{ s: { n: { pattern: '@' } } }]]);
    const sheet = engine.workbook.getActiveSheet();
    const interceptor = engine.accessor.get(SheetInterceptorService);
    const put = (row: number, cell: object) => interceptor.onWriteCell(engine.workbook, sheet, row, 0, cell);
    expect(put(0, { v: '5/6/2026' })).toEqual({ v: '2026-06-05' });
    expect(put(1, { v: '5/6/2026' })).toEqual({ v: '5/6/2026' });
    expect(put(0, { v: '5/6/2026', f: '=A9' })).toEqual({ v: '5/6/2026', f: '=A9' });
    const quoted = { v: '5/6/2026', t: CellValueType.FORCE_STRING };
    expect(put(0, quoted)).toEqual(quoted);
    workbook.dispose();
  });

  test.each([
    [spanish, '6/25/2026', true],
    [spanish, ' 6-25-26 ', true],
    [spanish, '6.25.2026', true],
    [spanish, '6/25', true],
    [spanish, '6/25/2026 14:00', true],
    [spanish, '25/6/2026', false],
    [spanish, '2026/6/25', false],
    [spanish, '6.25', false],
    [spanish, '12/2026', false],
    [spanish, '14:00', false],
    [spanish, '12 25 plantas', false],
    [english, '6/25/2026', false],
    [english, '6/25', false],
  ])('what is a date only with the month first is text where the day is (%#)', (dates, text, isText) => {
    const { workbook, engine } = openTyped();
    readTypedDates(engine.accessor, dates);
    const put = engine.accessor
      .get(SheetInterceptorService)
      .onWriteCell(engine.workbook, engine.workbook.getActiveSheet(), 0, 0, { v: text });
    expect(put?.t === CellValueType.FORCE_STRING, text).toBe(isText);
    if (isText) expect(put?.v).toBe(text);
    workbook.dispose();
  });
});
