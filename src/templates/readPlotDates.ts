/** What the calendar reads of a line of Plots, and what it cannot have of it. */
import { isCellError, type ReadValue } from '../workbook/port';
import type { Line, LinesRead } from '../workbook/readLines';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { cropOfWord } from './sayCrop';

const words = catalogue.calendar;
const plotHeaders = catalogue.sheets.plots.columns;

/** The dates of a plot that its tasks are worked out from; serials, null where there is none. */
export interface PlotDates {
  readonly plot: string;
  /** Its name in the reference; what Plots has where that is no crop. */
  readonly crop: string;
  readonly isTransplant: boolean;
  readonly startUnderCover: number | null;
  readonly inGround: number | null;
  readonly isThinned: boolean;
  readonly mayStayCovered: boolean;
  readonly coverOff: number | null;
  readonly firstPick: number | null;
  readonly lastPick: number | null;
  readonly lastSowing: number | null;
  readonly firstFrost: number | null;
  readonly everyDays: number | null;
}

/** A plot that is not in the calendar, or not with all of its work. */
export interface LeftOut {
  readonly plot: string;
  /** The plot itself, dates that Plots has no result of, or work that frost comes before. */
  readonly kind: 'plot' | 'dates' | 'work';
  /** What it has none of, in few words. */
  readonly lacks: string;
  /** A sentence, or several. */
  readonly why: string;
  /** Nothing of it is dated. */
  readonly isWhole: boolean;
}

/** Nothing of it is dated. */
export const hasNone = (dates: PlotDates): boolean => dateKeys.every((key) => dates[key] === null);

/** Frost comes before the first pick, and no last pick says that it is kept off. */
export const isTaken = ({ firstPick, lastPick, firstFrost }: PlotDates): boolean =>
  firstPick !== null && lastPick === null && firstFrost !== null && firstPick >= firstFrost;

type PlotKey = keyof typeof plotHeaders;

const valueIn = ({ values }: Line, key: PlotKey): ReadValue => values[plotHeaders[key].header] ?? null;
const textIn = (line: Line, key: PlotKey): string => {
  const value = valueIn(line, key);
  return isCellError(value) ? '' : String(value ?? '').trim();
};

/** Which column of Plots each is in: what others hang on comes first. */
const columnsOfDates = {
  inGround: 'setOutOrSow',
  startUnderCover: 'startTransplants',
  firstPick: 'firstPick',
  coverOff: 'coverOff',
  lastPick: 'lastPick',
  lastSowing: 'lastSowing',
} as const satisfies Partial<Record<keyof PlotDates, PlotKey>>;
const dateKeys = Object.keys(columnsOfDates) as (keyof typeof columnsOfDates)[];

/** What is read besides a line of Plots. */
interface Beside {
  readonly units: LinesRead['units'];
  readonly intervals: ReadonlyMap<string, number>;
  readonly firstFrost: number | null;
}

interface PlotRead {
  readonly dates: PlotDates;
  /** With its unit, as it stands above the column; "" where there is none. */
  readonly soil: string;
  readonly leftOut: readonly LeftOut[];
}

/** @param number of the line in Plots, from 1: by it and its crop a plot without a name is known */
export function readPlot(line: Line, number: number, { units, intervals, firstFrost }: Beside): PlotRead {
  const word = textIn(line, 'takenAs');
  const crop = cropOfWord(word);
  const isKnown = crop !== undefined;
  const nameless = isKnown ? words.nameless.ofCrop : words.nameless.noCrop;
  const plot = textIn(line, 'plot') || fill(nameless, { crop: word, line: number });
  const isTransplant = textIn(line, 'start').toLowerCase() === 'transplant';
  const mayStayCovered = textIn(line, 'coverOff') === catalogue.sheets.plots.mayStay;
  const dateIn = (key: keyof typeof columnsOfDates): number | null => {
    const value = isKnown ? valueIn(line, columnsOfDates[key]) : null;
    return typeof value === 'number' ? value : null;
  };
  const dates: PlotDates = {
    plot,
    crop: crop ?? word,
    isTransplant,
    startUnderCover: isTransplant ? dateIn('startUnderCover') : null,
    inGround: dateIn('inGround'),
    // More is sown than is to stand unless both numbers say otherwise.
    isThinned: !(Number(valueIn(line, 'seedToSow')) <= Number(valueIn(line, 'plants'))),
    mayStayCovered,
    coverOff: mayStayCovered ? null : dateIn('coverOff'),
    firstPick: dateIn('firstPick'),
    lastPick: dateIn('lastPick'),
    lastSowing: dateIn('lastSowing'),
    firstFrost,
    everyDays: intervals.get(word) ?? null,
  };
  const soil = soilOf(line, units);
  if (!isKnown) {
    const { noCrop, says } = words.leftOut;
    return { dates, soil, leftOut: [{ plot, kind: 'plot', lacks: noCrop, why: says.noCrop, isWhole: true }] };
  }
  const wanting = dateKeys.filter(
    (key) =>
      dates[key] === null &&
      !(key === 'startUnderCover' && !isTransplant) &&
      !(key === 'coverOff' && mayStayCovered) &&
      !(key === 'lastPick' && isTaken(dates)),
  );
  const [first] = wanting;
  if (first === undefined) return { dates, soil, leftOut: [] };
  const lacks = wanting.map((key) => plotHeaders[columnsOfDates[key]].header).join(', ');
  const why = sayWrong(line, columnsOfDates[first]);
  return { dates, soil, leftOut: [{ plot, kind: 'dates', lacks, why, isWhole: hasNone(dates) }] };
}

function sayWrong(line: Line, key: PlotKey): string {
  const value = valueIn(line, key);
  const said = isCellError(value) ? value.message : null;
  return said ?? fill(words.leftOut.noDates, { header: plotHeaders[key].header });
}

function soilOf(line: Line, units: LinesRead['units']): string {
  const value = valueIn(line, 'soilAtLeast');
  const { header } = plotHeaders.soilAtLeast;
  return typeof value === 'number' ? `${Math.round(value)} ${units[header] ?? ''}`.trim() : '';
}
