// @vitest-environment jsdom
import { expect, test } from 'vitest';
import { drawHeatPaths } from '../../src/pictures/heatPaths';
import { dateScale, heat, linesOf, narrow, parse, serial, textsOf, wide } from './pictureData';

test.each([
  ['in a sheet', wide],
  ['in a narrow pane', narrow],
])('a line each from the sowing to the target, %s', (_, frame) => {
  const picture = parse(drawHeatPaths(heat, frame).svg);
  const x = dateScale(picture, [
    ['May 1', '2025-05-01'],
    ['Jun 1', '2025-06-01'],
  ]);
  const ticks = textsOf(picture).filter(({ text }) => text === '0' || text === '300');
  const y = (sum: number): number => {
    const [zero, target] = ['0', '300'].map((each) => ticks.find(({ text }) => text === each)?.y ?? NaN);
    return (zero ?? NaN) + (sum / 300) * ((target ?? NaN) - (zero ?? NaN));
  };
  const paths = linesOf(picture).filter(({ width, points }) => width === 2 && points.length > 2);
  const ends = [
    ['2025-05-01', 20, '2025-05-15', 300],
    ['2025-05-11', 20, '2025-05-25', 300],
    // Cut off by the end of the record.
    ['2025-05-21', 20, '2025-05-30', 200],
  ] as const;
  expect(paths).toHaveLength(3);
  ends.forEach(([from, first, to, last], i) => {
    const { points = [] } = paths[i] ?? {};
    const [start, end] = [points[0], points[points.length - 1]];
    expect(start?.[0]).toBeCloseTo(x(from), 0);
    expect(start?.[1]).toBeCloseTo(y(first), 0);
    expect(end?.[0]).toBeCloseTo(x(to), 0);
    expect(end?.[1]).toBeCloseTo(y(last), 0);
  });
  // Neighbours differ without colour.
  expect(new Set(paths.map(({ dashes }) => dashes)).size).toBe(3);
  const dots = [...picture.querySelectorAll('circle')].map((dot) => dot.getAttribute('fill') !== 'none');
  expect(dots).toEqual([true, true, false]);
  const said = textsOf(picture).map(({ text }) => text);
  for (const flag of ['May 1 to May 15', 'May 11 to May 25', 'May 21: not reached'])
    expect(said).toContain(flag);
});

test('flags stand side by side where there is room, else above one another, never through a pole', () => {
  const close = {
    ...heat,
    paths: Array.from({ length: 12 }, (_, i) => {
      const sowing = serial('2025-05-01') + i * 4;
      return {
        sowing,
        sums: Array.from({ length: 15 }, (_day, day) => (day + 1) * 20),
        reached: sowing + 14,
      };
    }),
  };
  for (const frame of [wide, narrow]) {
    const picture = parse(drawHeatPaths(close, frame).svg);
    const flags = textsOf(picture).filter(({ text }) => / to /.test(text) && text.length < 20);
    expect(flags).toHaveLength(12);
    // What is faint, such as the lines of months, passes behind.
    const poles = linesOf(picture).filter(
      ({ points, stroke }) =>
        points.length === 2 && points[0]?.[0] === points[1]?.[0] && stroke === frame.colours.text,
    );
    expect(poles).toHaveLength(12);
    for (const { text, x, y } of flags) {
      // A letter of Roboto is about half its size wide.
      const left = x - text.length * 12 * 0.5;
      const through = poles.filter(({ points: [from, to] }) => {
        const at = from?.[0] ?? NaN;
        const ends = [from?.[1] ?? NaN, to?.[1] ?? NaN];
        return at > left && at < x && Math.min(...ends) < y && y < Math.max(...ends);
      });
      expect(through, text).toEqual([]);
      expect(left).toBeGreaterThan(0);
    }
  }
});

test('in words: the figures that a blind reader needs (by hand)', () => {
  const { alt, rows } = drawHeatPaths(heat, wide);
  expect(alt).toBe(
    'Heat from sowing to first pick: Invented garden. Degree days over 50 F, added up from each sowing in the weather ' +
      'of 2025. First pick at 300. 2 of 3 sowings reach 300 degree days. Sown May 1, first pick May 15, after 14 days. ' +
      'Sown May 11, first pick May 25, after 14 days. Sown May 21, 200 degree days by May 30, where the record ends or ' +
      'lacks a day.',
  );
  expect(rows).toEqual([
    ['May 1', 'May 15', '14', '300'],
    ['May 11', 'May 25', '14', '300'],
    ['May 21', 'not reached', '9', '200'],
  ]);
});

test('a sowing that the record has no heat of is said, and drawn without a line', () => {
  const sowing = serial('2025-06-10');
  const { svg, alt } = drawHeatPaths(
    { ...heat, paths: [...heat.paths, { sowing, sums: [], reached: null }] },
    wide,
  );
  expect(alt).toContain('Sown Jun 10, where the record lacks the day.');
  expect(textsOf(parse(svg)).map(({ text }) => text)).toContain('Jun 10: not reached');
});

test('of more than twelve sowings twelve are drawn, evenly, and it says so; the figures have them all', () => {
  const first = serial('2025-05-01');
  const paths = Array.from({ length: 34 }, (_, i) => ({
    sowing: first + i * 3,
    sums: Array.from({ length: 15 }, (_day, day) => (day + 1) * 20),
    reached: first + i * 3 + 14,
  }));
  const { svg, alt, rows } = drawHeatPaths({ ...heat, paths }, wide);
  const picture = parse(svg);
  const sentence = 'Drawn are 12 of the 34 sowings, spread evenly from the first to the last.';
  expect(
    textsOf(picture)
      .map(({ text }) => text)
      .join(' '),
  ).toContain(sentence);
  expect(alt).toContain(`${sentence} 34 of 34 sowings reach 300 degree days.`);
  // Every third of 34 from the first on, by hand: 9 days apart, 1 May to 8 August.
  const flags = textsOf(picture).flatMap(({ text }) =>
    / to /.exec(text) && text.length < 20 ? [text.split(' to ')[0]] : [],
  );
  expect(flags).toEqual([
    'May 1',
    'May 10',
    'May 19',
    'May 28',
    'Jun 6',
    'Jun 15',
    'Jun 24',
    'Jul 3',
    'Jul 12',
    'Jul 21',
    'Jul 30',
    'Aug 8',
  ]);
  expect(alt.match(/Sown /g)).toHaveLength(12);
  expect([rows.length, rows[33]?.[0]]).toEqual([34, 'Aug 8']);
});
