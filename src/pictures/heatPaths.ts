import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Colours } from './colours';
import { dateAxis, sayDate, yearOf } from './dateAxis';
import {
  drawSvg,
  lineShape,
  numberAxis,
  shapes,
  textShape,
  type At,
  type Drawing,
  type Frame,
  type Shape,
} from './drawSvg';
import { textPx } from './lettering';
import { sayNumber, titleAt } from './words';

const words = catalogue.pictures.heat;

export interface HeatPicture {
  readonly place: string;
  /** Degree days to the first pick. */
  readonly target: number;
  /** In degrees of the record, and their sign, such as F. */
  readonly base: number;
  readonly degrees: string;
  /** One or more, rising. */
  readonly paths: readonly DrawnPath[];
}

interface DrawnPath {
  /** Serial. */
  readonly sowing: number;
  /** Heat since the sowing at the end of each day, its own the first. */
  readonly sums: readonly number[];
  /** Serial of the first pick; null where the record ends or lacks a day before. */
  readonly reached: number | null;
}

const margins = { left: 56, right: 20 };
const plotPx = 240;
const flagPx = 17;
/** More lines than these nobody tells apart: judgement. */
const mostDrawn = 12;
/** One after another, so that neighbours differ without a colour. */
const dashes = ['solid' as const, [7, 3], [2, 3]];

/** How heat adds up from each sowing to its first pick, which a flag names. The figures have every sowing. */
export function drawHeatPaths(data: HeatPicture, frame: Frame): Drawing {
  const { target } = data;
  const paths = spreadEvenly(data.paths, mostDrawn);
  const { colours } = frame;
  const title = titleAt(words.title, data.place);
  const all = data.paths.length;
  const remarks = [
    fill(words.remark, {
      target: sayNumber(target),
      base: sayNumber(data.base),
      degrees: data.degrees,
      year: yearOf(paths[0]?.sowing ?? 0),
    }),
    ...(paths.length === all ? [] : [fill(words.thinned, { count: paths.length, all })]),
  ];
  const widthPx = frame.widthPx - margins.left - margins.right;
  const dates = dateAxis(
    paths.flatMap((path) => [path.sowing, endOf(path)]),
    widthPx,
  );
  const across = widthPx / (dates.max - dates.min);
  const flags = placeFlags(paths.map((path) => ({ x: endOf(path) * across, px: textPx(sayPath(path)) })));
  const flagsPx = (Math.max(...flags) + 1) * flagPx + 8;
  // The flags stand above the line of the target, on the same scale.
  const top = target * (1 + flagsPx / plotPx);
  const drawn = drawSvg(frame, {
    title,
    remarks,
    heightPx: plotPx + flagsPx,
    ...margins,
    dates,
    yAxis: numberAxis(colours, { max: top, ticks: ticksTo(target), say: sayNumber }),
    series: () => [
      ...paths.map((path, i) => ({
        type: 'line' as const,
        data: path.sums.map((sum, day) => [path.sowing + day, sum]),
        showSymbol: false,
        silent: true,
        lineStyle: { color: colours.text, width: 2, type: dashes[i % dashes.length] ?? 'solid' },
      })),
      shapes((at) => [
        lineShape(at(dates.min, target), at(dates.max, target), {
          stroke: colours.text,
          lineWidth: 1,
          lineDash: [2, 3],
        }),
        ...paths.flatMap((path, i) => raiseFlag(path, flags[i] ?? 0, target, at, colours)),
      ]),
    ],
  });
  return {
    ...drawn,
    title,
    alt: [
      `${title}.`,
      ...remarks,
      fill(words.alt, {
        count: all,
        reached: data.paths.filter(({ reached }) => reached !== null).length,
        target: sayNumber(target),
      }),
      ...paths.map(sayWhole),
    ].join(' '),
    headers: words.columns,
    rows: data.paths.map((path) => [
      sayDate(path.sowing),
      path.reached === null ? words.notReached : sayDate(path.reached),
      String(daysOf(path)),
      sayNumber(path.sums[path.sums.length - 1] ?? 0),
    ]),
  };
}

/** Not more than `most`, the first and the last among them. */
function spreadEvenly<One>(all: readonly One[], most: number): readonly One[] {
  if (all.length <= most) return all;
  const step = (all.length - 1) / (most - 1);
  const chosen = new Set(Array.from({ length: most }, (_, i) => Math.round(i * step)));
  return all.filter((_, i) => chosen.has(i));
}

/** The day that its line ends on. */
function endOf(path: DrawnPath): number {
  return path.sowing + daysOf(path);
}

/** From the sowing to the day that its line ends on. */
function daysOf({ sums }: DrawnPath): number {
  return Math.max(sums.length - 1, 0);
}

/**
 * On which line above the target each flag stands, from 0. Its text ends at the flag's pole, so a flag goes above the
 * one before it where it would cover that one's pole.
 */
function placeFlags(flags: readonly { readonly x: number; readonly px: number }[]): number[] {
  const lines: number[] = [];
  flags.forEach(({ x, px }, i) => {
    const before = flags[i - 1];
    lines.push(before === undefined || x - px > before.x ? 0 : (lines[i - 1] ?? 0) + 1);
  });
  return lines;
}

function raiseFlag(path: DrawnPath, line: number, target: number, at: At, colours: Colours): Shape[] {
  const { text } = colours;
  const [x, y] = at(endOf(path), path.sums[path.sums.length - 1] ?? 0);
  const flagY = at(0, target)[1] - (line + 1) * flagPx;
  const circle = { type: 'circle', shape: { cx: x, cy: y, r: 4 } };
  return [
    lineShape([x, y], [x, flagY - 6], { stroke: text, lineWidth: 1 }),
    // Hollow where the target is not reached.
    path.reached === null
      ? { ...circle, style: { fill: 'none', stroke: text, lineWidth: 2 } }
      : { ...circle, style: { fill: text } },
    textShape(sayPath(path), [x - 5, flagY], { colours, align: 'right' }),
  ];
}

/** Some round numbers below the target, and the target. */
function ticksTo(target: number): number[] {
  const tenth = 10 ** Math.floor(Math.log10(target / 5));
  const step = [1, 2, 5, 10].map((times) => times * tenth).find((each) => each * 6 >= target) ?? target;
  const round = Array.from({ length: Math.floor(target / step) + 1 }, (_, i) => i * step);
  return [...round.filter((each) => each <= target - step / 2), target];
}

function sayPath({ sowing, reached }: DrawnPath): string {
  return reached === null
    ? fill(words.open, { sowing: sayDate(sowing) })
    : fill(words.path, { sowing: sayDate(sowing), pick: sayDate(reached) });
}

function sayWhole(path: DrawnPath): string {
  const { sowing, sums, reached } = path;
  const days = daysOf(path);
  if (reached !== null) {
    return fill(words.pathAlt, { sowing: sayDate(sowing), pick: sayDate(reached), days });
  }
  const heat = sums[sums.length - 1];
  if (heat === undefined) return fill(words.openAtOnce, { sowing: sayDate(sowing) });
  return fill(words.openAlt, { sowing: sayDate(sowing), heat: sayNumber(heat), end: sayDate(endOf(path)) });
}
