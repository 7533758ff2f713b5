/** Invented series of a weather record, and how a picture is taken apart again: in tests that have a page. */
import type { FrostChance } from '../../src/pictures/frostChance';
import type { FrostFreeYears } from '../../src/pictures/frostFreeYears';
import type { HeatPicture } from '../../src/pictures/heatPaths';
import { paperColours } from '../../src/pictures/colours';

export const serial = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000 + 25569;

/** What a grower may well type, and what nobody should be able to do with it. */
export const wickedPlace = `R&D "plots" <script>alert('x')</script> ]]> --> &amp; Łódź`;

export const wide = { widthPx: 640, colours: paperColours };
/** A pane of 320 less its padding. */
export const narrow = { widthPx: 288, colours: paperColours };

/** Four springs and falls; 10 May and 28 September carry the risk. */
export const chance: FrostChance = {
  place: 'Invented garden',
  risk: 0.1,
  spring: {
    seasons: 4,
    voids: 1,
    steps: [
      { date: serial('2026-04-19'), chance: 1 },
      { date: serial('2026-04-20'), chance: 0.75 },
      { date: serial('2026-05-02'), chance: 0.25 },
      { date: serial('2026-05-12'), chance: 0 },
    ],
    riskDate: serial('2026-05-10'),
  },
  fall: {
    seasons: 4,
    voids: 0,
    steps: [
      { date: serial('2026-09-26'), chance: 0 },
      { date: serial('2026-09-27'), chance: 0.25 },
      { date: serial('2026-10-11'), chance: 1 },
    ],
    riskDate: serial('2026-09-26'),
  },
};

/** Of every six seasons the third lacks days and the fifth a frost in fall. */
export function yearsOf(count: number): FrostFreeYears {
  const years = Array.from({ length: count }, (_, i) => {
    const lastFrost = serial('2026-05-01') + ((i * 7) % 20);
    const firstFrost = serial('2026-10-01') + ((i * 11) % 30);
    const season = { year: 1925 + i, lastFrost, firstFrost, days: firstFrost - lastFrost, isMiddle: i === 1 };
    if (i % 6 === 2) return { ...season, firstFrost: 'void' as const, days: 'void' as const };
    if (i % 6 === 4) return { ...season, firstFrost: 'none' as const, days: 'none' as const };
    return season;
  });
  return { place: 'Invented garden', isSouth: false, years, middleDays: years[1]?.days as number };
}

/** 20 degree days every day: 300 are reached on the 15th day; the third sowing is cut off after ten. */
export const heat: HeatPicture = {
  place: 'Invented garden',
  target: 300,
  base: 50,
  degrees: 'F',
  paths: [
    [serial('2025-05-01'), 15],
    [serial('2025-05-11'), 15],
    [serial('2025-05-21'), 10],
  ].map(([sowing = 0, days = 0]) => ({
    sowing,
    sums: Array.from({ length: days }, (_, i) => (i + 1) * 20),
    reached: days === 15 ? sowing + 14 : null,
  })),
};

export function parse(svg: string): Element {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
  const [fault] = parsed.getElementsByTagName('parsererror');
  if (fault !== undefined) throw new Error(fault.textContent ?? '');
  return parsed.documentElement;
}

export interface SeenText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly isBold: boolean;
  readonly fill: string;
}

export function textsOf(svg: Element): SeenText[] {
  return [...svg.querySelectorAll('text')].map((each) => {
    const [, x, y] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(each.getAttribute('transform') ?? '') ?? [];
    return {
      text: each.textContent ?? '',
      x: Number(x ?? each.getAttribute('x')),
      y: Number(y ?? each.getAttribute('y')),
      isBold: (each.getAttribute('style') ?? '').includes('bold'),
      fill: each.getAttribute('fill') ?? '',
    };
  });
}

/** Where a date lies, by the labels under the picture alone: of the months May 1 and Sep 1, or those given. */
export function dateScale(
  svg: Element,
  labels: readonly (readonly [string, string])[],
): (iso: string) => number {
  const texts = textsOf(svg);
  const [[first, firstX], [last, lastX]] = labels.map(([text, iso]) => {
    const found = texts.filter((each) => each.text === text).at(-1);
    if (found === undefined) throw new Error(`no label ${text}`);
    return [serial(iso), found.x] as const;
  }) as unknown as [readonly [number, number], readonly [number, number]];
  return (iso) => firstX + ((serial(iso) - first) / (last - first)) * (lastX - firstX);
}

export interface Corners {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: string;
}

/** Rectangles, as the library writes them: a path of four straight sides. */
export function barsOf(svg: Element): Corners[] {
  return [...svg.querySelectorAll('path')].flatMap((path) => {
    const sides = /^M([-\d.]+) ([-\d.]+)l([-\d.]+) 0l0 ([-\d.]+)l-[\d.]+ 0Z$/.exec(
      path.getAttribute('d') ?? '',
    );
    if (sides === null) return [];
    const [x = 0, y = 0, width = 0, height = 0] = sides.slice(1).map(Number);
    return [{ x, y, width, height, fill: path.getAttribute('fill') ?? '' }];
  });
}

export interface Line {
  readonly points: readonly (readonly [number, number])[];
  readonly width: number;
  readonly dashes: string;
  readonly stroke: string;
}

/** Straight and broken lines that are drawn, not filled. */
export function linesOf(svg: Element): Line[] {
  return [...svg.querySelectorAll('path')].flatMap((path) => {
    const d = path.getAttribute('d') ?? '';
    if (path.getAttribute('fill') !== 'none' || !/^M[-\d. ]+(L[-\d. ]+)+$/.test(d)) return [];
    const points = d
      .slice(1)
      .split('L')
      .map((pair) => pair.trim().split(' ').map(Number) as unknown as readonly [number, number]);
    return [
      {
        points,
        width: Number(path.getAttribute('stroke-width') ?? 1),
        dashes: path.getAttribute('stroke-dasharray') ?? '',
        stroke: path.getAttribute('stroke') ?? '',
      },
    ];
  });
}
