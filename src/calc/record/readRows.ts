import { dayOfWritten, firstDayOfSheets, orderOf, readDay, type WrittenDay } from './readDay';
import type { RecordHead, Split } from './findHead';
import { dateColumns } from './recordColumns';
import type { Doubts } from './recordDoubts';
import { readTemperature } from './readTemperature';
import type { UnitSystemName } from '../units/units';

/** A line of a record that says a day; temperatures in degrees, null where there is none. */
export interface RecordRow {
  readonly line: number;
  readonly day: number;
  readonly high: number | null;
  readonly low: number | null;
}

export interface RecordRows {
  readonly rows: readonly RecordRow[];
  /** The scale that is named, or that cells name; undefined when nothing does. */
  readonly units: UnitSystemName | undefined;
}

interface DatedCells {
  readonly line: number;
  readonly cells: readonly string[];
  readonly given: string;
  readonly written: WrittenDay;
}

/** No place has been measured for longer: 273 years. */
const mostLines = 100_000;

/**
 * The rows under a header, in the order of the text. Lines that say no day are left out, cells that say no temperature
 * left empty; each is added to the doubts.
 *
 * @param perDegree 10 for tenths of degrees
 * @param named the scale that the person or a header names; undefined when neither does
 * @param today the last day that can have been measured [whole day number]
 */
export function readRows(
  head: RecordHead,
  split: Split,
  perDegree: 1 | 10,
  named: UnitSystemName | undefined,
  today: number,
  doubts: Doubts,
): RecordRows {
  const { headers, columns } = head;
  const at = (index: number | undefined, cells: readonly string[]): string =>
    index === undefined ? '' : (cells[index] ?? '').trim();
  const [highAt] = columns.high;
  const [lowAt] = columns.low;
  const dateAt = dateColumns(columns);
  const none: RecordRows = { rows: [], units: named };

  const lines = split(head.body, head.separator).map((one) => ({ ...one, line: one.line + head.line }));
  const open = lines.find(({ isQuoteOpen }) => isQuoteOpen);
  if (open !== undefined) doubts.add({ code: 'openQuote', line: open.line });
  if (lines.length > mostLines) {
    doubts.add({ code: 'tooManyLines', line: head.line, count: lines.length, most: mostLines });
  }
  if (doubts.isStopped()) return none;

  const fits = (cells: readonly string[]): boolean =>
    cells.length >= headers.length && cells.slice(headers.length).every((cell) => cell.trim() === '');
  const even = lines.filter(({ cells }) => fits(cells));
  const ragged = lines.filter(({ cells }) => !fits(cells));
  if (ragged.length > even.length && ragged[0] !== undefined) {
    const { line } = ragged[0];
    doubts.add({ code: 'mostlyRagged', line, count: ragged.length, lines: lines.length });
    return none;
  }
  for (const { line, cells } of ragged) {
    doubts.add({ code: 'raggedLine', line, expected: headers.length, found: cells.length });
  }
  checkStations(
    even.map(({ line, cells }) => ({ line, station: at(columns.station[0], cells) })),
    doubts,
  );

  const dated = even.flatMap(({ line, cells }): DatedCells[] => {
    const parts = dateAt.map((index) => at(index, cells));
    // A year and its day: the day of a whole year has three digits.
    const given = (parts.length === 2 ? [parts[0], parts[1]?.padStart(3, '0')] : parts).join('-');
    const written = readDay(given);
    if (written !== null) return [{ line, cells, given, written }];
    doubts.add({ code: 'notADay', line, given });
    return [];
  });
  const order = findOrder(dated, doubts);
  if (doubts.isStopped()) return none;
  let units = named;
  const rows = dated.flatMap(({ line, cells, given, written }): RecordRow[] => {
    const day = dayOfWritten(written, order);
    if (day === null || day < firstDayOfSheets || day > today) {
      if (day === null) doubts.add({ code: 'noSuchDay', line, given });
      else if (day > today) doubts.add({ code: 'futureDay', line, day });
      else doubts.add({ code: 'tooEarly', line, given });
      return [];
    }
    const degrees = (measure: 'high' | 'low', index: number | undefined): number | null => {
      const text = at(index, cells);
      const read = readTemperature(text, perDegree);
      if (read === undefined) doubts.add({ code: 'notATemperature', line, measure, given: text });
      if (read?.isEstimated === true) doubts.add({ code: 'estimated', line, measure, given: text });
      units ??= read?.units;
      if (units !== undefined && (read?.units ?? units) !== units) {
        doubts.add({ code: 'cellOfOtherScale', line, given: text, units });
      }
      return read?.degrees ?? null;
    };
    return [{ line, day, high: degrees('high', highAt), low: degrees('low', lowAt) }];
  });
  return { rows, units };
}

function checkStations(
  rows: readonly { readonly line: number; readonly station: string }[],
  doubts: Doubts,
): void {
  const first = rows.find(({ station }) => station !== '');
  if (first === undefined) return;
  const seen = new Set([first.station.toLowerCase()]);
  for (const { line, station } of rows) {
    if (station === '' || seen.has(station.toLowerCase())) continue;
    seen.add(station.toLowerCase());
    doubts.add({ code: 'otherStation', line, station, otherStation: first.station, otherLine: first.line });
  }
}

/** Whether the month or the day comes first, as all dates of the record have it; null where the year does. */
function findOrder(dated: readonly DatedCells[], doubts: Doubts): 'monthFirst' | 'dayFirst' | null {
  const decided = dated.find(({ written }) => orderOf(written) !== null);
  const order = decided === undefined ? null : orderOf(decided.written);
  const open = dated.find(({ written }) => 'first' in written && written.first !== written.second);
  if (decided === undefined) {
    if (open !== undefined) doubts.add({ code: 'dayOrMonthFirst', line: open.line, given: open.given });
    return null;
  }
  const other = dated.find(({ written }) => (orderOf(written) ?? order) !== order);
  if (other !== undefined) {
    doubts.add({
      code: 'dayAndMonthFirst',
      line: other.line,
      given: other.given,
      other: decided.given,
      otherLine: decided.line,
    });
  }
  return order;
}
