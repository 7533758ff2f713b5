/** The series of the pictures, against the daily record of Seattle that vega-datasets carries (2012 to 2015, in C). */
import { readFileSync } from 'node:fs';
import { quantileSorted } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { weatherSeries, type WeatherAsked } from '../../src/functions/weatherSeries';

const serial = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000 + 25569;
const days = readFileSync('node_modules/vega-datasets/data/seattle-weather.csv', 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [date = '', , high, low] = line.split(',');
    return { date, serial: serial(date), high: Number(high), low: Number(low) };
  });
const seattle = { place: 'Seattle', units: 'metric' as const, days };
const asked: WeatherAsked = { risk: 0.5, year: 2030, hemisphere: 'north', heat: null };
const valueOf = <Value>(answer: { value: Value } | { wrong: string } | null): Value => {
  if (answer === null || 'wrong' in answer) throw new Error(answer === null ? 'none' : answer.wrong);
  return answer.value;
};

/** By the text of the dates alone: the last frost of spring before 24 July, the first of fall after it. */
const frostsOf = (year: number): { last: string; first: string } => {
  const frosty = days.filter(({ date, low }) => date.startsWith(String(year)) && low <= 0);
  const split = `${year}-07-24`;
  return {
    last: frosty.filter(({ date }) => date < split).at(-1)?.date ?? '',
    first: frosty.find(({ date }) => date >= split)?.date ?? '',
  };
};
const years = [2012, 2013, 2014, 2015];

describe('weatherSeries over Seattle', () => {
  test('one season a year, from its last frost to its first', () => {
    const { years: drawn, middleDays, isSouth } = valueOf(weatherSeries(seattle, asked).years);
    const lengths = years.map((year) => serial(frostsOf(year).first) - serial(frostsOf(year).last));
    expect(drawn.map(({ year, days: length }) => [year, length])).toEqual(
      years.map((year, i) => [year, lengths[i]]),
    );
    // None of these frosts is near a 29 February, so a date moves with its month and day.
    const moved = (iso: string): number => serial(`2030${iso.slice(4)}`);
    expect(drawn.map(({ lastFrost, firstFrost }) => [lastFrost, firstFrost])).toEqual(
      years.map((year) => [moved(frostsOf(year).last), moved(frostsOf(year).first)]),
    );
    expect(middleDays).toBe(
      quantileSorted(
        lengths.sort((a, b) => a - b),
        0.5,
      ),
    );
    expect(isSouth).toBe(false);
  });

  test('the chance falls with each last frost and grows a day after each first', () => {
    const { spring, fall } = valueOf(weatherSeries(seattle, asked).chance);
    const moved = (iso: string): number => serial(`2030${iso.slice(4)}`);
    const sorted = (which: 'last' | 'first'): number[] =>
      years.map((year) => moved(frostsOf(year)[which])).sort((a, b) => a - b);
    const lasts = sorted('last');
    const firsts = sorted('first');
    const share = (frosts: number[], hits: (frost: number) => boolean): number =>
      frosts.filter(hits).length / 4;
    expect(spring.steps).toEqual([
      { date: (lasts[0] ?? 0) - 1, chance: 1 },
      ...[...new Set(lasts)].map((date) => ({ date, chance: share(lasts, (frost) => frost > date) })),
    ]);
    expect(fall.steps).toEqual([
      { date: firsts[0], chance: 0 },
      ...[...new Set(firsts)].map((date) => ({
        date: date + 1,
        chance: share(firsts, (frost) => frost <= date),
      })),
    ]);
    // The record begins in winter and ends in one: neither end makes a season that counts.
    expect([spring, fall]).toMatchObject([
      { seasons: 4, voids: 0 },
      { seasons: 4, voids: 0 },
    ]);
    const half = (ends: number[]): number => ((ends[1] ?? 0) + (ends[2] ?? 0)) / 2;
    expect(spring.riskDate).toBe(Math.ceil(half(lasts)));
    expect(fall.riskDate).toBe(Math.floor(half(firsts)));
  });

  test('heat adds up day by day over 10 C, and is not reached where the record ends', () => {
    const heat = { sowings: [serial('2015-05-01'), serial('2015-09-01')], target: 500, base: 10 };
    const { paths, degrees } = valueOf(weatherSeries(seattle, { ...asked, heat }).heat);
    expect(degrees).toBe('C');
    let sum = 0;
    const from = days.findIndex(({ date }) => date === '2015-05-01');
    const sums = days.slice(from).map(({ high, low }) => (sum += Math.max(0, (high + low) / 2 - 10)));
    const reached = sums.findIndex((each) => each >= 500);
    expect(paths[0]?.sums).toHaveLength(reached + 1);
    paths[0]?.sums.forEach((each, i) => expect(each).toBeCloseTo(sums[i] ?? NaN, 9));
    expect(paths[0]?.reached).toBe(heat.sowings[0] === undefined ? NaN : heat.sowings[0] + reached);
    expect(paths[1]).toMatchObject({ sowing: serial('2015-09-01'), reached: null });
    expect(paths[1]?.sums).toHaveLength(serial('2015-12-31') - serial('2015-09-01') + 1);
  });
});

describe('a record without what a picture needs', () => {
  const year = (low: number) =>
    Array.from({ length: 800 }, (_, i) => ({ serial: serial('2020-01-01') + i, high: low + 10, low }));

  test('never froze: said instead of drawn', () => {
    const { chance, years: laid } = weatherSeries({ place: '', units: 'us', days: year(40) }, asked);
    expect(chance).toMatchObject({ wrong: expect.stringContaining('never froze') });
    expect(laid).toMatchObject({ wrong: expect.stringContaining('never froze') });
  });

  test('no season counts: said', () => {
    const few = { place: '', units: 'us' as const, days: year(20).slice(0, 3) };
    expect(weatherSeries(few, asked).chance).toMatchObject({
      wrong: expect.stringContaining('No season'),
    });
    expect(weatherSeries(few, asked).years).toMatchObject({ wrong: expect.stringContaining('No season') });
    expect(weatherSeries({ ...few, days: [] }, asked).years).toHaveProperty('wrong');
  });

  test('one side without a season that counts leaves the other', () => {
    // From 1 January to the end of June of one year.
    const half = { place: '', units: 'us' as const, days: year(20).slice(0, 205) };
    const { spring, fall } = valueOf(weatherSeries(half, asked).chance);
    expect(spring).toMatchObject({ seasons: 1, voids: 0 });
    expect(spring.riskDate).toBe(serial('2030-07-23'));
    expect(fall).toEqual({ seasons: 0, voids: 1, steps: [], riskDate: null });
  });

  test('a risk above the share of seasons with frost has no date, and no refusal', () => {
    const mild = [...year(40)];
    mild[100] = { ...(mild[100] as (typeof mild)[number]), low: 30 };
    const { spring } = valueOf(
      weatherSeries({ place: '', units: 'us', days: mild }, { ...asked, risk: 0.9 }).chance,
    );
    expect(spring).toMatchObject({ riskDate: null });
    expect(spring.steps.at(-1)?.chance).toBe(0);
  });
});
