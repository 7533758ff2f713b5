// @vitest-environment jsdom
/** Marks are counted and measured in the drawing itself, against the worksheet functions and what was asked for. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plotPlaces, type PlotAsked } from '../../src/functions/plotPlaces';
import { paneColours, paperColours } from '../../src/pictures/colours';
import { drawPlot } from '../../src/pictures/drawPlot';
import type { PlotPicture } from '../../src/pictures/plotPicture';
import { roundLength, sayLength } from '../../src/pictures/sayLength';
import { contrast } from '../contrast';
import { seeded } from '../calc/dates/calendar';
import { measured } from '../calc/plants/placing';
import { run } from '../functions/run';
import { narrow, parse, textsOf, wickedPlace, wide } from './pictureData';

function pictureOf(asked: PlotAsked, more: Partial<PlotPicture> = {}): PlotPicture {
  const answer = plotPlaces(asked);
  if ('wrong' in answer) throw new Error(answer.wrong);
  return { plot: 'Invented plot', crop: 'watermelon', typedPlants: null, ...answer.value, ...more };
}
const drawn = (asked: PlotAsked, frame = wide, more: Partial<PlotPicture> = {}) => {
  const drawing = drawPlot(pictureOf(asked, more), frame);
  return { ...drawing, picture: parse(drawing.svg) };
};
const part = (picture: Element, name: string): Element[] => [
  ...picture.querySelectorAll(`[data-part="${name}"] > *`),
];
const edgeOf = (picture: Element, name = 'plot') => {
  return sidesOf(picture.querySelector(`[data-part="${name}"]`));
};
function sidesOf(edge: Element | null) {
  const [x = 0, y = 0, width = 0, height = 0] = ['x', 'y', 'width', 'height'].map((name) =>
    Number(edge?.getAttribute(name)),
  );
  return { x, y, width, height };
}
/** The middle of a circle, or of a diamond, which begins at its top. */
function middleOf(mark: Element): { x: number; y: number } {
  if (mark.tagName === 'circle')
    return { x: Number(mark.getAttribute('cx')), y: Number(mark.getAttribute('cy')) };
  const [x = 0, , , right = 0] = (mark.getAttribute('d') ?? '').match(/[-\d.]+/g)?.map(Number) ?? [];
  return { x, y: right };
}
const radiusOf = (picture: Element, of: '' | 'corner-') =>
  Number(part(picture, `${of}plants`)[0]?.getAttribute('r'));
/** How far a mark reaches: a circle's radius, or from a diamond's middle to its top. */
function reachOf(mark: Element): number {
  if (mark.tagName === 'circle') return Number(mark.getAttribute('r'));
  const [, top = 0] = (mark.getAttribute('d') ?? '').match(/[-\d.]+/g)?.map(Number) ?? [];
  return middleOf(mark).y - top;
}
/** Between the two marks that come nearest to one another, by brute force [px]. */
function leastGap(picture: Element, of: '' | 'corner-'): number {
  const marks = [...part(picture, `${of}plants`), ...part(picture, `${of}pollenizers`)].map((mark) => ({
    ...middleOf(mark),
    reach: reachOf(mark),
  }));
  let least = Infinity;
  marks.forEach((one, i) => {
    for (const two of marks.slice(i + 1)) {
      least = Math.min(least, Math.hypot(one.x - two.x, one.y - two.y) - one.reach - two.reach);
    }
  });
  return least;
}
const rows = (length: number, width: number, pollenizers = 0): PlotAsked => ({
  layout: 'rows',
  units: 'us',
  cells: { length, width, row_spacing: 6, plant_spacing: 12 },
  pollenizers,
});
const hills: PlotAsked = {
  layout: 'hills',
  units: 'us',
  cells: { length: 60, width: 26, hill_spacing: 6, plants_per_hill: 3 },
  pollenizers: 30,
};
const beds: PlotAsked = {
  layout: 'beds',
  units: 'metric',
  cells: { length: 20, width: 6, bed_width: 1.2, path_width: 0.4, rows_per_bed: 2, plant_spacing: 45 },
  pollenizers: 0,
};

