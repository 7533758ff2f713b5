/** Copies of our sheets as values, for somebody who does not have our functions. Nobody's cells are touched. */
import { findSheet, takeFreeName } from './fillSheets';
import {
  isCellError,
  type Change,
  type NewSheet,
  type Progress,
  type Unsettled,
  type WorkbookPort,
} from './port';
import type { SheetTemplate } from './template';
import { valuesSheet } from './valuesSheet';

export interface CopyWords {
  /** What the undo entry is called. */
  readonly title: string;
  /** What the copy of a sheet is called. */
  nameOf(sheet: string): string;
  /** Stands under each title: that these are values, and of which day. */
  readonly line: string;
}

export type CopyReport =
  | {
      readonly made: readonly string[];
      /** Cells that hold an error; they were copied as it. */
      readonly errors: number;
    }
  /** Nothing was copied, because these cells were still being calculated. */
  | { readonly unsettled: readonly Unsettled[] };

/** @throws HostError; then nothing was written */
export async function copyValues(
  port: WorkbookPort,
  templates: readonly SheetTemplate[],
  words: CopyWords,
  settleMs: number,
  progress?: Progress,
): Promise<CopyReport> {
  const unsettled = await port.settle(settleMs);
  if (unsettled.length > 0) return { unsettled };
  const there = await port.sheets();
  const taken = new Set(there.map(({ name }) => name.toLowerCase()));
  const newSheets: NewSheet[] = [];
  let errors = 0;
  const expect: Change['expect'][number][] = [];
  for (const template of templates) {
    const sheet = findSheet(there, template);
    if (sheet === undefined || sheet.used === null) continue;
    expect.push({ sheet: sheet.name, stamp: await port.stamp(sheet.name) });
    const name = takeFreeName(words.nameOf(sheet.name), taken);
    const { values } = await port.read(sheet.used);
    errors += values.flat().filter(isCellError).length;
    newSheets.push(await valuesSheet(port, template, { sheet: sheet.name, values }, name, words.line));
  }
  const { title } = words;
  if (newSheets.length > 0) {
    await port.apply(
      { title, expect, newSheets, cells: [], tableRows: [], pictures: [], marks: [] },
      progress,
    );
  }
  return { made: newSheets.map(({ name }) => name), errors };
}
