// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { drawFrostChance } from '../../src/pictures/frostChance';
import { chance, dateScale, linesOf, narrow, parse, serial, textsOf, wide } from './pictureData';

describe.each([
  ['in a sheet', wide],
  ['in a narrow pane', narrow],
])('the chance of frost by date, %s', (_, frame) => {
  const { svg, widthPx, heightPx } = drawFrostChance(chance, frame);
  const picture = parse(svg);
  const x = dateScale(picture, [
    ['Apr 1', '2026-04-01'],
    ['Oct 1', '2026-10-01'],
  ]);
  const percents = textsOf(picture).filter(({ text }) => /^(0|100) %$/.test(text));
  const [zero = NaN, whole = NaN] = percents.sort((a, b) => b.y - a.y).map(({ y }) => y);
  const y = (share: number): number => zero + share * (whole - zero);
  const expectNear = (seen: readonly (readonly number[])[], wanted: readonly (readonly number[])[]): void => {
    expect(seen).toHaveLength(wanted.length);
    seen.flat().forEach((each, i) => expect(Math.abs(each - (wanted.flat()[i] ?? NaN))).toBeLessThan(0.6));
  };

  test('steps down at each last frost and up a day after each first', () => {
    const [spring, fall] = linesOf(picture).filter(({ points, width }) => width === 2 && points.length > 2);
    expectNear((spring?.points ?? []).slice(1), [
      [x('2026-04-19'), y(1)],
      [x('2026-04-20'), y(1)],
      [x('2026-04-20'), y(0.75)],
      [x('2026-05-02'), y(0.75)],
      [x('2026-05-02'), y(0.25)],
      [x('2026-05-12'), y(0.25)],
      [x('2026-05-12'), y(0)],
    ]);
    expectNear((fall?.points ?? []).slice(0, -1), [
      [x('2026-09-26'), y(0)],
      [x('2026-09-27'), y(0)],
      [x('2026-09-27'), y(0.25)],
      [x('2026-10-11'), y(0.25)],
      [x('2026-10-11'), y(1)],
    ]);
    // Told apart without colour.
    expect([spring?.dashes, fall?.dashes]).toEqual(['', '6,3']);
  });

  test('marks the risk with a line, and its dates on it, named', () => {
    const [line] = linesOf(picture).filter(({ dashes }) => dashes === '2,3');
    const heights = line?.points.map(([, height]) => [height]) ?? [];
    expectNear(heights, [[y(0.1)], [y(0.1)]]);
    const dots = [...picture.querySelectorAll('circle')].map((dot) =>
      ['cx', 'cy'].map((name) => Number(dot.getAttribute(name))),
    );
    expectNear(dots, [
      [x('2026-05-10'), y(0.1)],
      [x('2026-09-26'), y(0.1)],
    ]);
    const bold = textsOf(picture).filter(({ isBold, text }) => isBold && !/[:.]|by date|garden/.test(text));
    expect(bold.map(({ text }) => text)).toEqual(['10 %', 'May 10', 'Sep 26']);
  });

  test('says how many seasons count', () => {
    const said = textsOf(picture)
      .map(({ text }) => text)
      .join(' ');
    expect(said).toContain('Counted: 4 springs and 4 falls. Not counted, for missing days: 1 and 0.');
  });

  test('every text lies inside', () => {
    expect([widthPx, heightPx]).toEqual([
      Number(picture.getAttribute('width')),
      Number(picture.getAttribute('height')),
    ]);
    for (const text of textsOf(picture)) {
      expect(text.x).toBeGreaterThanOrEqual(0);
      expect(text.x).toBeLessThan(widthPx);
      expect(text.y).toBeLessThan(heightPx);
    }
  });
});

describe('in words', () => {
  test('the figures that a blind reader needs (by hand)', () => {
    const { alt, headers, rows } = drawFrostChance(chance, wide);
    expect(alt).toBe(
      'Chance of frost by date: Invented garden. Counted: 4 springs and 4 falls. Not counted, for missing days: 1 ' +
        'and 0. Frost still comes in 100 % of springs after Apr 19, in 10 % after May 10, in none after May 12. ' +
        'Frost has come in no fall before Sep 26, in 10 % before Sep 26, in 100 % before Oct 11.',
    );
    expect(headers).toHaveLength(3);
    expect(rows).toContainEqual(['spring, after', 'May 2', '25 %']);
    expect(rows).toHaveLength(7);
  });

  test('a risk that no date has, a side that never froze, a side that does not count', () => {
    const mild = {
      ...chance,
      spring: {
        seasons: 10,
        voids: 0,
        steps: [
          { date: serial('2026-04-19'), chance: 0.05 },
          { date: serial('2026-04-20'), chance: 0 },
        ],
        riskDate: null,
      },
      fall: { seasons: 10, voids: 0, steps: [], riskDate: null },
    };
    const { svg, alt } = drawFrostChance(mild, wide);
    const tooMuch =
      'Frost comes in 5 % of springs: no date has a risk of 10 %. It comes in none after Apr 20.';
    expect(alt).toContain(`${tooMuch} No fall had frost.`);
    const picture = parse(svg);
    const said = textsOf(picture)
      .map(({ text }) => text)
      .join(' ');
    expect(said).toContain(tooMuch);
    expect(said).toContain('No fall had frost.');
    expect(picture.querySelectorAll('circle')).toHaveLength(0);
    const none = { ...mild, fall: { ...mild.fall, seasons: 0, voids: 2 } };
    expect(drawFrostChance(none, wide).alt).toContain('No fall can be counted.');
  });

  test('without a place the title stands alone', () => {
    expect(drawFrostChance({ ...chance, place: ' ' }, wide).title).toBe('Chance of frost by date');
  });
});