describe('as many marks as the number says', () => {
  const sizes = fc.record({
    layout: fc.constantFrom('rows', 'hills', 'beds'),
    units: fc.constantFrom('us', 'metric'),
    length: measured(6, 40),
    width: measured(6, 30),
    row: measured(1.5, 6),
    plant: fc.integer({ min: 20, max: 90 }),
    path: measured(0, 2),
    perBed: fc.integer({ min: 1, max: 2 }),
    perHill: fc.integer({ min: 1, max: 4 }),
    share: fc.constantFrom(0, 0.1, 0.25, 1),
    frame: fc.constantFrom(wide, narrow),
  });
  test('of any plot, every one of them inside it, pollenizers as many as asked for', () => {
    fc.assert(
      fc.property(sizes, (sized) => {
        const { layout, units, length, width, row, plant, path, perBed, perHill, share, frame } = sized;
        const [cells, plants] = {
          rows: [
            { row_spacing: row, plant_spacing: plant },
            run('PLANTS.INROWS', length, width, row, plant, null, units),
          ],
          hills: [
            { hill_spacing: row, plants_per_hill: perHill },
            run('PLANTS.INHILLS', length, width, row, perHill, null, null, units),
          ],
          beds: [
            { bed_width: row, path_width: path, rows_per_bed: perBed, plant_spacing: plant },
            run('PLANTS.INBEDS', length, width, row, path, perBed, plant, units),
          ],
        }[layout] as [Record<string, number>, number];
        const pollenizers = Math.floor(plants * share);
        fc.pre(plants <= 3000);
        const asked = { layout, units, cells: { length, width, ...cells }, pollenizers };
        const { picture, alt } = drawn(asked, frame);
        const marks = [...part(picture, 'plants'), ...part(picture, 'pollenizers')];
        expect(marks).toHaveLength(plants);
        expect(part(picture, 'pollenizers')).toHaveLength(pollenizers);
        expect(alt).toContain(`${plants.toLocaleString('en-US')} plant`);
        const edge = edgeOf(picture);
        for (const { x, y } of marks.map(middleOf)) {
          expect(x).toBeGreaterThanOrEqual(edge.x - 0.02);
          expect(x).toBeLessThanOrEqual(edge.x + edge.width + 0.02);
          expect(y).toBeGreaterThanOrEqual(edge.y - 0.02);
          expect(y).toBeLessThanOrEqual(edge.y + edge.height + 0.02);
        }
        // To scale in both directions, as far as hundredths of a pixel tell.
        expect(Math.abs(edge.width / length - edge.height / width) * Math.min(length, width)).toBeLessThan(
          0.03,
        );
        // Of the whole or of the corner: no two run into one another.
        const isEnlarged = picture.querySelector('[data-part="corner"]') !== null;
        expect(leastGap(picture, isEnlarged ? 'corner-' : '')).toBeGreaterThan(-0.05);
      }),
      { ...seeded, numRuns: 30 },
    );
  });

  test('3 plants in large marks, 5,000 with their pollenizers, over 10,000 a line for each row', () => {
    const three = drawn(rows(3, 6)).picture;
    expect([part(three, 'plants').length, radiusOf(three, '')]).toEqual([3, 6]);
    const many = drawn(rows(500, 60, 1250)).picture;
    expect(part(many, 'pollenizers')).toHaveLength(1250);
    expect(part(many, 'plants')).toHaveLength(3750);
    const { picture, alt } = drawn(rows(1001, 60, 750));
    expect([part(picture, 'plants').length, part(picture, 'rows').length]).toEqual([0, 10]);
    expect([part(picture, 'pollenizers').length, part(picture, 'key').length]).toEqual([0, 0]);
    expect(alt).toContain('10,010 plants in 10 rows of 1,001');
    expect(alt).toContain('750 of them are pollenizers, not shown here.');
    expect(alt).toContain('Each row is drawn as a line: 10,010 plants are too many');
  });

  test('distances as said: plants 12 in apart, rows 6 ft apart, the first half a spacing inside', () => {
    const { picture } = drawn(rows(20, 13));
    const edge = edgeOf(picture);
    const foot = edge.width / 20;
    const middles = part(picture, 'plants').map(middleOf);
    expect(middles).toHaveLength(40);
    expect((middles[0]?.x ?? 0) - edge.x).toBeCloseTo(foot / 2, 1);
    expect((middles[1]?.x ?? 0) - (middles[0]?.x ?? 0)).toBeCloseTo(foot, 1);
    expect((middles[0]?.y ?? 0) - edge.y).toBeCloseTo(3 * foot, 1);
    expect((middles[20]?.y ?? 0) - (middles[0]?.y ?? 0)).toBeCloseTo(6 * foot, 1);
  });

  test('beds and hills are to scale, plants stand on them and paths are free', () => {
    const { picture } = drawn(beds);
    const edge = edgeOf(picture);
    const metre = edge.width / 20;
    // 6 m hold 4 beds of 1.2 m and 3 paths of 0.4 m.
    const grounds = part(picture, 'beds').map((bed) => [
      Number(bed.getAttribute('y')),
      Number(bed.getAttribute('height')),
    ]);
    expect(grounds).toHaveLength(4);
    grounds.forEach(([y = 0, height = 0], i) => {
      expect(y - edge.y).toBeCloseTo(1.6 * i * metre, 1);
      expect(height).toBeCloseTo(1.2 * metre, 1);
    });
    for (const { y } of part(picture, 'plants').map(middleOf)) {
      expect(grounds.some(([top = 0, height = 0]) => y > top && y < top + height)).toBe(true);
    }
    const inHills = drawn(hills).picture;
    const foot = edgeOf(inHills).width / 60;
    expect(part(inHills, 'hills')).toHaveLength(40);
    expect(Number(part(inHills, 'hills')[0]?.getAttribute('r'))).toBeCloseTo(foot, 1);
  });

  test('pollenizers are told by shape, size and lightness, and by the key', () => {
    const { picture } = drawn(rows(40, 12, 20));
    expect(new Set(part(picture, 'plants').map(({ tagName }) => tagName))).toEqual(new Set(['circle']));
    expect(new Set(part(picture, 'pollenizers').map(({ tagName }) => tagName))).toEqual(new Set(['path']));
    const fillOf = (name: string) =>
      picture.querySelector(`[data-part="${name}"]`)?.getAttribute('fill') ?? '';
    // WCAG 2.2, 1.4.11: 3 to 1 for what carries meaning; by luminance, so in grey too.
    expect(contrast(fillOf('plants'), fillOf('pollenizers'))).toBeGreaterThanOrEqual(3);
    expect(contrast(fillOf('plants'), paperColours.faint)).toBeGreaterThanOrEqual(3);
    expect(textsOf(picture).map(({ text }) => text)).toEqual(expect.arrayContaining(['plant', 'pollenizer']));
    expect(part(drawn(rows(40, 12)).picture, 'key')).toHaveLength(0);
  });
});

