/** A plot from above, to scale: every plant a mark, pollenizers told by shape, size and lightness. */
import { catalogue } from '../texts/catalogue';
import type { Drawing, Frame } from './drawSvg';
import { breakLines, sizes, textPx } from './lettering';
import { bedsOf, betweenRows, nearestPlants, placesOf, plantsOf, type PlotPicture } from './plotPicture';
import { roundLength, sayLength } from './sayLength';
import { listMeasures, measuresAcross, measuresAlong, sayPlants, saySize, titleOf } from './sayPlot';
import { box, diamond, disc, group, px, span, textAt, type Point } from './svgParts';

const words = catalogue.plotPictures;

/** Of the plot. */
const mostHeightPx = 320;
/** For what stands around it. */
const room = { above: 26, below: 24, scale: 26, key: 20, left: 30, right: 22 };
/** Of a plant's mark, by the share that it takes of the way to the next. */
const marks = { share: 0.38, leastPx: 0.6, mostPx: 6, inKeyPx: 4 };
/** Of a pollenizer's. */
const larger = 1.5;
const leastPollenizerPx = 1.2;

export function drawPlot(plot: PlotPicture, frame: Frame): Drawing {
  const { widthPx, colours } = frame;
  const title = titleOf(plot);
  const sentences = sayPlants(plot);
  const heading = [
    ...breakLines(title, sizes.title, widthPx).map((text) => ({ text, size: sizes.title, bold: true })),
    ...breakLines(sentences.join(' '), sizes.text, widthPx).map((text) => ({ text })),
  ];
  const top = sizes.edge + heading.length * sizes.line + room.above;
  const paper = layPaper(plot, top, widthPx);
  const underPlot = paper.bottom + room.below + room.scale;
  const hasKey = plot.spread !== null && plot.pollenizers > 0;
  const heightPx = Math.ceil(underPlot + (hasKey ? room.key : 0) + sizes.edge);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}">`,
    box([0, 0], [widthPx, heightPx], `fill="${colours.ground}"`),
    ...heading.map(({ text, ...look }, i) =>
      textAt(text, [sizes.edge, sizes.edge + 12 + i * sizes.line], {
        fill: i === 0 ? colours.text : colours.quiet,
        ...look,
      }),
    ),
    ...drawGround(plot, paper, frame),
    ...(plot.spread === null ? drawRows(plot, paper, frame) : drawPlants(plot, plot.spread, paper, frame)),
    ...drawMeasures(plot, paper, frame),
    ...drawScale(plot, paper, frame),
    ...(hasKey ? drawKey([paper.left, underPlot + 8], frame) : []),
    '</svg>',
  ].join('');
  return {
    svg,
    widthPx,
    heightPx,
    title,
    alt: [`${title}.`, saySize(plot), ...sentences].join(' '),
    headers: words.columns,
    rows: listMeasures(plot),
  };
}

/** The plot on the picture, in pixels. */
interface Paper {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Pixels of a foot or metre. */
  readonly scale: number;
  at(along: number, across: number): Point;
}

function layPaper(plot: PlotPicture, top: number, widthPx: number): Paper {
  const { left } = room;
  const labels = measuresAcross(plot).map(({ label }) => textPx(label));
  const across = widthPx - left - room.right - Math.max(0, ...labels);
  const scale = Math.min(across / plot.length, mostHeightPx / plot.width);
  return {
    left,
    top,
    right: left + plot.length * scale,
    bottom: top + plot.width * scale,
    scale,
    at: (along, toSide) => [left + along * scale, top + toSide * scale],
  };
}

/** The plot's edge, its beds and its hills. */
function drawGround(plot: PlotPicture, paper: Paper, { colours }: Frame): string[] {
  const { left, right, top, bottom, scale, at } = paper;
  const width = right - left;
  const hill = plot.layout.kind === 'hills' ? plot.layout.hill : null;
  return [
    group(
      'beds',
      `fill="${colours.faint}"`,
      bedsOf(plot).map(({ from, to }) => box(at(0, from), [width, (to - from) * scale], '')),
    ),
    group(
      'hills',
      `fill="${colours.faint}"`,
      hill === null
        ? []
        : placesOf(plot).map(({ along, across }) => disc(at(along, across), hill.radius * scale)),
    ),
    box([left, top], [width, bottom - top], `data-part="plot" fill="none" stroke="${colours.soft}"`),
  ];
}

