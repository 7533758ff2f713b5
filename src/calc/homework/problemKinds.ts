/**
 * What a homework asks: functions whose sums are done by hand, with arguments as they are met in the trade and none that
 * the function refuses. Source: judgement. Long because it is one table.
 */
import { dayOfDate, sameDateIn } from '../dates/calendar';
import type { UnitSystemName } from '../units/units';

/** From, up to, in steps of. */
type Range = readonly [from: number, to: number, step: number];

/** Draws numbers; each of a range as likely. */
export interface Draw {
  /** From, from + step, … up to the end. */
  number(...range: Range): number;
  /** As number, of what is told in another unit in each system. */
  measure(us: Range, metric: Range): number;
  /** Land is told in it. */
  readonly landUnit: 'acre' | 'hectare';
  /** A whole day number, of the year that all problems are in where no other is said. */
  day(fromMonth: number, fromDate: number, span: number, inYear?: number): number;
}

/** An argument, and how it is said: a number as it comes, a day as a date, a share in per cent, a word, or a list. */
export type Argument =
  | { readonly as: 'number' | 'share' | 'day'; readonly value: number }
  | { readonly as: 'word'; readonly value: string }
  | { readonly as: 'numbers' | 'days'; readonly value: readonly number[] };

export interface ProblemKind {
  readonly id: string;
  /** Its function is defined in bushels: no problem in metric units. */
  readonly isUsOnly?: boolean;
  readonly draw: (draw: Draw) => readonly Argument[];
}

const year = 2027;

/** @param below a whole number that is drawn, 0 or more and below that */
export function drawBy(below: (limit: number) => number, units: UnitSystemName): Draw {
  const number = (from: number, to: number, step: number): number => {
    const count = Math.floor((to - from) / step + 1e-9) + 1;
    // Divided by a whole number, so that 0.3 is not 0.30000000000000004.
    const perUnit = Math.round(1 / step);
    const at = below(count);
    return perUnit > 1 ? (Math.round(from * perUnit) + at) / perUnit : from + at * step;
  };
  return {
    number,
    measure: (us, metric) => number(...(units === 'us' ? us : metric)),
    landUnit: units === 'us' ? 'acre' : 'hectare',
    day: (month, date, span, inYear = year) => dayOfDate(inYear, month, date) + below(span),
  };
}

const figure = (value: number): Argument => ({ as: 'number', value });
const figures = (value: readonly number[]): Argument => ({ as: 'numbers', value });
const share = (value: number): Argument => ({ as: 'share', value });
const day = (value: number): Argument => ({ as: 'day', value });
const days = (value: readonly number[]): Argument => ({ as: 'days', value });
const word = (value: string): Argument => ({ as: 'word', value });
const oneOf = (draw: Draw, words: readonly string[]): Argument =>
  word(words[draw.number(0, words.length - 1, 1)] ?? '');

const rowSpacing = (d: Draw): Argument => figure(d.measure([4, 8, 0.5], [1.2, 2.4, 0.1]));
const plantSpacing = (d: Draw): Argument => figure(d.measure([12, 48, 6], [30, 120, 15]));
const plotLength = (d: Draw): Argument => figure(d.measure([50, 150, 5], [15, 45, 1]));
const plotWidth = (d: Draw): Argument => figure(d.measure([24, 70, 2], [8, 20, 1]));
const rowLength = (d: Draw): Argument => figure(d.measure([150, 900, 10], [50, 300, 5]));
const plants = (d: Draw): Argument => figure(d.number(60, 600, 10));
const germination = (d: Draw): Argument => share(d.number(0.7, 0.95, 0.01));
const fieldEmergence = (d: Draw): Argument => share(d.number(0.7, 0.95, 0.05));
const area = (d: Draw): Argument => figure(d.measure([5000, 90_000, 500], [500, 9000, 50]));
const lastFrost = (d: Draw): Argument => day(d.day(4, 15, 40));
const firstFrost = (d: Draw): Argument => day(d.day(9, 15, 40));
const setOut = (d: Draw): Argument => day(d.day(5, 10, 30));
const maturity = (d: Draw): Argument => figure(d.number(48, 110, 1));
const firstPick = (d: Draw): Argument => day(d.day(7, 1, 30));

/** Frosts of the five years before, one a year. */
const frostsFrom = (d: Draw, month: number, date: number): number[] =>
  [5, 4, 3, 2, 1].map((before) => d.day(month, date, 35, year - before));
/** With five years each is the frost of one of the years, so that nothing is drawn between two dates. */
const frostRisk = (d: Draw): Argument => share(d.number(0.25, 0.75, 0.25));