describe('where plants would run into one another a corner is enlarged', () => {
  const cornerOf = (asked: PlotAsked, frame = narrow) => {
    const { alt, picture } = drawn(asked, frame);
    const said = /enlarged to its own scale: (\d+) rows? of (\d+) (plant|hill)s?\./.exec(alt);
    return { picture, rows: Number(said?.[1]), inRow: Number(said?.[2]) };
  };

  test.each([
    ['300 plants in the pane', rows(60, 30, 75), narrow],
    ['3,000 in a sheet', rows(300, 60, 750), wide],
    ['5,000 in the pane', rows(500, 60, 1250), narrow],
    ['3,000 in a sheet, beside the plot', rows(60, 300, 10), wide],
    ['hills in the pane', hills, narrow],
    [
      'hills in one row',
      { ...hills, cells: { ...hills.cells, length: 72, width: 6 }, pollenizers: 4 },
      narrow,
    ],
    ['beds in the pane', beds, narrow],
  ])('%s: as many marks in it as it says, to its own scale, and parted', (_, asked, frame) => {
    const { picture, rows: inPlot, inRow } = cornerOf(asked, frame);
    const perHill = asked.layout === 'hills' ? 3 : 1;
    const marks = [...part(picture, 'corner-plants'), ...part(picture, 'corner-pollenizers')];
    expect(marks).toHaveLength(inPlot * inRow * perHill);
    expect(leastGap(picture, 'corner-')).toBeGreaterThan(1);
    const edge = edgeOf(picture, 'corner-plot');
    expect(edge.width).toBeGreaterThan(0);
    for (const mark of marks) {
      const { x, y } = middleOf(mark);
      expect(x).toBeGreaterThan(edge.x);
      expect(x).toBeLessThan(edge.x + edge.width);
      expect(y).toBeGreaterThan(edge.y);
      expect(y).toBeLessThan(edge.y + edge.height);
    }
    // The same ground twice, outlined on the whole: as far as hundredths of a pixel tell, of the same shape.
    const outlines = [...picture.querySelectorAll('[data-part="corner"]')].map((one) =>
      ['width', 'height'].map((name) => Number(one.getAttribute(name))),
    );
    expect(outlines).toHaveLength(2);
    const [[wideOne = 0, highOne = 0] = [], [wideTwo = 0, highTwo = 0] = []] = outlines;
    expect(Math.abs((wideOne * highTwo) / highOne - wideTwo)).toBeLessThan(0.2);
  });

  test('pollenizers stand there as on the whole: every fourth plant, from the third on', () => {
    const { picture } = cornerOf(rows(300, 60, 750));
    const [first, second] = part(picture, 'corner-pollenizers').map((mark) => middleOf(mark).x);
    const plants = part(picture, 'corner-plants').map((mark) => middleOf(mark).x);
    const apart = (plants[1] ?? 0) - (plants[0] ?? 0);
    expect((first ?? 0) - (plants[0] ?? 0)).toBeCloseTo(2 * apart, 1);
    expect((second ?? 0) - (first ?? 0)).toBeCloseTo(4 * apart, 1);
  });

  test('its bar is as long as it says: plants are a foot apart', () => {
    const { picture } = cornerOf(rows(300, 60));
    const [one, two] = part(picture, 'corner-plants').map((mark) => middleOf(mark).x);
    const bar = Number(picture.querySelector('[data-part="corner-scale"]')?.getAttribute('width'));
    const said = textsOf(picture).map(({ text }) => text);
    expect(said).toContain('2 ft');
    expect(bar / ((two ?? 0) - (one ?? 0))).toBeCloseTo(2, 1);
  });

  test('a lonely row in a wide plot is in it', () => {
    const { picture, rows: inPlot } = cornerOf({
      ...rows(300, 60),
      cells: { length: 300, width: 60, row_spacing: 50, plant_spacing: 12 },
    });
    expect(inPlot).toBe(1);
    expect(part(picture, 'corner-plants').length).toBeGreaterThan(10);
  });

  test('none where the whole has room: 12 hills of 3 in the pane', () => {
    const { picture } = drawn(
      { ...hills, cells: { ...hills.cells, length: 24, width: 18 }, pollenizers: 9 },
      narrow,
    );
    expect(picture.querySelector('[data-part="corner"]')).toBeNull();
    expect(part(picture, 'plants').length + part(picture, 'pollenizers').length).toBe(36);
    expect(leastGap(picture, '')).toBeGreaterThan(1);
  });
});

