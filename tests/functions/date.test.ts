import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { leftOut, run } from './run';

/** Serials by the spreadsheet's own count: 2026-05-02 is 46144 (46023 is 2026-01-01, plus 121 days). */
const lastFrost = 46144;

/** id, full arguments, expected date. Hand computed on a calendar; the arithmetic is tested in tests/calc/dates. */
const cases: readonly [string, readonly unknown[], string][] = [
  ['DATE.SETOUT', ['2026-05-02', 10], '2026-05-12'],
  ['DATE.STARTTRANSPLANTS', ['2026-05-16', 4], '2026-04-18'],
  ['DATE.HARDENOFF', ['2026-05-16', 10], '2026-05-06'],
  ['DATE.FIRSTSOWING', ['2026-05-02', 0], '2026-05-02'],
  ['DATE.LASTSOWING', ['2026-10-10', 60, 21, 14, 0], '2026-07-07'],
  ['DATE.FIRSTPICK', ['2026-05-16', 60, 'transplant', 'seed', 10, 0], '2026-07-05'],
  ['DATE.LASTPICK', ['2026-09-25', 21, '2026-10-10'], '2026-10-09'],
  ['DATE.COVEROFF', ['2026-07-15', 'cucumber', 9, 'monoecious'], '2026-07-06'],
];

/** id, the required arguments alone, expected date by the defaults of functions.md. */
const defaults: readonly [string, readonly unknown[], number, string][] = [
  ['DATE.SETOUT', ['2026-05-02'], 1, '2026-05-16'],
  ['DATE.STARTTRANSPLANTS', ['2026-05-16'], 1, '2026-04-25'],
  ['DATE.HARDENOFF', ['2026-05-16'], 1, '2026-05-09'],
  ['DATE.FIRSTSOWING', ['2026-05-02'], 1, '2026-05-09'],
  ['DATE.LASTSOWING', ['2026-10-10', 60], 3, '2026-06-23'],
  ['DATE.FIRSTPICK', ['2026-05-16', 60], 4, '2026-07-15'],
  ['DATE.LASTPICK', ['2026-09-25', 21], 1, '2026-10-16'],
  ['DATE.COVEROFF', ['2026-07-15', 'cucumber'], 2, '2026-07-06'],
];

