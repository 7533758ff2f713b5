/** The cells of FROST, HEAT, EMERGENCE and SOIL; what they compute is held to its sources in tests/calc. */
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { explain } from '../../src/functions/explain';
import { english } from '../../src/texts/english';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { run } from './run';

const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const leftOut = [null, undefined, ''];

describe('HEAT', () => {
  const dates = column(serial('2026-05-01'), '2026-05-02', serial('2026-05-03') + 0.5);
  const highs = column(65, '80', 80);
  const lows = column(40, 60, 60);

  test('HEAT.DAY: 2.5 for 65 and 40 over 50 (Michigan State’s worked example), in every way to give it', () => {
    for (const nothing of leftOut) expect(run('HEAT.DAY', 65, 40, 50, nothing, nothing)).toBe(2.5);
    expect(run('HEAT.DAY', '65', [[40]], 50, null, ' Mean ')).toBe(2.5);
    expect(run('HEAT.DAY', 95, 60, 60, 90, 'reduced')).toBe(25);
  });

  test('0 is a temperature: a low of 0 C over a base of 0', () => {
    expect(run('HEAT.DAY', 10, 0, 0)).toBe(5);
  });

  test('HEAT.SUM, HEAT.DATE and HEAT.SUCCESSION over ranges, dates as dates', () => {
    expect(run('HEAT.SUM', highs, lows, 50)).toBe(42.5);
    expect(functions.get('HEAT.DATE')?.run([dates, highs, lows, '2026-05-01', 22.5, 50])).toEqual({
      value: serial('2026-05-02'),
      pattern: 'yyyy-mm-dd',
    });
    expect(run('HEAT.SUCCESSION', dates, highs, lows, '2026-05-01', '2026-05-03', 20, 50)).toEqual([
      [serial('2026-05-01')],
      [serial('2026-05-03')],
    ]);
  });

  test('refusals say what to do', () => {
    expect(run('HEAT.DAY', 40, 65, 50)).toBe('#VALUE! The low, 65, is above the high, 40. Exchange them.');
    expect(run('HEAT.DAY', 65, 40, 50, null, 'reduced')).toMatch(/^#VALUE! .*needs a ceiling: 90 °F/);
    expect(run('HEAT.DAY', 65, 40, 50, 45)).toMatch(/ceiling is 45, not above the base, 50/);
    expect(run('HEAT.DAY', 65, 40, 50, 86, 'average')).toMatch(
      /Choose one of: mean, modified, sine, reduced/,
    );
    expect(run('HEAT.SUM', column(65, null, 80), lows, 50)).toBe(
      '#N/A Row 2 of the ranges has no high or no low. A sum over a gap would be too small: fill the row in, or sum the parts.',
    );
    expect(run('HEAT.SUM', column(65), lows, 50)).toMatch(/has 1 cell and the .* has 3/);
    expect(run('HEAT.SUM', column(65, 'warm', 80), lows, 50)).toMatch(/range of highs, row 2, is "warm"/);
    expect(run('HEAT.DATE', dates, highs, lows, '2026-05-01', 500, 50)).toMatch(
      /^#N\/A The record ends on 2026-05-03/,
    );
    expect(run('HEAT.DATE', dates, column(65, '', 80), lows, '2026-05-01', 30, 50)).toMatch(
      /^#N\/A The record has no temperatures for 2026-05-02/,
    );
    expect(run('HEAT.DATE', column('spring', '', ''), highs, lows, '2026-05-01', 30, 50)).toMatch(
      /"spring", which is not a date/,
    );
    expect(run('HEAT.SUM', column(65, { error: '#REF!' }, 80), lows, 50)).toMatch(/Mend that cell first/);
  });
});

describe('FROST', () => {
  /** A winter of 50 F but for two frosts. */
  const first = serial('2025-07-24');
  const winter = Array.from({ length: 365 }, (_, i) => first + i);
  const frosty = new Set([serial('2025-10-20'), serial('2026-04-28')]);
  const lows = winter.map((day) => [frosty.has(day) ? 31 : 50]);
  const dates = winter.map((day) => [day]);

  test('FROST.LASTDATES and FROST.FIRSTDATES: a row of year and date (by hand)', () => {
    for (const nothing of leftOut) {
      expect(run('FROST.LASTDATES', dates, lows, nothing, nothing, nothing)).toEqual([
        [2026, serial('2026-04-28')],
      ]);
    }
    expect(run('FROST.FIRSTDATES', dates, lows, 32, 'us', 'north')).toEqual([[2025, serial('2025-10-20')]]);
    expect(run('FROST.FIRSTDATES', dates, lows, 20)).toEqual([[2025, 'none']]);
    expect(run('FROST.LASTDATES', dates.slice(0, 300), lows.slice(0, 300))).toEqual([[2026, 'void']]);
  });

  test('FROST.SPRINGDATE, FROST.FALLDATE and FROST.CHANCE take what those give, blanks and all', () => {
    const springs = column(
      serial('2024-04-20'),
      serial('2025-05-02'),
      serial('2026-04-30'),
      'none',
      'Void',
      '',
    );
    // Three of four springs froze: a risk of 3/8 is the middle of the three.
    expect(functions.get('FROST.SPRINGDATE')?.run([springs, 0.375, 2027])).toEqual({
      value: serial('2027-04-30'),
      pattern: 'yyyy-mm-dd',
    });
    expect(run('FROST.CHANCE', '2027-04-25', springs, 'spring')).toBe(0.5);
    const falls = column(serial('2024-10-20'), serial('2025-10-02'), serial('2026-10-10'));
    expect(run('FROST.FALLDATE', falls, '50%', 2027, 'exc')).toBe('2027-10-10');
    expect(run('FROST.CHANCE', '2027-10-11', falls, 'Fall')).toBeCloseTo(2 / 3, 12);
  });

  test('FROST.SPRINGDATE takes the dates of FROST.LASTDATES also with their years', () => {
    const pairs = [
      [2024, serial('2024-04-20')],
      [2025, serial('2025-05-02')],
      [2026, serial('2026-04-30')],
      [2027, 'none'],
      ['', ''],
    ];
    const alone = pairs.map(([, frost]) => [frost]);
    expect(run('FROST.SPRINGDATE', pairs, 0.375, 2027)).toBe('2027-04-30');
    expect(run('FROST.CHANCE', '2027-04-25', pairs, 'spring')).toBe(
      run('FROST.CHANCE', '2027-04-25', alone, 'spring'),
    );
    // Two dates in a row are two dates.
    expect(run('FROST.SPRINGDATE', [[serial('2024-04-20'), serial('2025-04-20')]], 0.5, 2027)).toBe(
      '2027-04-20',
    );
  });

  test('a record without a season, or without the start, has one cell that says so', () => {
    // January alone is the end of no whole cold season, and has no May.
    const january = [[46023], [46024], [46025]];
    const three = [[30], [30], [30]];
    expect(run('FROST.YEARS', january, three)).toEqual([[english.noYear.season]]);
    expect(run('HEAT.YEARS', january, three, three, 46143, 10, 20)).toEqual([[english.noYear.start]]);
    expect(run('HEAT.DATES', january, three, three, 46143, 10, 20)).toEqual([[english.noYear.start]]);
  });

  test('FROST.YEARS: year, both frosts, the days between (by hand)', () => {
    const inNorth = run('FROST.YEARS', dates, lows);
    expect(inNorth).toEqual([
      [2025, 'void', serial('2025-10-20'), 'void'],
      [2026, serial('2026-04-28'), 'void', 'void'],
    ]);
    // In the south the same days are a spring and the fall after it: October 11, then 30, 31, 31, 28, 31 and 28.
    expect(run('FROST.YEARS', dates, lows, 32, 'us', 'south')).toEqual([
      [2025, serial('2025-10-20'), serial('2026-04-28'), 190],
    ]);
    expect(run('FROST.YEARS', dates, lows, 20)).toEqual([
      [2025, 'void', 'none', 'void'],
      [2026, 'none', 'void', 'void'],
    ]);
  });

  test('refusals say what to do', () => {
    const springs = column(serial('2024-04-20'), 'none');
    expect(run('FROST.SPRINGDATE', springs, 0.8, 2027)).toBe(
      '#N/A Frost comes in fewer years than that: in 50% of them, and 80% was asked for. Give a smaller risk.',
    );
    expect(run('FROST.SPRINGDATE', springs, 0.1, 2027, 'exc')).toMatch(
      /needs 4 seasons with frost .* there are 1/,
    );
    expect(run('FROST.SPRINGDATE', column('none', 'none'), 0.1, 2027)).toBe(
      '#N/A It never froze in 2 seasons: there is no date to give.',
    );
    expect(run('FROST.SPRINGDATE', column('', 'void'), 0.1, 2027)).toMatch(/No season can be counted/);
    expect(run('FROST.SPRINGDATE', column('April', ''), 0.1, 2027)).toMatch(/"April", which is not a date/);
    expect(run('FROST.LASTDATES', column('', ''), column('', ''))).toMatch(/There is no day in this record/);
    expect(run('FROST.LASTDATES', column(first, first), column(30, 31))).toMatch(
      /2025-07-24 is in the record twice, the second time in row 2/,
    );
    expect(run('FROST.LASTDATES', column(first, ''), column(30, 31))).toMatch(/Row 2 .* no date/);
    expect(run('FROST.CHANCE', '2027-04-25', springs, 'winter')).toMatch(/Choose one of: spring, fall/);
  });

  test('the working can be read, and warns of few seasons', () => {
    const definition = functions.get('FROST.SPRINGDATE');
    if (definition === undefined) throw new Error('no such function');
    const lines = explain(definition, [column(serial('2024-04-20'), 'none'), 0.25, 2027]);
    const said = lines.map(({ title, result }) => `${title} ${result}`).join('\n');
    expect(said).toMatch(/2027-04-20/);
    expect(said).toMatch(/Fewer than 20 seasons/);
    expect(said).not.toMatch(/[{}_]/);
  });
});

describe('EMERGENCE and SOIL', () => {
  test('13 days at 59 F, 95 % normal (Harrington and Minges 1954); 7.89 days at 64 F', () => {
    for (const nothing of leftOut) expect(run('EMERGENCE.DAYS', 'cucumber', 59, nothing)).toBeCloseTo(13, 9);
    expect(run('EMERGENCE.DAYS', 'cucumber', 64)).toBeCloseTo(7.89, 2);
    expect(run('EMERGENCE.DAYS', 'cantaloupe', 25, 'metric')).toBeCloseTo(4, 9);
    expect(run('EMERGENCE.PERCENT', 'cucumber', 59)).toBeCloseTo(0.95, 9);
  });

  test('SOIL.RANGE: Harrington’s and Georgia’s temperatures in a row', () => {
    expect(run('SOIL.RANGE', 'cucumber')).toEqual([[60, 60, 95, 105, 64]]);
    expect(run('SOIL.RANGE', 'muskmelon', 'us')).toEqual([[60, 75, 95, 100, 68]]);
  });

  test('refusals say what to do', () => {
    expect(run('EMERGENCE.DAYS', 'cucumber', 50)).toBe(
      '#N/A The table for slicing cucumber runs from 59 to 95 °F. Colder or hotter soil was not tested: wait for better.',
    );
    expect(run('EMERGENCE.DAYS', 'pumpkin', 70)).toMatch(
      /^#N\/A There is no table .* Go by the soil temperature/,
    );
    expect(run('EMERGENCE.PERCENT', 'cucumbr', 70)).toMatch(/^#N\/A .*Near it: .*cucumber/);
    expect(run('SOIL.RANGE', '')).toMatch(/crop is missing/);
  });
});