describe('measures', () => {
  test.each([
    [5, 'us', '5 ft'],
    [5.5, 'us', '5 ft 6 in'],
    [0.75, 'us', '9 in'],
    // 11.9996 in would be 12 beside a foot.
    [4.99997, 'us', '5 ft'],
    [1000.25, 'us', '1,000 ft 3 in'],
    [1.8, 'metric', '1.8 m'],
    [0.45, 'metric', '45 cm'],
    [12.345, 'metric', '12.35 m'],
  ] as const)('%d %s reads %s (by hand)', (value, units, said) => {
    expect(sayLength(value, units)).toBe(said);
  });

  test.each([
    [60, 'us', 50],
    [12, 'us', 10],
    [4.9, 'us', 2],
    [0.5, 'us', 5 / 12],
    [0.3, 'metric', 0.2],
    [1, 'metric', 1],
  ] as const)('the longest round length up to %d %s', (most, units, round) => {
    expect(roundLength(most, units)).toBeCloseTo(round, 9);
  });

  test.each([
    ['rows', rows(100, 20), ['100 ft', '20 ft', '6 ft', '12 in from plant to plant']],
    ['hills', hills, ['60 ft', '26 ft', '6 ft', '6 ft from hill to hill']],
    ['beds', beds, ['20 m', '6 m', 'bed 1.2 m', 'path 40 cm', '45 cm from plant to plant']],
  ] as const)('%s: each is told once, in the units of the season', (_, asked, wanted) => {
    for (const frame of [wide, narrow]) {
      const texts = textsOf(drawn(asked, frame).picture).map(({ text }) => text);
      expect(texts).toEqual(expect.arrayContaining([...wanted]));
    }
  });

  test('the scale bar is as long as it says', () => {
    const { picture } = drawn(rows(100, 20));
    const bar = picture.querySelector('[data-part="scale"]');
    expect(textsOf(picture).map(({ text }) => text)).toContain('20 ft');
    expect(Number(bar?.getAttribute('width'))).toBeCloseTo((edgeOf(picture).width / 100) * 20, 1);
  });

  test('the same in words and in figures', () => {
    const { alt, rows: figures } = drawn(hills);
    expect(alt).toBe(
      'Invented plot: watermelon. The plot is 60 ft long and 26 ft wide; rows run along its length. ' +
        '120 plants in 40 hills of 3: 4 rows of 10 hills, rows 6 ft apart, hills 6 ft apart in the row. ' +
        '30 of them are pollenizers, spread evenly along the rows (judgement); out of mixed seed they come up anywhere.',
    );
    expect(figures).toEqual(
      expect.arrayContaining([
        ['Hills', '40'],
        ['Between hills', '6 ft'],
        ['Pollenizers', '30'],
      ]),
    );
    expect(drawn(rows(100, 20), wide, { typedPlants: 7 }).alt).toContain('Plants in the sheet says 7');
  });
});

