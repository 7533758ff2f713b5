/**
 * Four years of Seattle, 2012 to 2015, in C: data/seattle-weather.csv of vega-datasets 3.2.1 (source: NOAA National
 * Climatic Data Center). What the functions make of it is worked out again by other means: dates compared as texts,
 * heat counted in whole twentieths of a degree, the sine integrated, quantiles by jstat 1.9.6, sums by
 * simple-statistics 7.12.1.
 */
import { readFileSync } from 'node:fs';
import { jStat } from 'jstat';
import { sum } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { run } from './run';

interface Day {
  readonly iso: string;
  readonly high: number;
  readonly low: number;
}

const days: readonly Day[] = readFileSync('node_modules/vega-datasets/data/seattle-weather.csv', 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [iso = '', , high, low] = line.split(',');
    return { iso, high: Number(high), low: Number(low) };
  });

/** By the calendar of JavaScript; serial 1 is 1900-01-01, and counts a 29 February 1900 that never was. */
const serial = (iso: string): number => (Date.parse(iso) - Date.parse('1899-12-30')) / 86_400_000;
const isoOf = (number: number): string =>
  new Date(Date.parse('1899-12-30') + number * 86_400_000).toISOString().slice(0, 10);
const cells = (of: (day: Day) => unknown, among = days): unknown[][] => among.map((day) => [of(day)]);
const dates = cells(({ iso }) => serial(iso));
const highs = cells(({ high }) => high);
const lows = cells(({ low }) => low);

/** Days of the record from one date to another, both included. */
const between = (from: string, to: string): Day[] => days.filter(({ iso }) => iso >= from && iso <= to);
const thresholds = [-2, 0, 2.2];

test('the record is whole: 1,461 days, none twice, no low above its high', () => {
  expect(days).toHaveLength(1461);
  expect(days[0]?.iso).toBe('2012-01-01');
  days.forEach(({ iso, high, low }, i) => {
    expect(low).toBeLessThanOrEqual(high);
    if (i > 0) expect(serial(iso)).toBe(serial(days[i - 1]?.iso ?? '') + 1);
  });
});

/** The last frost from July to July, found among texts. The record ends in the winter before the spring of 2016. */
const lastFrost = (year: number, threshold: number): string => {
  const frosts = between(`${year - 1}-07-24`, `${year}-07-23`).filter(({ low }) => low <= threshold);
  return frosts[frosts.length - 1]?.iso ?? 'none';
};
/** The first one. The record begins in the winter after the fall of 2011. */
const firstFrost = (year: number, threshold: number): string =>
  between(`${year}-07-24`, `${year + 1}-07-23`).find(({ low }) => low <= threshold)?.iso ?? 'none';
const asCell = (iso: string): unknown => (iso === 'none' ? iso : serial(iso));

describe('frost', () => {
  test.each(thresholds)('last and first frosts at %d C, half a winter void', (threshold) => {
    expect(run('FROST.LASTDATES', dates, lows, threshold, 'metric')).toEqual([
      ...[2012, 2013, 2014, 2015].map((year) => [year, asCell(lastFrost(year, threshold))]),
      [2016, 'void'],
    ]);
    expect(run('FROST.FIRSTDATES', dates, lows, threshold, 'metric')).toEqual([
      [2011, 'void'],
      ...[2012, 2013, 2014, 2015].map((year) => [year, asCell(firstFrost(year, threshold))]),
    ]);
  });

  const years = [2012, 2013, 2014, 2015];
  const springs = years.map((year) => lastFrost(year, 0));
  const falls = years.map((year) => firstFrost(year, 0));
  const column = (isos: readonly string[]): unknown[][] => [...isos.map((iso) => [asCell(iso)]), ['void']];
  /** Days from the 1 March before a fall frost, or beside a spring one. */
  const counted = (iso: string, year: number): number => serial(iso) - serial(`${year}-03-01`);

  test.each([
    ['inc', 1, [0.1, 0.25, 0.5, 0.8, 0.95]],
    // Four seasons reach from the 20 % to the 80 % quantile.
    ['exc', 0, [0.2, 0.25, 0.5, 0.8]],
  ] as const)('frost dates at a risk, by rule %s, are jstat’s quantiles', (rule, parameter, risks) => {
    for (const risk of risks) {
      const quantile = (list: readonly number[], at: number): number =>
        Number((jStat.quantiles(list, [at], parameter, parameter)[0] ?? NaN).toFixed(9));
      const spring = quantile(
        springs.map((iso, i) => counted(iso, years[i] ?? NaN)),
        1 - risk,
      );
      const fall = quantile(
        falls.map((iso, i) => counted(iso, years[i] ?? NaN)),
        risk,
      );
      for (const year of [2027, 2028]) {
        const start = serial(`${year}-03-01`);
        expect(run('FROST.SPRINGDATE', column(springs), risk, year, rule)).toBe(
          isoOf(start + Math.ceil(spring)),
        );
        expect(run('FROST.FALLDATE', column(falls), risk, year, rule)).toBe(isoOf(start + Math.floor(fall)));
      }
    }
  });

  test('the chance is a count of texts: month and day after, or before', () => {
    for (const monthDay of ['02-10', '03-08', '03-25', '04-14', '05-01']) {
      const later = springs.filter((iso) => iso.slice(5) > monthDay).length;
      expect(run('FROST.CHANCE', `2027-${monthDay}`, column(springs), 'spring')).toBe(later / 4);
    }
    for (const monthDay of ['10-20', '11-11', '11-21', '12-01', '12-20']) {
      const earlier = falls.filter((iso) => iso.slice(5) < monthDay).length;
      expect(run('FROST.CHANCE', `2027-${monthDay}`, column(falls), 'fall')).toBe(earlier / 4);
    }
  });
});

