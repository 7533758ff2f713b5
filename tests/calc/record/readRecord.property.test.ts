/** However a record is written, the same days are read; and a change of its writing is told by the doubts alone. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RecordDay } from '../../../src/calc/record/settleDays';
import { isoOfDay } from '../../../src/workbook/serialDate';
import { day, read } from './records';

const celsius = fc.integer({ min: -400, max: 450 }).map((tenths) => tenths / 10);
const maybe = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> =>
  fc.option(value, { freq: 8 });

/** Forty days or more, so that one is after the twelfth of its month; some left out. */
const days: fc.Arbitrary<RecordDay[]> = fc
  .record({
    first: fc.integer({ min: day('1901-01-01'), max: day('2026-01-01') }),
    temperatures: fc.array(fc.tuple(maybe(celsius), maybe(celsius), fc.boolean()), {
      minLength: 80,
      maxLength: 120,
    }),
  })
  .map(({ first, temperatures }) =>
    temperatures
      .map(([one, other, isThere], index) => {
        const isOrdered = one === null || other === null || one >= other;
        const [high, low] = isOrdered ? [one, other] : [other, one];
        return { day: first + index, high, low, isThere };
      })
      .filter(({ isThere, high, low }, index) => isThere || index < 40 || high === null || low === null)
      .map(({ day: number, high, low }) => ({ day: number, high, low })),
  )
  .filter((some) => some.some(({ high, low }) => high !== null || low !== null));

const twoDigits = (part: string): string => part.padStart(2, '0');
const dateStyles: Readonly<Record<string, (iso: string) => string>> = {
  iso: (iso) => iso,
  digits: (iso) => iso.replaceAll('-', ''),
  slashes: (iso) => iso.replaceAll('-', '/'),
  monthFirst: (iso) => iso.replace(/^(\d+)-0?(\d+)-0?(\d+)$/, '$2/$3/$1'),
  dayFirst: (iso) => iso.replace(/^(\d+)-(\d+)-(\d+)$/, '$3.$2.$1'),
  atMidnight: (iso) => `${iso} ${twoDigits('0')}:00`,
};

const styles = fc.record({
  order: fc.shuffledSubarray(['date', 'high', 'low', 'rain', 'flag'], { minLength: 5 }),
  separator: fc.constantFrom(',', ';', '\t'),
  date: fc.constantFrom(...Object.keys(dateStyles), 'parted'),
  missing: fc.constantFrom('', 'M', '-', 'NA', '-9999', '-99.9'),
  end: fc.constantFrom('\n', '\r\n', '\r'),
  isQuoted: fc.boolean(),
  start: fc.constantFrom('', '\uFEFF', 'From the station in the upper field\n\n'),
});
type Style = typeof styles extends fc.Arbitrary<infer Value> ? Value : never;

function write(
  some: readonly RecordDay[],
  style: Style,
  [high, low]: readonly [string, string],
  scale = (c: number) => c,
) {
  const { order, separator, date, missing, end, isQuoted, start } = style;
  const isParted = date === 'parted';
  const quote = (cell: string): string => (isQuoted || cell.includes(separator) ? `"${cell}"` : cell);
  const line = (cells: Readonly<Record<string, readonly string[]>>): string =>
    order
      .flatMap((column) => cells[column] ?? [])
      .map(quote)
      .join(separator);
  const degrees = (value: number | null): string => {
    const text = value === null ? missing : String(scale(value));
    return separator === ';' ? text.replace('.', ',') : text;
  };
  const header = { date: isParted ? ['Year', 'Month', 'Day'] : ['Date'], high: [high], low: [low] };
  const lines = some.map((one) => {
    const iso = isoOfDay(one.day);
    const dated = isParted ? iso.split('-') : [dateStyles[date]?.(iso) ?? iso];
    return { date: dated, high: [degrees(one.high)], low: [degrees(one.low)], rain: ['T'], flag: ['H,,S'] };
  });
  return start + [{ ...header, rain: ['Rain'], flag: ['Tmax flag'] }, ...lines].map(line).join(end) + end;
}

const inCelsius = ['Max temp (°C)', 'Min temp (°C)'] as const;
const stopped = (text: string) => read(text).doubts.filter((_, index) => index < 1);

describe('a record', () => {
  test('gives its days in any order of columns, with any separator, date, missing mark and line end', () => {
    fc.assert(
      fc.property(days, styles, (some, style) => {
        const text = write(some, style, inCelsius);
        expect(read(text).record?.days, JSON.stringify(stopped(text))).toEqual(some);
      }),
    );
  });

  test('turned round gives the same days, and says that it was sorted', () => {
    fc.assert(
      fc.property(days, styles, (some, style) => {
        const kinds = (text: string): string[] => read(text).doubts.map(({ code }) => code);
        const forward = write(some, style, inCelsius);
        const backward = write([...some].reverse(), style, inCelsius);
        expect(read(backward).record).toEqual(read(forward).record);
        expect(
          kinds(backward)
            .filter((code) => code !== 'notInOrder')
            .sort(),
        ).toEqual(kinds(forward).sort());
        expect(kinds(backward)).toContain('notInOrder');
      }),
    );
  });

  test('in tenths gives the same days; in Fahrenheit the same temperatures', () => {
    fc.assert(
      fc.property(days, styles, (some, style) => {
        const tenths = write(some, style, ['TMAX (tenths of degrees C)', 'TMIN (tenths of degrees C)'], (c) =>
          Math.round(c * 10),
        );
        expect(read(tenths).record).toMatchObject({ units: 'metric', days: some });
        const inF = write(some, style, ['Max temp F', 'Min temp F'], (c) =>
          Number((c * 1.8 + 32).toFixed(2)),
        );
        const { record } = read(inF);
        expect(record?.units).toBe('us');
        record?.days.forEach(({ high, low }, index) => {
          const one = some[index];
          // Rounded to a hundredth of a degree F.
          if (high !== null) expect((high - 32) / 1.8).toBeCloseTo(one?.high ?? NaN, 1);
          if (low !== null) expect((low - 32) / 1.8).toBeCloseTo(one?.low ?? NaN, 1);
        });
      }),
    );
  });

  test('of any text is read or refused, with a reason', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('Date', 'High', 'Low', '2020-05-01', '12', '"', ',', '\n'),
    );
    fc.assert(
      fc.property(fc.array(cell), (cells) => {
        const { record, doubts } = read(cells.join(','));
        if (record === null) expect(doubts.length).toBeGreaterThan(0);
        else expect(record.days.length).toBeGreaterThan(0);
      }),
    );
  });
});