describe('as all pictures', () => {
  test.each([wide, narrow])('nothing lies outside, of $widthPx px', (frame) => {
    for (const asked of [
      rows(3, 6),
      rows(2000, 6, 10),
      rows(6, 500, 2),
      rows(300, 60),
      rows(60, 300),
      hills,
      beds,
    ]) {
      const { picture, widthPx, heightPx } = drawn(asked, frame, { plot: 'W'.repeat(300) });
      for (const box of picture.querySelectorAll('[data-part]:is(rect)')) {
        const { x, y, width, height } = sidesOf(box);
        expect(x + width).toBeLessThan(widthPx);
        expect(y + height).toBeLessThan(heightPx);
      }
      for (const each of textsOf(picture)) {
        expect(each.y).toBeLessThan(heightPx);
        // Of Roboto a letter is about half its size wide; the title of 300 capitals is cut.
        expect(each.x).toBeLessThan(widthPx);
      }
    }
  });

  test.each([
    ['paper', paperColours],
    ['pane', paneColours],
  ])('a name is a text, and only the colours of the %s are used', (_, colours) => {
    const { picture, title, alt, svg } = drawn(hills, { ...wide, colours }, { plot: wickedPlace });
    expect(picture.querySelector('script, style, foreignObject, a, image')).toBeNull();
    expect(title).toContain(wickedPlace);
    expect(alt).toContain(wickedPlace);
    const given = [...Object.values(colours), 'none'];
    for (const each of picture.querySelectorAll('*')) {
      for (const { name, value } of each.attributes) {
        expect(name).not.toMatch(/^(id|class|style|on.*|href|xlink:href|clip-path)$/);
        if (name === 'fill' || name === 'stroke') expect(given).toContain(value);
      }
    }
    expect(drawn(hills, { ...wide, colours }, { plot: wickedPlace }).svg).toBe(svg);
    expect(() => drawn(hills, wide, { plot: 'a bell \u0007 and half a sign \uD800' })).not.toThrow();
  });
});