describe.each(cases)('%s', (id, args, expected) => {
  test('from texts, shown as a date', () => {
    expect(run(id, ...args)).toBe(expected);
    expect(functions.get(id)?.run(args)).toMatchObject({ pattern: 'yyyy-mm-dd' });
  });

  test('from cells of one-cell ranges and numbers kept as text', () => {
    expect(run(id, ...args.map((arg) => [[arg]]))).toBe(expected);
    expect(run(id, ...args.map((arg) => (typeof arg === 'number' ? ` ${arg} ` : arg)))).toBe(expected);
  });

  test('from rich values', () => {
    expect(run(id, ...args.map((arg) => ({ type: 'String', basicValue: arg })))).toBe(expected);
  });

  test('an error in any argument is passed on with its name', () => {
    args.forEach((_, position) => {
      const spoiled = args.map((arg, i) => (i === position ? { error: '#REF!' } : arg));
      expect(run(id, ...spoiled)).toMatch(
        /^#VALUE! The .+ is itself an error \(#REF!\)\. Mend that cell first\.$/,
      );
    });
  });

  test('a required argument left out is asked for', () => {
    for (const nothing of leftOut) {
      expect(run(id, nothing, ...args.slice(1))).toMatch(/^#VALUE! The .+ is missing\. Fill it in\.$/);
    }
  });

  test('words where a date belongs are refused with an example', () => {
    expect(run(id, 'in spring', ...args.slice(1))).toMatch(
      /^#VALUE! The .+ is "in spring", which is not a date .*Type a date such as 2026-05-02\.$/,
    );
    expect(run(id, 12, ...args.slice(1))).toContain('is not a date');
    expect(run(id, '2026-02-29', ...args.slice(1))).toContain('is not a date');
  });

  test('words where a number belongs are refused', () => {
    args.forEach((arg, position) => {
      if (typeof arg !== 'number') return;
      const spoiled = args.map((one, i) => (i === position ? 'a few' : one));
      expect(run(id, ...spoiled)).toMatch(/^#VALUE! .*"a few", which is not a number\. Type digits/);
    });
  });
});

test.each(defaults)('%s leaves its optional arguments out', (id, required, optionalCount, expected) => {
  expect(run(id, ...required)).toBe(expected);
  for (const nothing of leftOut) {
    expect(run(id, ...required, ...Array.from({ length: optionalCount }, () => nothing))).toBe(expected);
  }
});

describe('days as serials', () => {
  test('a serial counts as its day and comes back as one', () => {
    expect(functions.get('DATE.FIRSTSOWING')?.run([lastFrost])).toEqual({
      value: lastFrost + 7,
      pattern: 'yyyy-mm-dd',
    });
  });

  test('spring rounds up, fall rounds down', () => {
    expect(run('DATE.SETOUT', lastFrost + 0.25, 0)).toBe('2026-05-03');
    expect(run('DATE.LASTSOWING', lastFrost + 0.75, 1, 0, 0, 0)).toBe('2026-05-01');
    expect(run('DATE.COVEROFF', lastFrost + 0.75, 'cucumber', 0)).toBe('2026-05-02');
  });

  test('a date beyond the last of the calendar is #NUM!, as in the spreadsheet’s own functions', () => {
    expect(run('DATE.SETOUT', '9999-12-31', 1)).toMatch(/^#NUM! /);
    expect(run('DATE.SETOUT', '9999-12-30', 1)).toBe('9999-12-31');
    expect(run('DATE.HARDENOFF', '1900-03-01', 1)).toMatch(/^#NUM! /);
    expect(run('DATE.HARDENOFF', '1900-03-02', 1)).toBe('1900-03-01');
  });
});

describe('advice', () => {
  test.each([
    [
      ['DATE.SETOUT', '2026-05-02', 200],
      '#VALUE! The number of days after the last frost is 200. It must be at least -60 days and at most 120 days.',
    ],
    [
      ['DATE.STARTTRANSPLANTS', '2026-05-16', 27],
      '#VALUE! The number of weeks is 27. It must be at least 0 weeks and at most 26 weeks.',
    ],
    [
      ['DATE.LASTSOWING', '2026-10-10', 0],
      '#VALUE! The number of days to maturity is 0. It must be above 0 days and at most 365 days.',
    ],
    [
      ['DATE.FIRSTPICK', '2026-05-16', 60, 'plants'],
      '#VALUE! The method is "plants". Choose one of: seed, transplant.',
    ],
    [
      ['DATE.FIRSTPICK', '2026-05-16', 8, 'transplant'],
      '#VALUE! The transplant gain is 10. It must be at least 0 days and below 8 days.',
    ],
    [
      ['DATE.LASTPICK', '2026-10-12', 21, '2026-10-10'],
      '#N/A Frost comes first: the first pick would be 2026-10-12, the first frost is 2026-10-10. Sow earlier or choose a quicker type.',
    ],
    [
      ['DATE.COVEROFF', '2026-07-15', 'English cucumber'],
      '#N/A A parthenocarpic type needs no bees and may stay covered.',
    ],
  ] as const)('%j', ([id, ...args], expected) => {
    expect(run(id, ...args)).toBe(expected);
  });

  test('an unknown crop is #N/A with the nearest names, an unknown flower type lists the choices', () => {
    expect(run('DATE.COVEROFF', '2026-07-15', 'zuchini')).toMatch(/^#N\/A .*zucchini/);
    expect(run('DATE.COVEROFF', '2026-07-15', 'cucumber', 9, 'double')).toMatch(/^#VALUE! .*parthenocarpic/);
  });

  test('choices are taken in any capitals', () => {
    expect(run('DATE.FIRSTPICK', '2026-05-16', 60, ' Transplant ', 'SEED')).toBe('2026-07-05');
  });
});
