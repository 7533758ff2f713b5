import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Colours } from './colours';
import { dateAxis, sayDate } from './dateAxis';
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
import { sayPercent, titleAt } from './words';

const words = catalogue.pictures.chance;

export interface FrostSide {
  /** Seasons that count. */
  readonly seasons: number;
  /** Left out for missing days. */
  readonly voids: number;
  /**
   * Dates, as serials of one year and rising, on which the chance is another than the day before, and the day before
   * them; none when it never froze or no season counts.
   */
  readonly steps: readonly { readonly date: number; readonly chance: number }[];
  /** The serial of the risk asked for; null when frost comes in fewer seasons. */
  readonly riskDate: number | null;
}

export interface FrostChance {
  readonly place: string;
  /** Share. */
  readonly risk: number;
  readonly spring: FrostSide;
  readonly fall: FrostSide;
}

type Season = 'spring' | 'fall';
const seasons: readonly Season[] = ['spring', 'fall'];
const margins = { left: 48, right: 48 };

/**
 * The chance that frost still comes after a date of spring, and has come before a date of fall, with the dates of the
 * risk asked for. One of the two had frost.
 */
export function drawFrostChance(data: FrostChance, frame: Frame): Drawing {
  const { colours } = frame;
  const title = titleAt(words.title, data.place);
  const counted = [
    fill(words.counted, { springs: data.spring.seasons, falls: data.fall.seasons }),
    ...(data.spring.voids + data.fall.voids === 0
      ? []
      : [fill(words.left, { springs: data.spring.voids, falls: data.fall.voids })]),
  ];
  const isPlain = (season: Season): boolean => data[season].riskDate !== null;
  const drawn = drawSvg(frame, {
    title,
    remarks: [...counted, ...seasons.filter((season) => !isPlain(season)).map((season) => say(data, season))],
    heightPx: 240,
    ...margins,
    dates: dateAxis(
      seasons.flatMap((season) => data[season].steps.map(({ date }) => date)),
      frame.widthPx - margins.left - margins.right,
    ),
    yAxis: numberAxis(colours, { max: 1, ticks: [0, 0.2, 0.4, 0.6, 0.8, 1], say: sayPercent }),
    series: (dates) => [
      ...seasons.map((season) => ({
        type: 'line' as const,
        step: 'end' as const,
        data: pointsOf(data, season, dates),
        showSymbol: false,
        silent: true,
        lineStyle: { color: colours.text, width: 2, type: season === 'spring' ? ('solid' as const) : [6, 3] },
        areaStyle: { color: colours.faint, opacity: 0.6 },
      })),
      shapes((at) => [
        ...markRisk(data.risk, dates, at, colours),
        ...seasons.flatMap((season) => [
          ...nameCurve(data, season, at, colours),
          ...markDate(data, season, at, colours),
        ]),
      ]),
    ],
  });
  return {
    ...drawn,
    title,
    alt: [`${title}.`, ...counted, ...seasons.map((season) => say(data, season))].join(' '),
    headers: words.columns,
    rows: seasons.flatMap((season) =>
      data[season].steps.map(({ date, chance }) => [words.rows[season], sayDate(date), sayPercent(chance)]),
    ),
  };
}

/** Before the first step of spring, and after the last of fall, the chance stays what it is there. */
function pointsOf(data: FrostChance, season: Season, dates: { min: number; max: number }): number[][] {
  const { steps } = data[season];
  const points = steps.map(({ date, chance }) => [date, chance]);
  const end = steps[season === 'spring' ? 0 : steps.length - 1];
  if (end === undefined) return points;
  return season === 'spring' ? [[dates.min, end.chance], ...points] : [...points, [dates.max, end.chance]];
}

function markRisk(
  risk: number,
  { min, max }: { min: number; max: number },
  at: At,
  colours: Colours,
): Shape[] {
  const [x, y] = at(max, risk);
  return [
    lineShape(at(min, risk), [x, y], { stroke: colours.text, lineWidth: 1, lineDash: [2, 3] }),
    textShape(sayPercent(risk), [x + 6, y], { colours, align: 'left', bold: true }),
  ];
}

/** A name is as high as this. */
const textPx = 14;
/** How far above the line of the risk the dates stand: at two heights, because summer is short in a narrow picture. */
const datePx = { spring: 12, fall: 29 };
/** Of the curve's own height; the second where the date of the risk stands at the first. */
const nameHeights = { spring: [0.8, 0.92], fall: [0.64, 0.92] };

/** Beside the curve, on the side of summer. */
function nameCurve(data: FrostChance, season: Season, at: At, colours: Colours): Shape[] {
  const isSpring = season === 'spring';
  const { steps } = data[season];
  const most = Math.max(...steps.map(({ chance }) => chance));
  const pxUp = (share: number): number => -at(0, share)[1];
  const taken = [pxUp(data.risk), pxUp(data.risk) + datePx[season]];
  const heights = nameHeights[season].map((part) => part * most);
  const isFree = (height: number): boolean => taken.every((px) => Math.abs(pxUp(height) - px) >= textPx);
  const height = heights.find(isFree) ?? heights[0] ?? most;
  const step = steps.find(({ chance }) => (isSpring ? chance < height : chance > height));
  if (step === undefined) return [];
  const [x, y] = at(step.date, height);
  return [
    textShape(words[season], [x + (isSpring ? 8 : -8), y], {
      colours,
      align: isSpring ? 'left' : 'right',
    }),
  ];
}

function markDate(data: FrostChance, season: Season, at: At, colours: Colours): Shape[] {
  const { riskDate } = data[season];
  if (riskDate === null) return [];
  const isSpring = season === 'spring';
  const [x, y] = at(riskDate, data.risk);
  return [
    lineShape([x, y], at(riskDate, 0), { stroke: colours.text, lineWidth: 2 }),
    { type: 'circle', shape: { cx: x, cy: y, r: 4 }, style: { fill: colours.text } },
    textShape(sayDate(riskDate), [x + (isSpring ? 8 : -8), y - datePx[season]], {
      colours,
      align: isSpring ? 'left' : 'right',
      bold: true,
    }),
  ];
}

function say(data: FrostChance, season: Season): string {
  const { steps, riskDate, seasons: count } = data[season];
  const [first] = steps;
  const last = steps[steps.length - 1];
  if (first === undefined || last === undefined) {
    return count === 0 ? words[`${season}Void`] : words[`${season}None`];
  }
  return fill(riskDate === null ? words[`${season}TooMuch`] : words[`${season}Alt`], {
    share: sayPercent(Math.max(first.chance, last.chance)),
    risk: sayPercent(data.risk),
    at: riskDate === null ? '' : sayDate(riskDate),
    first: sayDate(first.date),
    last: sayDate(last.date),
  });
}
