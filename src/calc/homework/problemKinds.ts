/**
 * What a homework asks: functions whose sums are done by hand, with arguments as they are met in the trade and none that
 * the function refuses. Source: judgement. Long because it is one table.
 */
import { dayOfDate } from '../dates/calendar';

/** Draws numbers; each of a range as likely. */
export interface Draw {
  /** From, from + step, … up to the end. */
  number(from: number, to: number, step: number): number;
  /** A whole day number of the year that all problems are in. */
  day(fromMonth: number, fromDate: number, span: number): number;
}

/** An argument, and how it is said: a number as it comes, a day as a date, a share in per cent, a word. */
export type Argument =
  | { readonly as: 'number' | 'share' | 'day'; readonly value: number }
  | { readonly as: 'word'; readonly value: string };

export interface ProblemKind {
  readonly id: string;
  readonly draw: (draw: Draw) => readonly Argument[];
}

const year = 2027;

/** @param below a whole number that is drawn, 0 or more and below that */
export function drawBy(below: (limit: number) => number): Draw {
  return {
    number(from, to, step) {
      const count = Math.floor((to - from) / step + 1e-9) + 1;
      // Divided by a whole number, so that 0.3 is not 0.30000000000000004.
      const perUnit = Math.round(1 / step);
      const at = below(count);
      return perUnit > 1 ? (Math.round(from * perUnit) + at) / perUnit : from + at * step;
    },
    day: (month, date, span) => dayOfDate(year, month, date) + below(span),
  };
}

const figure = (value: number): Argument => ({ as: 'number', value });
const share = (value: number): Argument => ({ as: 'share', value });
const day = (value: number): Argument => ({ as: 'day', value });
const word = (value: string): Argument => ({ as: 'word', value });

const rowSpacing = (draw: Draw): Argument => figure(draw.number(4, 8, 0.5));
const plantSpacing = (draw: Draw): Argument => figure(draw.number(12, 48, 6));
const plants = (draw: Draw): Argument => figure(draw.number(60, 600, 10));
const germination = (draw: Draw): Argument => share(draw.number(0.7, 0.95, 0.01));
const area = (draw: Draw): Argument => figure(draw.number(5000, 90_000, 500));
const lastFrost = (draw: Draw): Argument => day(draw.day(4, 15, 40));
const firstFrost = (draw: Draw): Argument => day(draw.day(9, 15, 40));
const setOut = (draw: Draw): Argument => day(draw.day(5, 10, 30));
const maturity = (draw: Draw): Argument => figure(draw.number(48, 110, 1));

