// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { drawFrostFreeYears } from '../../src/pictures/frostFreeYears';
import { barsOf, dateScale, linesOf, narrow, parse, textsOf, wide, yearsOf } from './pictureData';

const may = ['May 1', '2026-05-01'] as const;

test.each([
  [6, wide],
  [30, narrow],
  [100, wide],
  [140, wide],
])('%d seasons: a bar each from last frost to first, at its dates', (count, frame) => {
  const data = yearsOf(count);
  const picture = parse(drawFrostFreeYears(data, frame).svg);
  const last = frame === wide ? (['Oct 1', '2026-10-01'] as const) : (['Sep 1', '2026-09-01'] as const);
  const x = dateScale(picture, [may, last]);
  const perDay = (x('2026-06-01') - x('2026-05-01')) / 31;
  const bars = barsOf(picture).filter(
    ({ fill }) => fill !== 'none' && fill.startsWith('#') && fill !== '#000',
  );
  const whole = data.years.filter(({ days }) => typeof days === 'number');
  expect(bars).toHaveLength(whole.length);
  whole.forEach((season, i) => {
    const from = x('2026-05-01') + (Number(season.lastFrost) - Number(data.years[0]?.lastFrost)) * perDay;
    expect(Math.abs((bars[i]?.x ?? NaN) - from)).toBeLessThan(0.6);
    expect(Math.abs((bars[i]?.width ?? NaN) - Number(season.days) * perDay)).toBeLessThan(0.6);
  });
  // Under one another, none over its neighbour.
  bars.slice(1).forEach((bar, i) => {
    const above = bars[i] ?? bar;
    expect(bar.y).toBeGreaterThanOrEqual(above.y + above.height);
  });
  const hollow = barsOf(picture).filter(({ fill, height }) => fill === 'none' && height < 17);
  expect(hollow).toHaveLength(data.years.filter(({ days }) => days === 'none').length);
  const dotted = linesOf(picture).filter(({ dashes }) => dashes === '1,4');
  expect(dotted).toHaveLength(data.years.filter(({ days }) => days === 'void').length);
});

test.each([
  [6, 1],
  [30, 1],
  [49, 1],
  [100, 2],
  [140, 5],
])('%d seasons are named every %d years, each name with room of its own', (count, every) => {
  const named = textsOf(parse(drawFrostFreeYears(yearsOf(count), wide).svg)).filter(({ text }) =>
    /^(19|20)\d\d$/.test(text),
  );
  expect(named.map(({ text }) => Number(text))).toEqual(
    Array.from({ length: count }, (_, i) => 1925 + i).filter((year) => year % every === 0),
  );
  named.slice(1).forEach(({ y }, i) => expect(y - (named[i]?.y ?? NaN)).toBeGreaterThanOrEqual(12));
});

test('the middle season is dark and has its days beside it, at any number of years', () => {
  for (const count of [6, 100]) {
    const picture = parse(drawFrostFreeYears(yearsOf(count), wide).svg);
    const dark = barsOf(picture).filter(({ fill }) => fill === wide.colours.text);
    expect(dark).toHaveLength(1);
    const label = textsOf(picture).filter(({ text, isBold }) => isBold && text === '157 days');
    expect(label).toHaveLength(1);
    expect(label[0]?.y).toBeCloseTo((dark[0]?.y ?? NaN) + (dark[0]?.height ?? NaN) / 2, 0);
  }
});

describe('in words', () => {
  test('the figures that a blind reader needs (by hand)', () => {
    const { alt, rows } = drawFrostFreeYears(yearsOf(6), wide);
    // Last frosts 1, 8, 15, 2, 9, 16 May; first 1, 12, 23, 4, 15, 26 October.
    expect(alt).toBe(
      'Frost-free days, year by year: Invented garden. Of 6 seasons, 4 have both frosts. Frost-free days: least 153 ' +
        '(1925), middle 157, most 163 (1930). Without frost in spring or fall: 1929. Days missing: 1927.',
    );
    expect(rows).toEqual([
      ['1925', 'May 1', 'Oct 1', '153'],
      ['1926', 'May 8', 'Oct 12', '157'],
      ['1927', 'May 15', 'days missing', 'days missing'],
      ['1928', 'May 2', 'Oct 4', '155'],
      ['1929', 'May 9', 'no frost', 'no frost'],
      ['1930', 'May 16', 'Oct 26', '163'],
    ]);
  });

  test('a southern season has both its years; of two in the middle both are meant', () => {
    const data = yearsOf(2);
    const south = {
      ...data,
      isSouth: true,
      middleDays: 155,
      years: data.years.map((one) => ({ ...one, isMiddle: true })),
    };
    const { svg, alt } = drawFrostFreeYears(south, wide);
    expect(alt).toContain('least 153 (1925/26), middle 155, most 157 (1926/27)');
    const said = textsOf(parse(svg)).map(({ text }) => text);
    expect(said).toContain('1925/26');
    expect(said.join(' ')).toContain('In bold: the two around the middle, 155 days.');
  });

  test('no season with both frosts', () => {
    const data = yearsOf(6);
    const open = data.years.filter(({ days }) => typeof days !== 'number');
    const { alt } = drawFrostFreeYears({ ...data, years: open, middleDays: null }, wide);
    expect(alt).toContain('Of 2 seasons, 0 have both frosts. Without frost');
  });
});
