/** What the pane knows of the plots: the lines of their sheet, and the figures that stand in for blanks. */
import { isCellError, type WorkbookPort } from '../workbook/port';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { TableTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { readCropFigures, type CropFigures } from './standIns';

export interface PlotsRead {
  readonly lines: LinesRead;
  readonly figures: CropFigures;
  /** Read after all was calculated. Else a computed figure may be an older one, or another plot's. */
  readonly isSettled: boolean;
}

export type PlotsState = PlotsRead | 'absent' | 'unreadable';

export const nameHeader = catalogue.sheets.plots.columns.plot.header;

/** @throws HostError */
export async function readPlots(
  port: WorkbookPort,
  table: TableTemplate,
  isSettled: boolean,
): Promise<PlotsState> {
  const lines = await readLines(port, table);
  return lines === null ? 'absent' : { lines, figures: await readCropFigures(port), isSettled };
}

/** "" for a line without one. */
export function nameOf(line: Line | undefined): string {
  const name = line?.values[nameHeader] ?? null;
  return name === null || isCellError(name) ? '' : String(name);
}

/**
 * A name like that one, numbered on: after "Creek 2" comes "Creek 3". A year at its end is no such number.
 *
 * @param taken in lower case; the name is added to it
 */
export function takeNextName(wanted: string, taken: Set<string>): string {
  const [, stem = wanted, number = 1] = /^(.*\S) ([1-9]\d{0,2})$/.exec(wanted) ?? [];
  let name = wanted;
  for (let n = Number(number) + 1; taken.has(name.toLowerCase()); n++) name = `${stem} ${n}`;
  taken.add(name.toLowerCase());
  return name;
}

/** In lower case. */
export function takenNames({ lines }: LinesRead): Set<string> {
  return new Set(lines.map((line) => nameOf(line).toLowerCase()).filter((name) => name !== ''));
}