function drawPlants(
  plot: PlotPicture,
  spread: readonly number[],
  { scale, at }: Paper,
  { colours }: Frame,
): string[] {
  const radius = Math.min(Math.max(nearestPlants(plot) * scale * marks.share, marks.leastPx), marks.mostPx);
  const pollenizers = new Set(spread);
  const points = plantsOf(plot).map(({ along, across }) => at(along, across));
  return [
    group(
      'plants',
      `fill="${colours.soft}"`,
      points.filter((_, i) => !pollenizers.has(i)).map((point) => disc(point, radius)),
    ),
    group(
      'pollenizers',
      `fill="${colours.text}"`,
      points
        .filter((_, i) => pollenizers.has(i))
        .map((point) => diamond(point, Math.max(radius * larger, leastPollenizerPx))),
    ),
  ];
}

/** A line for each row, as long as the ground that its plants own. */
function drawRows(plot: PlotPicture, { scale, at }: Paper, { colours }: Frame): string[] {
  const widthPx = Math.min(Math.max(betweenRows(plot) * scale * marks.share, marks.leastPx), marks.mostPx);
  const lines = plot.rows.map(({ across, along: { first, apart, count } }) => {
    const [[x1, y], [x2]] = [at(first - apart / 2, across), at(first + (count - 0.5) * apart, across)];
    return `<path d="M${px(x1)} ${px(y)}H${px(x2)}"/>`;
  });
  return [group('rows', `fill="none" stroke="${colours.soft}" stroke-width="${px(widthPx)}"`, lines)];
}

/** Length and width, and the distances that repeat, each once. */
function drawMeasures(
  plot: PlotPicture,
  { left, right, top, bottom, at }: Paper,
  { colours }: Frame,
): string[] {
  const look = { fill: colours.text };
  const length = sayLength(plot.length, plot.units);
  const fits = textPx(length) < right - left;
  let free = -Infinity;
  return [
    span([left, top - 7], [right, top - 7], colours.quiet),
    textAt(length, [fits ? (left + right) / 2 : left, top - 12], {
      ...look,
      anchor: fits ? 'middle' : 'start',
    }),
    span([left - 7, top], [left - 7, bottom], colours.quiet),
    textAt(sayLength(plot.width, plot.units), [left - 13, (top + bottom) / 2], {
      ...look,
      anchor: 'middle',
      upward: true,
    }),
    ...measuresAlong(plot).flatMap(({ from, to, label }) => {
      const [[x1], [x2]] = [at(from, 0), at(to, 0)];
      return [
        span([x1, bottom + 8], [x2, bottom + 8], colours.quiet),
        textAt(label, [x2 + 6, bottom + 12], look),
      ];
    }),
    ...measuresAcross(plot).flatMap(({ from, to, label }) => {
      const [[, y1], [, y2]] = [at(0, from), at(0, to)];
      const y = Math.max((y1 + y2) / 2 + 4, free);
      free = y + sizes.line;
      return [span([right + 8, y1], [right + 8, y2], colours.quiet), textAt(label, [right + 15, y], look)];
    }),
  ];
}

/** About a fifth of the picture. */
function drawScale(plot: PlotPicture, { left, bottom, scale }: Paper, { colours, widthPx }: Frame): string[] {
  const length = roundLength(widthPx / 5 / scale, plot.units);
  const y = bottom + room.below + 8;
  return [
    box([left, y], [length * scale, 5], `data-part="scale" fill="${colours.text}"`),
    textAt(sayLength(length, plot.units), [left + length * scale + 6, y + 7], { fill: colours.text }),
  ];
}

function drawKey([x, y]: Point, { colours }: Frame): string[] {
  const size = marks.inKeyPx;
  const second = x + 30 + textPx(words.plant);
  return [
    group('key', `fill="${colours.soft}"`, [disc([x + size, y - size], size)]),
    textAt(words.plant, [x + 14, y], { fill: colours.text }),
    group('key', `fill="${colours.text}"`, [diamond([second, y - size], size * larger)]),
    textAt(words.pollenizer, [second + 12, y], { fill: colours.text }),
  ];
}