/** In the order of the families. */
export const problemKinds: readonly ProblemKind[] = [
  { id: 'PLANTS.DENSITY', draw: (d) => [rowSpacing(d), plantSpacing(d)] },
  {
    id: 'PLANTS.INROWS',
    draw: (d) => [figure(d.number(50, 200, 5)), figure(d.number(20, 70, 2)), rowSpacing(d), plantSpacing(d)],
  },
  {
    id: 'PLANTS.INHILLS',
    draw: (d) => [
      figure(d.number(50, 150, 5)),
      figure(d.number(24, 80, 2)),
      figure(d.number(4, 8, 1)),
      figure(d.number(2, 3, 1)),
    ],
  },
  {
    id: 'PLANTS.INBEDS',
    draw: (d) => [
      figure(d.number(50, 150, 5)),
      figure(d.number(24, 70, 2)),
      figure(d.number(3, 5, 0.5)),
      figure(d.number(1, 3, 0.5)),
      figure(2),
      plantSpacing(d),
    ],
  },
  {
    id: 'PLANTS.INAREA',
    draw: (d) => [figure(d.number(500, 9000, 50)), rowSpacing(d), plantSpacing(d)],
  },
  {
    id: 'PLANTS.FORYIELD',
    draw: (d) => [figure(d.number(150, 900, 10)), figure(d.number(2, 9, 0.5))],
  },
  { id: 'AREA.FORPLANTS', draw: (d) => [plants(d), rowSpacing(d), plantSpacing(d)] },
  { id: 'AREA.FROM', draw: (d) => [figure(d.number(0.25, 6, 0.25)), word('acre')] },
  { id: 'ROW.FORPLANTS', draw: (d) => [plants(d), plantSpacing(d)] },
  { id: 'ROW.INAREA', draw: (d) => [area(d), rowSpacing(d)] },
  {
    id: 'ROW.FORDEMAND',
    draw: (d) => [figure(d.number(20, 200, 5)), figure(d.number(80, 300, 10)), figure(d.number(3, 8, 1))],
  },
  {
    id: 'STAND.COUNT',
    draw: (d) => [figure(d.number(40, 70, 1)), figure(d.number(75, 150, 5)), figure(12)],
  },
  { id: 'SEED.NEEDED', draw: (d) => [plants(d), germination(d), share(d.number(0.7, 0.95, 0.05))] },
  { id: 'SEED.CHANCE', draw: (d) => [figure(d.number(4, 6, 1)), figure(d.number(2, 3, 1)), germination(d)] },
  { id: 'SEED.WEIGHT', draw: (d) => [figure(d.number(150, 3000, 50)), figure(d.number(200, 1200, 50))] },
  { id: 'SEED.TEST', draw: (d) => [figure(d.number(140, 195, 1)), figure(200)] },
  {
    id: 'TRAY.CELLS',
    draw: (d) => [plants(d), germination(d), figure(1), share(d.number(0.02, 0.15, 0.01))],
  },
  { id: 'TRAY.COUNT', draw: (d) => [figure(d.number(80, 900, 1)), figure(d.number(50, 72, 22))] },
  { id: 'TRAY.MIX', draw: (d) => [figure(d.number(72, 720, 72)), figure(d.number(2.5, 6, 0.1))] },
  { id: 'DATE.SETOUT', draw: (d) => [lastFrost(d), figure(d.number(7, 21, 1))] },
  { id: 'DATE.STARTTRANSPLANTS', draw: (d) => [setOut(d), figure(d.number(3, 5, 1))] },
  { id: 'DATE.HARDENOFF', draw: (d) => [setOut(d), figure(d.number(5, 12, 1))] },
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
  { id: 'DATE.LASTPICK', draw: (d) => [day(d.day(7, 1, 30)), figure(d.number(14, 40, 1))] },
  { id: 'SEASON.DAYS', draw: (d) => [lastFrost(d), firstFrost(d)] },
  { id: 'SEASON.SPARE', draw: (d) => [lastFrost(d), firstFrost(d), maturity(d)] },
  {
    id: 'HEAT.DAY',
    draw: (d) => [figure(d.number(72, 95, 1)), figure(d.number(50, 68, 1)), figure(d.number(50, 60, 5))],
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
  { id: 'FLOWER.HIVES', draw: (d) => [area(d), figure(d.number(1, 2.5, 0.5))] },
  {
    id: 'HARVEST.YIELD',
    draw: (d) => [
      figure(d.number(150, 900, 10)),
      figure(d.number(60, 250, 5)),
      share(d.number(0.75, 0.95, 0.01)),
    ],
  },
  {
    id: 'HARVEST.PICKS',
    draw: (d) => [day(d.day(7, 1, 20)), day(d.day(8, 1, 25)), figure(d.number(2, 4, 1))],
  },
  {
    id: 'HARVEST.FORECAST',
    draw: (d) => [figure(d.number(1.5, 6, 0.5)), plants(d), figure(d.number(0.4, 12, 0.2))],
  },
  { id: 'PICKLE.JARS', draw: (d) => [figure(d.number(21, 150, 1)), word('quart')] },
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
    draw: (d) => [figure(d.number(150, 900, 10)), figure(d.number(6, 20, 1)), figure(d.number(100, 250, 10))],
  },
  {
    id: 'SUPPLY.HILLSOIL',
    draw: (d) => [figure(d.number(10, 60, 1)), figure(24), figure(d.number(4, 8, 1)), word('mound')],
  },
  {
    id: 'SUPPLY.FERTILIZER',
    draw: (d) => [area(d), figure(d.number(30, 80, 5)), share(d.number(0.05, 0.15, 0.05))],
  },
  { id: 'SUPPLY.WATER', draw: (d) => [area(d), figure(d.number(0.5, 2, 0.25))] },
  {
    id: 'SUPPLY.WATERNEED',
    draw: (d) => [
      figure(d.number(0.15, 0.3, 0.01)),
      figure(d.number(0.6, 1, 0.05)),
      figure(7),
      figure(d.number(0.1, 0.5, 0.1)),
    ],
  },
  {
    id: 'SUPPLY.COVER',
    draw: (d) => [figure(d.number(3, 12, 1)), figure(d.number(50, 200, 5)), figure(d.number(2, 4, 0.5))],
  },
  {
    id: 'SUPPLY.TRELLIS',
    draw: (d) => [figure(d.number(50, 200, 5)), figure(d.number(6, 10, 1)), figure(d.number(2, 8, 1))],
  },
  { id: 'ROTATION.YEARS', draw: (d) => [figure(2027), figure(d.number(2019, 2025, 1))] },
];
