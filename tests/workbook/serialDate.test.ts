import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beyondMonth,
  dayOfIso,
  dayOfSerial,
  dayOfText,
  isoOfDay,
  serialOfDay,
} from '../../src/workbook/serialDate';
import { anyDay, dayNumber, isoDate, seeded } from '../calc/dates/calendar';
import { wordsOf, written } from './wordsOfDates';

describe('serial numbers', () => {
  // Serials as the spreadsheet programs show them, 1900 date system.
  test.each([
    [61, '1900-03-01'],
    [25569, '1970-01-01'],
    [36526, '2000-01-01'],
    [36585, '2000-02-29'],
    [46144, '2026-05-02'],
    [73109, '2100-02-28'],
    [73110, '2100-03-01'],
    [2958465, '9999-12-31'],
  ])('%i is %s', (serial, iso) => {
    expect(isoOfDay(dayOfSerial(serial) ?? NaN)).toBe(iso);
    expect(serialOfDay(dayOfIso(iso) ?? NaN)).toBe(serial);
  });

  test('serials up to 60, the 29 February 1900 that never was among them, are no dates', () => {
    for (const serial of [60.99, 60, 59, 1, 0, -1, -Infinity]) expect(dayOfSerial(serial)).toBeNull();
    expect(dayOfSerial(61)).not.toBeNull();
  });

  test('the last day to its end, nothing after it, NaN never', () => {
    expect(dayOfSerial(2958465.999)).not.toBeNull();
    for (const serial of [2958466, Infinity, NaN]) expect(dayOfSerial(serial)).toBeNull();
  });

  test('a time of day stays a fraction', () => {
    expect(dayOfSerial(46144.25)).toBe((dayOfSerial(46144) ?? NaN) + 0.25);
  });
});

describe('dates as text', () => {
  test('leap years: every fourth, no hundredth but each four hundredth', () => {
    for (const iso of ['2024-02-29', '2000-02-29', '2028-02-29', '2400-02-29'])
      expect(dayOfIso(iso)).not.toBeNull();
    for (const iso of ['2100-02-29', '2200-02-29', '2026-02-29', '1900-02-29', '2027-02-29']) {
      expect(dayOfIso(iso)).toBeNull();
    }
  });

  test('no such day, no such month, no date at all', () => {
    const none = [
      '2026-04-31',
      '2026-13-01',
      '2026-00-10',
      '2026-05-00',
      '2026-5-2',
      '5/2/2026',
      '2026-05',
      '',
      'May',
    ];
    for (const text of [...none, '2026-05-02T00:00', '02026-05-02', '-2026-05-02'])
      expect(dayOfIso(text)).toBeNull();
  });

  test('blanks around a date do not matter', () => {
    expect(dayOfIso(' 2026-05-02 ')).toBe(dayNumber('2026-05-02'));
  });

  test('there and back again for every day, and as date-fns 4.4.0 on UTC dates', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(isoOfDay(day)).toBe(isoDate(day));
        expect(dayOfIso(isoOfDay(day))).toBe(day);
        expect(dayOfSerial(serialOfDay(day))).toBe(day);
      }),
      seeded,
    );
  });
});

describe('dates of a list', () => {
  const spanish = wordsOf('es-MX', true);
  const english = wordsOf('en-US', false);
  const inFigures = { day: 'numeric', month: 'numeric', year: 'numeric' } as const;

  test('in Spanish, as ICU writes them: every day by its month in words or by figures, the day first', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        for (const style of [{ dateStyle: 'long' }, { dateStyle: 'medium' }, inFigures] as const) {
          expect(dayOfText(written(day, 'es-MX', style), spanish), written(day, 'es-MX', style)).toBe(day);
        }
        expect(dayOfText(isoOfDay(day), spanish)).toBe(day);
      }),
      seeded,
    );
    expect(written(dayNumber('2026-06-14'), 'es-MX', inFigures)).toBe('14/6/2026');
  });

  test('in English, as ICU writes them: every day by its month in words, none by figures', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        for (const dateStyle of ['long', 'medium'] as const) {
          expect(dayOfText(written(day, 'en-US', { dateStyle }), english)).toBe(day);
          expect(dayOfText(written(day, 'en-GB', { dateStyle }), english)).toBe(day);
        }
        for (const locale of ['en-US', 'en-GB', 'es-MX']) {
          expect(dayOfText(written(day, locale, inFigures), english)).toBeNull();
        }
      }),
      seeded,
    );
  });

  test.each([
    ['31/06/2026', 6, 30],
    ['31 de junio de 2026', 6, 30],
    ['31 de junio', 6, 30],
    ['2026-06-31', 6, 30],
    ['30 feb', 2, 29],
    ['29/2/2027', 2, 28],
    ['2027-02-29', 2, 28],
    ['32/12/2026', 12, 31],
  ])('%j is beyond its month', (text, month, days) => {
    expect(beyondMonth(text, spanish)).toEqual({ month, days });
    expect(dayOfText(text, spanish)).toBeNull();
  });

  test.each(['30/06/2026', '29/2/2028', '30 de junio', '2026-06-30', '14/13/2026', 'soon', ''])(
    '%j is not beyond its month',
    (text) => expect(beyondMonth(text, spanish)).toBeNull(),
  );

  test.each([
    '31/06/2026',
    '14/13/2026',
    '14/06/26',
    '14/06',
    'junio 2026',
    '14 ju 2026',
    '14 julioso 2026',
    '14 mes 2026',
    'domingo 14 junio 2026',
    '',
  ])('%j is none in Spanish either', (text) => {
    expect(dayOfText(text, spanish)).toBeNull();
  });
});