/** In whole twentieths of a C-day: the record has tenths, so that nothing is rounded. */
const meanOver10 = ({ high, low }: Day): number =>
  Math.max(0, Math.round(high * 10) + Math.round(low * 10) - 200);
const base = 10;
const ceiling = 25;

/** The sine day by the trapezoid rule. */
function integrated({ high, low }: Day): number {
  const parts = 4000;
  const at = (part: number): number => {
    const warmth = (high + low) / 2 + ((high - low) / 2) * Math.sin((2 * Math.PI * part) / parts);
    return Math.max(0, Math.min(warmth, ceiling) - base);
  };
  return sum(Array.from({ length: parts }, (_, part) => at(part))) / parts;
}

describe('heat', () => {
  const clip = (degrees: number): number => [base, degrees, ceiling].sort((a, b) => a - b)[1] ?? NaN;
  const methods: Readonly<Record<string, (day: Day) => number>> = {
    mean: ({ high, low }) => clip((high + low) / 2) - base,
    modified: ({ high, low }) => (clip(high) + clip(low)) / 2 - base,
    sine: integrated,
    reduced: ({ high }) => Math.max(0, ceiling - Math.abs(high - ceiling) - base),
  };

  test.each(Object.entries(methods))('the sum of each year and of all, by %s', (method, heatOf) => {
    const spans = [
      ...[2012, 2013, 2014, 2015].map((year) => between(`${year}-01-01`, `${year}-12-31`)),
      days,
    ];
    for (const span of spans) {
      const found = run(
        'HEAT.SUM',
        cells(({ high }) => high, span),
        cells(({ low }) => low, span),
        base,
        ceiling,
        method,
      );
      // The trapezoid rule cuts the corners at base and ceiling: a millionth of the heat.
      expect(Number(found) / sum(span.map(heatOf))).toBeCloseTo(1, method === 'sine' ? 5 : 10);
    }
  });

  test('the day that reaches a heat, counted in whole twentieths', () => {
    for (const start of ['2012-05-01', '2013-04-15', '2014-06-20', '2015-09-01']) {
      for (const target of [0.05, 25, 180, 630, 970]) {
        let left = target * 20;
        const reached = days.find((day) => day.iso >= start && (left -= meanOver10(day)) <= 0);
        const expected = reached === undefined ? /^#N\/A The record ends on 2015-12-31/ : reached.iso;
        const found = run('HEAT.DATE', dates, highs, lows, start, target, base);
        if (typeof expected === 'string') expect(found).toBe(expected);
        else expect(found).toMatch(expected);
      }
    }
  });

  test('sowings with equal heat between them, counted in whole twentieths', () => {
    for (const [first, last, heat] of [
      ['2012-05-01', '2012-08-15', 60],
      ['2015-05-20', '2015-07-10', 37.5],
    ] as const) {
      const sowings = [first as string];
      let gathered = 0;
      for (const day of between(first, last)) {
        if (gathered >= heat * 20) {
          sowings.push(day.iso);
          gathered = 0;
        }
        gathered += meanOver10(day);
      }
      const found = run('HEAT.SUCCESSION', dates, highs, lows, first, last, heat, base) as number[][];
      expect(found.map(([date]) => isoOf(date ?? NaN))).toEqual(sowings);
      expect(sowings.length).toBeGreaterThan(5);
    }
  });

  test('a heat reached, in F, is the same day', () => {
    const inF = (rows: unknown[][]): unknown[][] => rows.map(([degrees]) => [Number(degrees) * 1.8 + 32]);
    for (const target of [180, 630]) {
      expect(run('HEAT.DATE', dates, inF(highs), inF(lows), '2013-05-01', target * 1.8, 50)).toBe(
        run('HEAT.DATE', dates, highs, lows, '2013-05-01', target, 10),
      );
    }
  });
});