/** A few days of the record that a problem tells. */
const times = (count: number, draw: () => number): Argument => figures(Array.from({ length: count }, draw));
const warmHigh = (d: Draw): number => d.measure([72, 95, 1], [22, 35, 1]);
const warmLow = (d: Draw): number => d.measure([50, 68, 1], [11, 20, 1]);
/** The same in every problem: the dates of the record are not told one by one. */
const heatStart = dayOfDate(year, 5, 10);

/** Crops of which the reference has what is asked. */
const crops = ['slicing cucumber', 'summer squash', 'pumpkin', 'muskmelon', 'watermelon'];
const cucumber = word('cucumber');

/** In the order of the families. */
export const problemKinds: readonly ProblemKind[] = [
  { id: 'PLANTS.DENSITY', draw: (d) => [rowSpacing(d), plantSpacing(d)] },
  {
    id: 'PLANTS.INROWS',
    draw: (d) => [
      figure(d.measure([50, 200, 5], [15, 60, 1])),
      figure(d.measure([20, 70, 2], [6, 20, 1])),
      rowSpacing(d),
      plantSpacing(d),
    ],
  },
  {
    id: 'PLANTS.INHILLS',
    draw: (d) => [
      plotLength(d),
      figure(d.measure([24, 80, 2], [8, 24, 1])),
      figure(d.measure([4, 8, 1], [1.2, 2.4, 0.2])),
      figure(d.number(2, 3, 1)),
    ],
  },
  {
    id: 'PLANTS.INBEDS',
    draw: (d) => [
      plotLength(d),
      plotWidth(d),
      figure(d.measure([3, 5, 0.5], [0.9, 1.5, 0.1])),
      figure(d.measure([1, 3, 0.5], [0.3, 0.9, 0.1])),
      figure(2),
      plantSpacing(d),
    ],
  },
  {
    id: 'PLANTS.INAREA',
    draw: (d) => [figure(d.measure([500, 9000, 50], [50, 900, 5])), rowSpacing(d), plantSpacing(d)],
  },
  {
    id: 'PLANTS.FORYIELD',
    draw: (d) => [
      figure(d.measure([150, 900, 10], [70, 400, 5])),
      figure(d.measure([2, 9, 0.5], [1, 4, 0.25])),
    ],
  },
  { id: 'AREA.FORPLANTS', draw: (d) => [plants(d), rowSpacing(d), plantSpacing(d)] },
  {
    id: 'AREA.FROM',
    draw: (d) => [figure(d.number(0.25, 6, 0.25)), word(d.landUnit)],
  },
  { id: 'ROW.FORPLANTS', draw: (d) => [plants(d), plantSpacing(d)] },
  { id: 'ROW.INAREA', draw: (d) => [area(d), rowSpacing(d)] },
  {
    id: 'ROW.FORDEMAND',
    draw: (d) => [
      figure(d.measure([20, 200, 5], [10, 90, 5])),
      figure(d.measure([80, 300, 10], [120, 450, 10])),
      figure(d.number(3, 8, 1)),
    ],
  },
  {
    id: 'STAND.COUNT',
    draw: (d) => [
      figure(d.number(40, 70, 1)),
      figure(d.measure([75, 150, 5], [25, 45, 1])),
      figure(d.measure([12, 12, 1], [30, 30, 1])),
    ],
  },
  { id: 'SEED.NEEDED', draw: (d) => [plants(d), germination(d), fieldEmergence(d)] },
  {
    id: 'SEED.PERHILL',
    draw: (d) => [
      figure(d.number(1, 3, 1)),
      germination(d),
      fieldEmergence(d),
      share(d.number(0.8, 0.95, 0.05)),
    ],
  },
  { id: 'SEED.CHANCE', draw: (d) => [figure(d.number(4, 6, 1)), figure(d.number(2, 3, 1)), germination(d)] },
  {
    id: 'SEED.WEIGHT',
    draw: (d) => [figure(d.number(150, 3000, 50)), figure(d.measure([200, 1200, 50], [8, 40, 1]))],
  },
  { id: 'SEED.TEST', draw: (d) => [figure(d.number(140, 195, 1)), figure(200)] },
  { id: 'SEED.STORAGELEFT', draw: (d) => [cucumber, figure(d.number(2023, 2026, 1)), figure(year)] },
  {
    id: 'TRAY.CELLS',
    draw: (d) => [plants(d), germination(d), figure(1), share(d.number(0.02, 0.15, 0.01))],
  },
  { id: 'TRAY.COUNT', draw: (d) => [figure(d.number(80, 900, 1)), figure(d.number(50, 72, 22))] },
  {
    id: 'TRAY.MIX',
    draw: (d) => [figure(d.number(72, 720, 72)), figure(d.measure([2.5, 6, 0.1], [40, 100, 5]))],
  },
  { id: 'DATE.SETOUT', draw: (d) => [lastFrost(d), figure(d.number(7, 21, 1))] },
  { id: 'DATE.STARTTRANSPLANTS', draw: (d) => [setOut(d), figure(d.number(3, 5, 1))] },
  { id: 'DATE.HARDENOFF', draw: (d) => [setOut(d), figure(d.number(5, 12, 1))] },
  { id: 'DATE.FIRSTSOWING', draw: (d) => [lastFrost(d), figure(d.number(5, 20, 1))] },
  {
    id: 'DATE.LASTSOWING',
    draw: (d) => [
      firstFrost(d),
      maturity(d),
      figure(d.number(10, 30, 1)),
      figure(14),
      figure(d.number(5, 13, 1)),
    ],
  },
  {
    id: 'DATE.FIRSTPICK',
    draw: (d) => [setOut(d), maturity(d), word('transplant'), word('seed'), figure(d.number(8, 14, 1))],
  },
  { id: 'DATE.LASTPICK', draw: (d) => [firstPick(d), figure(d.number(14, 40, 1))] },
  { id: 'DATE.COVEROFF', draw: (d) => [firstPick(d), cucumber, figure(d.number(8, 10, 1))] },
  { id: 'DATE.AFTERSPRAY', draw: (d) => [firstPick(d), figure(d.number(1, 14, 1))] },
  { id: 'DATE.AFTERMANURE', draw: (d) => [day(d.day(3, 15, 40)), oneOf(d, ['yes', 'no'])] },
  { id: 'SEASON.DAYS', draw: (d) => [lastFrost(d), firstFrost(d)] },
  { id: 'SEASON.SPARE', draw: (d) => [lastFrost(d), firstFrost(d), maturity(d)] },
  { id: 'FROST.SPRINGDATE', draw: (d) => [days(frostsFrom(d, 4, 10)), frostRisk(d), figure(year)] },
  { id: 'FROST.FALLDATE', draw: (d) => [days(frostsFrom(d, 9, 20)), frostRisk(d), figure(year)] },
  {
    id: 'FROST.CHANCE',
    draw: (d) => {
      const frosts = frostsFrom(d, 9, 20);
      const asked = frosts[d.number(0, frosts.length - 1, 1)] ?? NaN;
      return [day(sameDateIn(year, asked)), days(frosts), word('fall')];
    },
  },
  {
    id: 'HEAT.DAY',
    draw: (d) => [figure(warmHigh(d)), figure(warmLow(d)), figure(d.measure([50, 60, 5], [10, 15, 5]))],
  },
  {
    id: 'HEAT.SUM',
    draw: (d) => [
      times(3, () => d.measure([58, 90, 1], [15, 32, 1])),
      times(3, () => d.measure([36, 56, 1], [2, 14, 1])),
      figure(d.measure([50, 50, 1], [10, 10, 1])),
    ],
  },
  {
    id: 'HEAT.DATE',
    // Four such days bring 44 degree days of Fahrenheit, or 26 of Celsius, at the least.
    draw: (d) => [
      days([0, 1, 2, 3].map((after) => heatStart + after)),
      times(4, () => warmHigh(d)),
      times(4, () => warmLow(d)),
      day(heatStart),
      figure(d.measure([20, 40, 5], [12, 26, 2])),
      figure(d.measure([50, 50, 1], [10, 10, 1])),
    ],
  },
  { id: 'EMERGENCE.DAYS', draw: (d) => [cucumber, figure(d.measure([60, 67, 1], [15.5, 19.5, 0.5]))] },
  {
    id: 'EMERGENCE.PERCENT',
    draw: (d) => [word('muskmelon'), figure(d.measure([69, 76, 1], [20.5, 24.5, 0.5]))],
  },
  {
    id: 'FLOWER.FEMALESHARE',
    draw: (d) => [share(d.number(0.05, 0.2, 0.01)), share(d.number(0.1, 0.5, 0.05))],
  },
  { id: 'FLOWER.MALESPERFEMALE', draw: (d) => [share(d.number(0.04, 0.3, 0.01))] },
  { id: 'FLOWER.SHARE', draw: (d) => [figure(1), figure(d.number(2, 9, 1))] },
  {
    id: 'FLOWER.POLLENIZERS',
    draw: (d) => [plants(d), share(d.number(0.2, 0.35, 0.01)), share(d.number(0.05, 0.3, 0.05))],
  },
  { id: 'FLOWER.NOPOLLENIZER', draw: (d) => [figure(d.number(2, 6, 1)), share(d.number(0.1, 0.3, 0.01))] },
  {
    id: 'FLOWER.GROUPSIZE',
    draw: (d) => [share(d.number(0.05, 0.3, 0.01)), share(d.number(0.85, 0.99, 0.01))],
  },
  { id: 'FLOWER.HIVES', draw: (d) => [area(d), figure(d.measure([1, 2.5, 0.5], [2, 6, 0.5]))] },
  {
    id: 'HARVEST.YIELD',
    draw: (d) => [
      rowLength(d),
      figure(d.measure([60, 250, 5], [90, 370, 5])),
      share(d.number(0.75, 0.95, 0.01)),
    ],
  },
  {
    id: 'HARVEST.PICKS',
    draw: (d) => [day(d.day(7, 1, 20)), day(d.day(8, 1, 25)), figure(d.number(2, 4, 1))],
  },
  {
    id: 'HARVEST.FORECAST',
    draw: (d) => [figure(d.number(1.5, 6, 0.5)), plants(d), figure(d.measure([0.4, 12, 0.2], [0.2, 5, 0.1]))],
  },
  { id: 'HARVEST.BUSHELS', isUsOnly: true, draw: (d) => [figure(d.number(100, 2000, 20)), cucumber] },
  { id: 'PICKLE.JARS', draw: (d) => [figure(d.number(21, 150, 1)), word('quart')] },
  { id: 'PICKLE.POUNDS', draw: (d) => [figure(d.number(8, 60, 1)), word('quart')] },
  { id: 'BUDGET.RETURN', draw: (d) => [figure(d.number(800, 4000, 10)), figure(d.number(500, 3000, 10))] },
  {
    id: 'BUDGET.BREAKEVENPRICE',
    draw: (d) => [figure(d.number(400, 3000, 10)), figure(d.number(150, 1500, 10))],
  },
  {
    id: 'BUDGET.BREAKEVENYIELD',
    draw: (d) => [
      figure(d.number(300, 2500, 10)),
      figure(d.number(6, 12, 0.25)),
      figure(d.number(1, 4, 0.25)),
    ],
  },
  {
    id: 'BUDGET.PICKHOURS',
    draw: (d) => [rowLength(d), figure(d.number(6, 20, 1)), figure(d.measure([100, 250, 10], [30, 80, 5]))],
  },
  {
    id: 'SUPPLY.HILLSOIL',
    draw: (d) => [
      figure(d.number(10, 60, 1)),
      figure(d.measure([24, 24, 1], [60, 60, 1])),
      figure(d.measure([4, 8, 1], [10, 20, 1])),
      word('mound'),
    ],
  },
  {
    id: 'SUPPLY.FERTILIZER',
    draw: (d) => [area(d), figure(d.measure([30, 80, 5], [35, 90, 5])), share(d.number(0.05, 0.15, 0.05))],
  },
  { id: 'SUPPLY.WATER', draw: (d) => [area(d), figure(d.measure([0.5, 2, 0.25], [10, 50, 5]))] },
  {
    id: 'SUPPLY.WATERNEED',
    draw: (d) => [
      figure(d.measure([0.15, 0.3, 0.01], [4, 8, 0.5])),
      figure(d.number(0.6, 1, 0.05)),
      figure(7),
      figure(d.measure([0.1, 0.5, 0.1], [3, 12, 1])),
    ],
  },
  {
    id: 'SUPPLY.DRIPRUNTIME',
    draw: (d) => [
      figure(d.measure([0.5, 1.5, 0.25], [10, 30, 5])),
      figure(d.measure([24, 36, 6], [60, 90, 10])),
      figure(d.measure([20, 40, 5], [2, 5, 0.5])),
    ],
  },
  {
    id: 'SUPPLY.COVER',
    draw: (d) => [
      figure(d.number(3, 12, 1)),
      figure(d.measure([50, 200, 5], [15, 60, 1])),
      figure(d.measure([2, 4, 0.5], [0.6, 1.2, 0.1])),
    ],
  },
  {
    id: 'SUPPLY.TRELLIS',
    draw: (d) => [
      figure(d.measure([50, 200, 5], [15, 60, 1])),
      figure(d.measure([6, 10, 1], [1.8, 3, 0.2])),
      figure(d.number(2, 8, 1)),
    ],
  },
  { id: 'BEETLE.THRESHOLD', draw: (d) => [oneOf(d, crops), oneOf(d, ['yes', 'no'])] },
  { id: 'ROTATION.YEARS', draw: (d) => [figure(year), figure(d.number(2019, 2025, 1))] },
  {
    id: 'CROP.VALUE',
    draw: (d) => [oneOf(d, crops), word('days to maturity'), oneOf(d, ['low', 'high'])],
  },
];

/** A seed test is another matter than the seed to sow. */
const familyOf = ({ id }: ProblemKind): string => (id === 'SEED.TEST' ? id : (id.split('.')[0] ?? id));

/** The kinds that belong together, by what stands before the point of their function's name. */
export const problemFamilies: readonly (readonly ProblemKind[])[] = [
  ...new Set(problemKinds.map(familyOf)),
].map((family) => problemKinds.filter((kind) => familyOf(kind) === family));
