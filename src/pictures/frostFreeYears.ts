import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Colours } from './colours';
import { dateAxis, sayDate } from './dateAxis';
import {
  drawSvg,
  lineShape,
  shapes,
  textShape,
  type At,
  type Drawing,
  type Frame,
  type Shape,
} from './drawSvg';
import { titleAt } from './words';

const words = catalogue.pictures.years;

export interface FrostFreeYears {
  readonly place: string;
  /** Whether the fall of a season is in the year after its spring. */
  readonly isSouth: boolean;
  /** One season each, rising. */
  readonly years: readonly DrawnYear[];
  /** Median of the days; null when no season has them. */
  readonly middleDays: number | null;
}

interface DrawnYear {
  /** Of the spring. */
  readonly year: number;
  /** Serials, all moved into one season. */
  readonly lastFrost: number | 'none' | 'void';
  readonly firstFrost: number | 'none' | 'void';
  readonly days: number | 'none' | 'void';
  readonly isMiddle: boolean;
}

const margins = { left: 56, right: 76 };
const heights = { text: 14, mostRow: 18, leastRow: 5, all: 700 };

/** The seasons of a record as bars from the last frost to the first. One season or more has a frost date. */
export function drawFrostFreeYears(data: FrostFreeYears, frame: Frame): Drawing {
  const { years } = data;
  const { colours } = frame;
  const title = titleAt(words.title, data.place);
  const whole = years.flatMap((one) => (typeof one.days === 'number' ? [{ ...one, days: one.days }] : []));
  const isOpen = ({ days }: DrawnYear): boolean => days === 'none';
  const isGap = ({ days }: DrawnYear): boolean => days === 'void';
  const frosts = years
    .flatMap(({ lastFrost, firstFrost }) => [lastFrost, firstFrost])
    .filter((frost) => typeof frost === 'number');
  const rowPx = Math.min(Math.max(Math.floor(heights.all / years.length), heights.leastRow), heights.mostRow);
  const namedEvery = [1, 2, 5, 10, 20, 50].find((every) => every * rowPx >= heights.text) ?? 100;
  const season = ({ year }: { readonly year: number }): string =>
    data.isSouth ? fill(words.season, { spring: year, fall: String(year + 1).slice(-2) }) : String(year);
  const middleWords = years.filter(({ isMiddle }) => isMiddle).length === 1 ? words.middle : words.middleTwo;
  const drawn = drawSvg(frame, {
    title,
    remarks: [
      fill(words.counted, { count: whole.length }),
      ...(data.middleDays === null ? [] : [fill(middleWords, { days: data.middleDays })]),
      ...(years.some(isOpen) ? [words.open] : []),
      ...(years.some(isGap) ? [words.gap] : []),
    ],
    heightPx: rowPx * years.length,
    ...margins,
    dates: dateAxis(frosts, frame.widthPx - margins.left - margins.right),
    yAxis: {
      type: 'category',
      inverse: true,
      data: years.map(season),
      axisTick: { show: false },
      axisLine: { lineStyle: { color: colours.soft } },
      axisLabel: {
        color: colours.quiet,
        interval: (index: number) => (years[index]?.year ?? 0) % namedEvery === 0,
      },
    },
    series: (dates) => [
      shapes((at) =>
        years.flatMap((one, row) => [
          ...drawYear(one, row, { dates, at, rowPx, colours }),
          ...(typeof one.days === 'number' && (one.isMiddle || rowPx >= heights.text)
            ? [
                textShape(
                  fill(words.days, { days: one.days }),
                  [at(dates.max, row)[0] + 6, at(dates.max, row)[1]],
                  { colours, align: 'left', bold: one.isMiddle },
                ),
              ]
            : []),
        ]),
      ),
    ],
  });
  return {
    ...drawn,
    title,
    alt: [
      `${title}.`,
      fill(words.alt, { all: years.length, count: whole.length }),
      ...saySpread(whole, data.middleDays, season),
      ...sayLeftOut(words.openAlt, years.filter(isOpen).map(season)),
      ...sayLeftOut(words.gapAlt, years.filter(isGap).map(season)),
    ].join(' '),
    headers: words.columns,
    rows: years.map((one) => [
      season(one),
      sayFrost(one.lastFrost),
      sayFrost(one.firstFrost),
      typeof one.days === 'number' ? String(one.days) : words[one.days],
    ]),
  };
}

interface Rows {
  readonly dates: { readonly min: number; readonly max: number };
  readonly at: At;
  readonly rowPx: number;
  readonly colours: Colours;
}

function drawYear(one: DrawnYear, row: number, { dates, at, rowPx, colours }: Rows): Shape[] {
  if (one.days === 'void') {
    const style = { stroke: colours.soft, lineWidth: 1, lineDash: [1, 4] };
    return [lineShape(at(dates.min, row), at(dates.max, row), style)];
  }
  const [x, y] = at(typeof one.lastFrost === 'number' ? one.lastFrost : dates.min, row);
  const [end] = at(typeof one.firstFrost === 'number' ? one.firstFrost : dates.max, row);
  const height = Math.max(Math.round(rowPx * 0.7), 3);
  const isOpen = one.days === 'none';
  return [
    {
      type: 'rect',
      shape: { x, y: y - height / 2, width: end - x, height },
      style: isOpen
        ? { fill: 'none', stroke: colours.soft, lineWidth: 1 }
        : { fill: one.isMiddle ? colours.text : colours.soft },
    },
  ];
}

function sayFrost(frost: number | 'none' | 'void'): string {
  return typeof frost === 'number' ? sayDate(frost) : words[frost];
}

function saySpread(
  whole: readonly { readonly year: number; readonly days: number }[],
  middle: number | null,
  season: (one: { readonly year: number }) => string,
): string[] {
  const byDays = [...whole].sort((a, b) => a.days - b.days);
  const [least] = byDays;
  const most = byDays[byDays.length - 1];
  if (least === undefined || most === undefined || middle === null) return [];
  return [
    fill(words.spread, {
      least: least.days,
      leastSeason: season(least),
      middle,
      most: most.days,
      mostSeason: season(most),
    }),
  ];
}

function sayLeftOut(sentence: string, seasons: readonly string[]): string[] {
  return seasons.length === 0 ? [] : [fill(sentence, { seasons: seasons.join(', ') })];
}
