/**
 * Daily records and lists of frosts as they come: what a grower reads in the cell. An answer or a refusal that says
 * what to do, never a guess. Temperatures and dates are invented; answers are by hand.
 */
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { explain } from '../../src/functions/explain';
import { run } from './run';

/** By the calendar of JavaScript; serial 1 is 1900-01-01. */
const serial = (iso: string): number => (Date.parse(iso) - Date.parse('1899-12-30')) / 86_400_000;
const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const of = (count: number, cell: unknown): unknown[][] => column(...Array<unknown>(count).fill(cell));

/** A cold season, 24 July 2025 to 23 July 2026: 50 F at night but for two frosts, 70 F by day. */
const season = Array.from({ length: 365 }, (_, i) => serial('2025-07-24') + i);
const frosts = new Set([serial('2025-10-20'), serial('2026-04-28')]);
const dates = column(...season);
const lows = column(...season.map((day) => (frosts.has(day) ? 31 : 50)));
const highs = of(365, 70);
const inC = (cells: readonly unknown[][]): unknown[][] =>
  cells.map(([degrees]) => [(Number(degrees) - 32) / 1.8]);
const lastFrost = [[2026, serial('2026-04-28')]];

const remarksOf = (id: string, ...args: unknown[]): string => {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  return explain(definition, args)
    .map(({ title, formula, result }) => `${title} ${formula} ${result}`)
    .join('\n');
};

