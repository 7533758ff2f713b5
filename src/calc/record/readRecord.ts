import type { Hemisphere } from '../frost/coldSeason';
import { findOtherScaleOfLows } from '../frost/checkScale';
import { freezingF, unitSystems, type UnitSystemName } from '../units/units';
import { findHead, type RecordHead, type Split } from './findHead';
import { findMissing } from './findMissing';
import { hemisphereOfRecord } from './hemisphereOfRecord';
import { findMonthsOfOtherScale, type DegreesOfLine } from './findMonthsOfOtherScale';
import { dateColumns, scaleOfHeader, type Scale } from './recordColumns';
import { collectDoubts, type Doubts, type Measure, type RecordDoubt } from './recordDoubts';
import { readRows, type RecordRow } from './readRows';
import {
  findImpossibleScale,
  findOtherScale,
  hottestOf,
  isImpossible,
  scaleByTemperatures,
  type WarmestOfDay,
} from './scaleOfRecord';
import { settleDays, type RecordDay } from './settleDays';

export interface DailyRecord {
  /** By date, one a day; days that the text has not are not there. */
  readonly days: readonly RecordDay[];
  /** Of the temperatures, whatever was written. */
  readonly units: UnitSystemName;
  /** What told the scale: the person, a header, cells, or the temperatures themselves. */
  readonly unitsBy: 'asked' | 'header' | 'cells' | 'temperatures';
  /** The columns taken; '' for none. */
  readonly headers: Readonly<Record<Measure, string>>;
  /** The station, as the record calls it; '' when it does not say. */
  readonly place: string;
}

export interface RecordRead {
  /** null when something stops it. */
  readonly record: DailyRecord | null;
  readonly doubts: readonly RecordDoubt[];
}

export interface RecordChoices {
  /** In place of what headers and temperatures say. */
  readonly units?: UnitSystemName | undefined;
  /** The last day that can have been measured [whole day number]. */
  readonly today: number;
  readonly hemisphere: Hemisphere;
}

/**
 * A daily record of temperatures out of a text, with all that is doubtful in it.
 *
 * Nothing is guessed: a day or a temperature that cannot be relied on is left out, or left empty, and named by its
 * line; where the whole cannot be relied on, there is no record.
 *
 * @param text as weather services export it: a header line somewhere at the top, then a line a day
 * @param split takes a text apart into cells
 * Source: project convention.
 */
export function readRecord(text: string, split: Split, choices: RecordChoices): RecordRead {
  const doubts = collectDoubts();
  const record = attempt(text.replace(/^\uFEFF/, ''), split, choices, doubts);
  return { record: doubts.isStopped() ? null : record, doubts: doubts.list() };
}

function attempt(text: string, split: Split, choices: RecordChoices, doubts: Doubts): DailyRecord | null {
  if (text.trim() === '') {
    doubts.add({ code: 'nothingThere', line: 1 });
    return null;
  }
  const head = findHead(text, split);
  if (head === null) {
    doubts.add({ code: 'noHeader', line: 1 });
    return null;
  }
  if ('lacking' in head) {
    doubts.add({ code: 'headerLacks', line: head.line, measures: head.lacking });
    return null;
  }
  checkHead(head, doubts);
  const named = scaleNamed(head, doubts);
  const perDegree = named?.perDegree ?? 1;
  if (doubts.isStopped()) return null;
  const told = choices.units ?? named?.units;
  const { rows, units: written } = readRows(head, split, perDegree, told, choices.today, doubts);
  if (doubts.isStopped()) return null;
  const warmest = rows.flatMap(warmestOf);
  if (warmest.length === 0) {
    doubts.add({ code: 'noDays', line: head.line });
    return null;
  }
  const units = written ?? scaleByTemperatures(warmest);
  if (units === null) {
    const { line, degrees } = hottestOf(warmest);
    doubts.add({ code: 'scaleUnknown', line, hottest: degrees, days: warmest.length });
    return null;
  }
  const other =
    choices.units === undefined
      ? (findOtherScale(warmest, units) ??
        findMonthsOfOtherScale('high', degreesOf(rows, 'high'), units) ??
        findMonthsOfOtherScale('low', degreesOf(rows, 'low'), units))
      : findImpossibleScale(warmest, units);
  if (other !== undefined) {
    doubts.add(other);
    return null;
  }
  const days = settleDays(
    rows.map((row) => withoutImpossible(row, units, doubts)),
    doubts,
  );
  if (doubts.isStopped()) return null;
  // The functions would refuse it, also where the person chose the units.
  const lows = days.flatMap(({ low }) => low ?? []);
  const otherLows = findOtherScaleOfLows(lows, units === 'us' ? freezingF : 0, unitSystems[units]);
  if (otherLows !== null) {
    doubts.add({ code: 'otherLows', line: head.line, units, warmest: otherLows.warmest });
    return null;
  }
  const warmHalf = hemisphereOfRecord(days);
  if (warmHalf !== null && warmHalf !== choices.hemisphere) {
    doubts.add({ code: 'otherHemisphere', line: head.line, hemisphere: warmHalf });
    return null;
  }
  const unitsBy = (): DailyRecord['unitsBy'] => {
    if (choices.units !== undefined) return 'asked';
    if (named !== null) return 'header';
    return written === undefined ? 'temperatures' : 'cells';
  };
  const lines = new Map(rows.map(({ day, line }) => [day, line]));
  findMissing(days, units, choices.hemisphere, (day) => lines.get(day) ?? head.line, doubts);
  if (head.columns.high.length > 0 && days.every(({ high }) => high === null)) {
    doubts.add({ code: 'noHigh', line: head.line });
  }
  return { days, units, unitsBy: unitsBy(), headers: headersTaken(head), place: placeOf(head, split) };
}

