/** A plot from above, to scale: every plant a mark, pollenizers told by shape, size and lightness. */
import { catalogue } from '../texts/catalogue';
import type { Drawing, Frame } from './drawSvg';
import { layPlot, room, type Laid } from './layPlot';
import { breakLines, sizes, textPx } from './lettering';
import {
  bedsOf,
  betweenRows,
  isOn,
  nearestPlants,
  placesOf,
  plantsOf,
  type Ground,
  type PlotPicture,
} from './plotPicture';
import { roundLength, sayLength } from './sayLength';
import { listMeasures, measuresAcross, measuresAlong, sayPlants, saySize, titleOf } from './sayPlot';
import { box, diamond, disc, group, px, span, textAt, type Point } from './svgParts';

const words = catalogue.plotPictures;

/** Of a plant's mark, by the share of the way to the next: two pollenizers side by side part. */
const marks = { share: 0.3, leastPx: 0.6, mostPx: 6, inKeyPx: 4 };
/** A pollenizer's. */
const larger = 1.5;

export function drawPlot(plot: PlotPicture, frame: Frame): Drawing {
  const { widthPx, colours } = frame;
  const title = titleOf(plot);
  const laid = layPlot(plot, widthPx);
  const sentences = sayPlants(plot, laid.corner?.ground ?? null);
  const heading = [
    ...breakLines(title, sizes.title, widthPx).map((text) => ({ text, size: sizes.title, bold: true })),
    ...breakLines(sentences.join(' '), sizes.text, widthPx).map((text) => ({ text })),
  ];
  const top = sizes.edge + heading.length * sizes.line + room.above;
  const whole = paperOf(laid.whole, top, '');
  const corner = laid.corner === null ? null : paperOf(laid.corner, top, 'corner-');
  const underPlot = Math.max(whole.bottom + room.below, corner?.bottom ?? 0) + room.scale;
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
    ...drawGround(plot, whole, frame),
    ...(plot.spread === null ? drawRows(plot, whole, frame) : drawPlants(plot, plot.spread, whole, frame)),
    ...(corner === null ? [] : drawCorner(plot, whole, corner, frame)),
    ...drawMeasures(plot, whole, frame),
    ...drawScale(plot, whole, room.below, frame),
    ...(hasKey ? drawKey([whole.left, underPlot + 8], frame) : []),
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

/** Ground on the picture, in pixels. */
interface Paper {
  readonly ground: Ground;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Pixels of a foot or metre. */
  readonly scale: number;
  /** Before the name of what is drawn there. */
  readonly part: string;
  at(along: number, across: number): Point;
}

function paperOf({ ground, scale, left, down }: Laid, under: number, part: string): Paper {
  const { from, to } = ground;
  const top = under + down;
  return {
    ground,
    left,
    top,
    right: left + (to.along - from.along) * scale,
    bottom: top + (to.across - from.across) * scale,
    scale,
    part,
    at: (along, across) => [left + (along - from.along) * scale, top + (across - from.across) * scale],
  };
}

/** The edge, the beds and the hills. */
function drawGround(plot: PlotPicture, paper: Paper, { colours }: Frame): string[] {
  const { ground, left, right, top, bottom, scale, part, at } = paper;
  const { from, to } = ground;
  const hill = plot.layout.kind === 'hills' ? plot.layout.hill : null;
  const beds = bedsOf(plot)
    .map((bed) => ({ from: Math.max(bed.from, from.across), to: Math.min(bed.to, to.across) }))
    .filter((bed) => bed.from < bed.to);
  const places = hill === null ? [] : placesOf(plot).filter((place) => isOn(ground, place));
  return [
    group(
      `${part}beds`,
      `fill="${colours.faint}"`,
      beds.map((bed) => box(at(from.along, bed.from), [right - left, (bed.to - bed.from) * scale], '')),
    ),
    group(
      `${part}hills`,
      `fill="${colours.faint}"`,
      places.map(({ along, across }) => disc(at(along, across), (hill?.radius ?? 0) * scale)),
    ),
    box(
      [left, top],
      [right - left, bottom - top],
      `data-part="${part}plot" fill="none" stroke="${colours.soft}"`,
    ),
  ];
}

function drawPlants(
  plot: PlotPicture,
  spread: readonly number[],
  { ground, scale, part, at }: Paper,
  { colours }: Frame,
): string[] {
  const radius = Math.min(Math.max(nearestPlants(plot) * scale * marks.share, marks.leastPx), marks.mostPx);
  const pollenizers = new Set(spread);
  const plants = plantsOf(plot)
    .map((spot, i) => ({ spot, isPollenizer: pollenizers.has(i) }))
    .filter(({ spot }) => isOn(ground, spot))
    .map(({ spot: { along, across }, isPollenizer }) => ({ point: at(along, across), isPollenizer }));
  return [
    group(
      `${part}plants`,
      `fill="${colours.soft}"`,
      plants.filter(({ isPollenizer }) => !isPollenizer).map(({ point }) => disc(point, radius)),
    ),
    group(
      `${part}pollenizers`,
      `fill="${colours.text}"`,
      plants.filter(({ isPollenizer }) => isPollenizer).map(({ point }) => diamond(point, radius * larger)),
    ),
  ];
}

/** The corner to its own scale, and its edge on the whole. */
function drawCorner(plot: PlotPicture, whole: Paper, corner: Paper, frame: Frame): string[] {
  const { from, to } = corner.ground;
  const [[x1, y1], [x2, y2]] = [whole.at(from.along, from.across), whole.at(to.along, to.across)];
  const look = `data-part="corner" fill="none" stroke="${frame.colours.text}"`;
  return [
    ...drawGround(plot, corner, frame),
    ...drawPlants(plot, plot.spread ?? [], corner, frame),
    box([corner.left, corner.top], [corner.right - corner.left, corner.bottom - corner.top], look),
    box([x1, y1], [x2 - x1, y2 - y1], look),
    ...drawScale(plot, corner, 0, frame),
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
function drawScale(
  plot: PlotPicture,
  { left, bottom, scale, part }: Paper,
  below: number,
  { colours, widthPx }: Frame,
): string[] {
  const length = roundLength(widthPx / 5 / scale, plot.units);
  const y = bottom + below + 8;
  return [
    box([left, y], [length * scale, 5], `data-part="${part}scale" fill="${colours.text}"`),
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