describe('no record, and little of one', () => {
  const nothing = [null, undefined, '', [['']], [[null]], [['', ' ']], [[]]];

  test('an empty record is no day, an empty list no season', () => {
    for (const empty of nothing) {
      for (const id of ['FROST.LASTDATES', 'FROST.FIRSTDATES']) {
        expect(run(id, empty, empty)).toMatch(/^#VALUE! There is no day in this record/);
      }
      expect(run('HEAT.SUM', empty, empty, 50)).toMatch(/^#VALUE! There is no day in this record/);
      expect(run('HEAT.DATE', empty, empty, empty, '2026-05-01', 9, 50)).toMatch(/^#VALUE! There is no day/);
      expect(run('HEAT.SUCCESSION', empty, empty, empty, '2026-05-01', '2026-06-01', 9, 50)).toMatch(
        /^#VALUE! There is no day/,
      );
      for (const id of ['FROST.SPRINGDATE', 'FROST.FALLDATE']) {
        expect(run(id, empty, 0.1, 2027)).toMatch(/^#VALUE! No season can be counted/);
      }
      expect(run('FROST.CHANCE', '2027-05-01', empty, 'spring')).toMatch(/^#VALUE! No season can be counted/);
    }
  });

  test('one year: an answer, with its warning in the working', () => {
    expect(run('FROST.LASTDATES', dates, lows)).toEqual(lastFrost);
    expect(run('FROST.SPRINGDATE', column('2026-04-28'), 0.1, 2027)).toBe('2027-04-28');
    expect(remarksOf('FROST.SPRINGDATE', column('2026-04-28'), 0.1, 2027)).toMatch(/Fewer than 20 seasons/);
    expect(run('FROST.SPRINGDATE', column('2026-04-28'), 0.1, 2027, 'exc')).toMatch(
      /^#VALUE! .*needs 9 seasons with frost for this risk and there are 1/,
    );
  });

  test('a record that begins in mid-season: the side it does not reach is void', () => {
    const fromMay = [dates.slice(281), lows.slice(281)];
    expect(dates[281]).toEqual([serial('2026-05-01')]);
    expect(run('FROST.LASTDATES', ...fromMay)).toEqual([[2026, 'void']]);
    expect(run('FROST.FIRSTDATES', ...fromMay)).toEqual([[2025, 'void']]);
    // From New Year on the spring is there, the fall is not.
    const fromJanuary = [dates.slice(161), lows.slice(161)];
    expect(run('FROST.LASTDATES', ...fromJanuary)).toEqual(lastFrost);
    expect(run('FROST.FIRSTDATES', ...fromJanuary)).toEqual([[2025, 'void']]);
  });

  test('no frost in a year is "none", in all of them no date', () => {
    expect(run('FROST.LASTDATES', dates, of(365, 50))).toEqual([[2026, 'none']]);
    expect(run('FROST.FALLDATE', column('none', 'none'), 0.1, 2027)).toMatch(/^#N\/A It never froze in 2/);
    expect(run('FROST.CHANCE', '2027-05-01', column('none', 'none'), 'spring')).toBe(0);
    expect(run('FROST.SPRINGDATE', column('2026-04-28', 'none'), 0.6, 2027)).toMatch(
      /^#N\/A Frost comes in fewer years than that/,
    );
  });

  test('gaps: nine days missing are borne, ten are void; a sum or a way of heat bears none', () => {
    const gap = (from: string, count: number): unknown[][] =>
      lows.map(([low], i) => [
        season[i] !== undefined && season[i] >= serial(from) && season[i] < serial(from) + count ? '' : low,
      ]);
    expect(run('FROST.LASTDATES', dates, gap('2026-05-10', 9))).toEqual(lastFrost);
    expect(run('FROST.LASTDATES', dates, gap('2026-05-10', 10))).toEqual([[2026, 'void']]);
    expect(run('HEAT.SUM', highs, gap('2025-07-26', 1), 50)).toMatch(/^#N\/A Row 3 /);
    expect(run('HEAT.DATE', dates, highs, gap('2025-07-26', 1), '2025-07-24', 100, 50)).toMatch(
      /^#N\/A The record has no temperatures for 2025-07-26/,
    );
  });
});

describe('order, leap days, shapes', () => {
  const back = (cells: unknown[][]): unknown[][] => [...cells].reverse();

  test('newest first is the same record', () => {
    expect(run('FROST.LASTDATES', back(dates), back(lows))).toEqual(lastFrost);
    expect(run('HEAT.DATE', back(dates), back(highs), back(lows), '2025-07-24', 25, 50)).toBe('2025-07-26');
  });

  test('29 February is a day in a leap year, and no date in another', () => {
    const leap = column('2024-02-28', '2024-02-29', '2024-03-01');
    expect(run('HEAT.DATE', leap, of(3, 70), of(3, 50), '2024-02-28', 30, 50)).toBe('2024-03-01');
    expect(run('HEAT.DATE', leap, of(3, 70), of(3, 50), '2024-02-28', 20, 50)).toBe('2024-02-29');
    expect(run('FROST.SPRINGDATE', column('2024-02-29'), 0.5, 2028)).toBe('2028-02-29');
    expect(run('FROST.SPRINGDATE', column('2024-02-29'), 0.5, 2027)).toBe('2027-02-28');
    expect(run('FROST.SPRINGDATE', column('2025-02-29'), 0.5, 2027)).toMatch(/"2025-02-29", which is not a/);
  });

  test('ranges of unequal length are refused with both lengths', () => {
    const message = /^#VALUE! The range of dates has 365 cells and the range of (lows|highs) has 364/;
    expect(run('FROST.FIRSTDATES', dates, lows.slice(1))).toMatch(message);
    expect(run('HEAT.DATE', dates, highs.slice(1), lows, '2026-05-01', 9, 50)).toMatch(message);
    expect(run('HEAT.DATE', dates, highs, lows.slice(1), '2026-05-01', 9, 50)).toMatch(message);
  });

  test('two columns exchanged', () => {
    const notADate =
      '#VALUE! The range of dates, row 1, is 50, which is no date: it is too small a number. Give the column with the dates.';
    expect(run('FROST.LASTDATES', lows, dates)).toBe(notADate);
    expect(run('HEAT.DATE', lows, highs, dates, '2026-05-01', 9, 50)).toBe(notADate);
    // Summer nights of 65 F and more could be days of 1900.
    expect(run('FROST.LASTDATES', column(65, 71), column(46174, 46175))).toMatch(/row 1, is 65, which is no/);
    expect(run('HEAT.SUM', lows, highs, 50)).toMatch(/^#VALUE! In row 1 .* the low, 70, is above the high/);
    expect(run('HEAT.SUM', dates, lows, 50)).toMatch(/range of highs, row 1, is 45862, which is no temper/);
  });
});

describe('what is no temperature and what is no date', () => {
  test('a text among numbers is named with its row', () => {
    expect(run('FROST.LASTDATES', column(46140, 46141), column(40, 'M'))).toBe(
      '#VALUE! The range of lows, row 2, is "M", which is not a number. Type digits with a decimal point and no unit.',
    );
    expect(run('FROST.LASTDATES', column('Date', 46141), column('Low', 40))).toMatch(
      /range of dates, row 1, is "Date", which is not a date/,
    );
    expect(run('FROST.FALLDATE', column('2025-10-10', 'early'), 0.1, 2027)).toMatch(
      /range of first frosts, row 2, is "early"/,
    );
    // A range that lies across is counted along.
    expect(run('HEAT.SUM', [[70, 70, '70 F']], [[50, 50, 50]], 50)).toMatch(
      /range of highs, row 3, is "70 F"/,
    );
  });

  test('marks for a missing value are not taken for cold or heat', () => {
    for (const mark of [-99, -999, -9999, 999, 999.9, 9999]) {
      expect(run('FROST.LASTDATES', column(46140, 46141), column(40, mark))).toBe(
        `#VALUE! The range of lows, row 2, is ${mark}, which is no temperature of the air. If it marks a missing value, empty that cell.`,
      );
      expect(run('HEAT.SUM', column(70, mark), column(50, -100), 50)).toMatch(/row 2, is -?\d+.*which is no/);
    }
  });

  test('dates before 1901 among the days: 0 is empty, what a spreadsheet has no date for is refused', () => {
    expect(run('FROST.LASTDATES', column(0), column(30))).toMatch(/^#VALUE! Row 1 .* no date/);
    for (const none of [1, 60, -5, 366, '1893-04-28', '1900-02-28', 20260428]) {
      expect(run('FROST.LASTDATES', column(none), column(30))).toMatch(/^#VALUE! .*which is (no|not a) date/);
      expect(run('FROST.CHANCE', '2027-05-01', column(none), 'spring')).toMatch(/^#VALUE! .*which is no/);
    }
    expect(run('FROST.LASTDATES', column(367), column(30))).toEqual([[1901, 'void']]);
    expect(run('HEAT.DATE', dates, highs, lows, '1893-04-28', 9, 50)).toMatch(/"1893-04-28", which is not/);
    expect(run('DATE.SETOUT', '1893-04-28')).toMatch(/^#VALUE! .*"1893-04-28", which is not a date from/);
  });
});

describe('the other scale', () => {
  test('a year of nights in C, taken for F, and nights in F given as C', () => {
    expect(run('FROST.LASTDATES', dates, inC(lows), null, 'metric')).toEqual(lastFrost);
    expect(run('FROST.LASTDATES', dates, inC(lows))).toBe(
      '#VALUE! The warmest night of this record is 10, which is cold for a year in °F. If the lows are in °C, give "metric" as the unit system.',
    );
    expect(run('FROST.LASTDATES', dates, lows, null, 'metric')).toBe(
      '#VALUE! A low of this record is 50 °C, which no night is. If the lows are in °F, give "us" as the unit system.',
    );
    // A winter alone may be as cold.
    expect(run('FROST.LASTDATES', dates.slice(130, 200), of(70, 20))).toEqual([[2026, 'void']]);
    // With a threshold in their own scale the lows are read right either way.
    expect(run('FROST.LASTDATES', dates, inC(lows), 0)).toEqual(lastFrost);
  });

  test('a threshold that is no frost', () => {
    expect(run('FROST.LASTDATES', dates, inC(lows), 32, 'metric')).toMatch(
      /threshold of a frost is 32. It must be .*at most 15 °C/,
    );
    expect(run('FROST.LASTDATES', dates, lows, 70)).toMatch(/threshold of a frost is 70.*at most 60 °F/);
  });

  test('a base in the other scale', () => {
    const message =
      '#VALUE! The warmest high is 70 and the base is 10: they are not in one scale. Give the base in the scale of the temperatures; 10 °C is 50 °F.';
    expect(run('HEAT.DAY', 70, 50, 10)).toBe(message);
    // Hotter than any air in C; the hottest ever measured was 56.7 (from memory, check).
    expect(run('HEAT.DAY', 58, 50, 10)).toContain('The warmest high is 58 and the base is 10');
    expect(run('HEAT.DAY', 56, 50, 10)).toBe(43);
    expect(run('HEAT.SUM', highs, lows, 10)).toBe(message);
    expect(run('HEAT.DATE', dates, highs, lows, '2026-05-01', 9, 10)).toBe(message);
    const cool = 'The warmest high is 21.1111 and the base is 50: they are not in one scale.';
    expect(run('HEAT.SUM', inC(highs), inC(lows), 50)).toContain(cool);
    expect(run('HEAT.SUCCESSION', dates, inC(highs), inC(lows), '2026-05-01', '2026-06-01', 9, 50)).toContain(
      cool,
    );
    // A cold month has no heat in its own scale either.
    expect(run('HEAT.SUM', of(31, 40), of(31, 30), 50)).toBe(0);
  });
});

describe('lists of frosts', () => {
  const rows = [
    [2024, serial('2024-04-20')],
    [2025, serial('2025-05-02')],
    [2026, 'none'],
    ['', ''],
  ];

  test('years and dates, as FROST.LASTDATES spills them, are read by their dates', () => {
    const alone = rows.map(([, frost]) => [frost]);
    for (const risk of [0.1, 0.5]) {
      const expected = run('FROST.SPRINGDATE', alone, risk, 2027);
      expect(expected).toMatch(/^2027-0[45]/);
      expect(run('FROST.SPRINGDATE', rows, risk, 2027)).toBe(expected);
    }
    expect(run('FROST.CHANCE', '2027-04-25', rows, 'spring')).toBeCloseTo(1 / 3, 12);
    expect(run('FROST.SPRINGDATE', run('FROST.LASTDATES', dates, lows), 0.5, 2027)).toBe('2027-04-28');
  });

  test('years alone, or every frost of a spring, are not one frost a season', () => {
    // As dates, 2024 and 2025 are days of July 1905.
    expect(run('FROST.SPRINGDATE', column(2024, 2025, 2026), 0.1, 2027)).toBe(
      '#VALUE! 1905-07-16 and 1905-07-17 are frosts of one season. Give the last or the first frost of each season, a date with its own year.',
    );
    expect(run('FROST.CHANCE', '2027-04-25', column('2026-04-20', '2026-04-28'), 'spring')).toMatch(
      /^#VALUE! 2026-04-20 and 2026-04-28 are frosts of one season/,
    );
  });

  test('which half of the earth they fell in is said in the working, and can be given', () => {
    const springs = column('2024-09-20', '2025-10-02');
    expect(run('FROST.SPRINGDATE', springs, 0.5, 2027)).toBe('2027-09-26');
    expect(remarksOf('FROST.SPRINGDATE', springs, 0.5, 2027)).toMatch(/assumed: hemisphere .*south/);
    // Where the last frosts come before New Year, only the grower can tell.
    const mild = column('2021-12-24', '2022-12-28', '2025-01-10');
    expect(run('FROST.SPRINGDATE', mild, 0.5, 2027, 'inc', 'north')).toBe('2026-12-28');
    expect(remarksOf('FROST.SPRINGDATE', mild, 0.5, 2027, 'inc', 'north')).not.toMatch(/assumed: hemisphere/);
    // Of one calendar year, they are of two seasons in the north alone.
    expect(run('FROST.SPRINGDATE', column('2023-02-10', '2023-12-28', '2024-12-30'), 0.99, 2027)).toMatch(
      /^2026-12/,
    );
    expect(run('FROST.CHANCE', '2027-12-26', mild, 'spring', 'north')).toBeCloseTo(2 / 3, 12);
    expect(run('FROST.FALLDATE', column('2025-05-10'), 0.5, 2027, 'inc', 'south')).toBe('2027-05-10');
  });
});