const measures = ['date', 'high', 'low'] as const;

function checkHead({ line, headers, columns }: RecordHead, doubts: Doubts): void {
  if (line > 1) doubts.add({ code: 'linesBefore', line, count: line - 1 });
  for (const measure of measures) {
    const [first, second] = columns[measure];
    if (second !== undefined) {
      const header = headers[first ?? 0] ?? '';
      doubts.add({ code: 'columnTwice', line, measure, header, otherHeader: headers[second] ?? '' });
    }
  }
  if (columns.low.length === 0) doubts.add({ code: 'columnMissing', line, measure: 'low' });
  else if (columns.high.length === 0) doubts.add({ code: 'highMissing', line });
}

/** The scale that the headers of the temperatures name; null when none does. */
function scaleNamed({ line, headers, columns }: RecordHead, doubts: Doubts): Scale | null {
  const named = [...columns.high, ...columns.low].flatMap((index) => {
    const header = headers[index] ?? '';
    const scale = scaleOfHeader(header);
    return scale === null ? [] : [{ header, ...scale }];
  });
  const [first, second] = named;
  if (first === undefined) return null;
  const isOther =
    second !== undefined && (second.units !== first.units || second.perDegree !== first.perDegree);
  if (isOther) {
    doubts.add({ code: 'scalesDiffer', line, header: first.header, otherHeader: second.header });
  }
  return first;
}

function warmestOf({ line, day, high, low }: RecordRow): WarmestOfDay[] {
  const degrees = Math.max(high ?? -Infinity, low ?? -Infinity);
  return degrees === -Infinity ? [] : [{ line, day, degrees }];
}

function degreesOf(rows: readonly RecordRow[], measure: 'high' | 'low'): DegreesOfLine[] {
  return rows.flatMap(({ line, day, [measure]: degrees }) =>
    degrees === null ? [] : [{ line, day, degrees }],
  );
}

function withoutImpossible(row: RecordRow, units: UnitSystemName, doubts: Doubts): RecordRow {
  const checked = (measure: 'high' | 'low'): number | null => {
    const degrees = row[measure];
    if (degrees === null || !isImpossible(degrees, units, measure)) return degrees;
    doubts.add({ code: 'impossible', line: row.line, measure, degrees, units });
    return null;
  };
  return { ...row, high: checked('high'), low: checked('low') };
}

function headersTaken({ headers, columns }: RecordHead): DailyRecord['headers'] {
  const taken = (indices: readonly number[]): string =>
    indices.map((index) => headers[index] ?? '').join(', ');
  return { date: taken(dateColumns(columns)), high: taken(columns.high), low: taken(columns.low) };
}

function placeOf({ columns, body, separator }: RecordHead, split: Split): string {
  const index = columns.place[0] ?? columns.station[0];
  if (index === undefined) return '';
  // One line is enough: the stations were found to be one.
  const first = split(body.slice(0, mostOfLine), separator)[0];
  return (first?.cells[index] ?? '').trim();
}

const mostOfLine = 4000;
