/** What the contract's cases are made of: functions, sheets, changes, and a way to read a whole workbook. */
import { expect } from 'vitest';
import { call, column, native } from '../../src/workbook/expressions';
import {
  HostError,
  type CellContent,
  type Change,
  type CellsRead,
  type HostProblem,
  type NewSheet,
  type SheetInfo,
  type TableRead,
  type WorkbookPort,
} from '../../src/workbook/port';

/** Somebody's sheet, there before ours. Every host seeds it in its own way. */
export const foreignSheet = {
  name: 'Kitchen',
  contents: [
    ['beans', 42],
    ['=1+1 is text', true],
  ],
} as const;

export interface HostUnderTest {
  readonly port: WorkbookPort;
  /** Whether an error in a cell is read with what our function said about it. */
  readonly keepsMessages: boolean;
  /** The alternative texts of the pictures on all sheets. */
  pictures(): Promise<readonly string[]>;
  /** The texts that the sheet's rules are on, the rule that holds first before the others. */
  rules(sheet: string): Promise<readonly string[]>;
  /** The write step of that number, counted from 0 in each change, fails; null lets all pass. */
  failAt(step: number | null): void;
  dispose(): Promise<void>;
}

/** A fresh host that calculates `contractFunctions` and holds `foreignSheet`. */
export type MakeHost = () => Promise<HostUnderTest>;

/** Long enough for a machine under load. */
export const settleMs = 20_000;

export function newSheet(name: string, parts: Partial<NewSheet> = {}): NewSheet {
  return {
    name,
    mark: { template: name.toLowerCase(), version: 1 },
    blocks: [],
    tables: [],
    dressings: [],
    lists: [],
    rules: [],
    notes: [],
    names: {},
    widths: [],
    frozenRows: 0,
    frozenColumns: 0,
    page: { landscape: false, pagesWide: 1, repeatRows: null, repeatColumns: null },
    ...parts,
  };
}

export function change(parts: Partial<Change>): Change {
  return {
    title: 'test',
    expect: [],
    newSheets: [],
    cells: [],
    tableRows: [],
    pictures: [],
    marks: [],
    ...parts,
  };
}

export const plotHeaders = ['Plot', 'Length', 'Twice'] as const;
const twice = call('TEST.DOUBLE', column('Length'));
export const plotRow = (name: string, length: CellContent): CellContent[] => [
  name,
  length,
  { compute: twice },
];

/** A form with a named cell above a growing table of two rows. */
export const plots = newSheet('Plots', {
  blocks: [
    { row: 0, column: 0, contents: [['Season', 2026]] },
    {
      row: 2,
      column: 0,
      contents: [[...plotHeaders], plotRow('north', 100), plotRow('007', 40)],
    },
  ],
  tables: [
    {
      name: 'Plots',
      headers: plotHeaders,
      row: 2,
      column: 0,
      rows: 3,
      columns: 3,
      grows: [null, null, twice],
    },
  ],
  dressings: [
    { row: 2, column: 0, rows: 1, columns: 3, role: 'header', format: 'text' },
    { row: 3, column: 0, rows: 2, columns: 1, role: 'input', format: 'text' },
    { row: 3, column: 1, rows: 2, columns: 1, role: 'input', format: 'tenth' },
    { row: 3, column: 2, rows: 2, columns: 1, role: 'computed', format: 'whole' },
  ],
  lists: [{ row: 3, column: 0, rows: 2, columns: 1, values: ['north', 'south'] }],
  rules: [{ row: 3, column: 0, rows: 20, columns: 2, equals: 'say "north"', shade: 'deep' }],
  notes: [{ row: 2, column: 1, text: 'Along the rows.' }],
  names: { SEASON_YEAR: [0, 1] },
  widths: [12, 10, 10],
  frozenRows: 3,
  frozenColumns: 1,
});

/** 1 × 1, transparent. */
export const png = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg=='),
  (character) => character.charCodeAt(0),
);

/** One sheet with one formula in A1, outside any table. */
export const formulaSheet = (name: string, contents: readonly (readonly CellContent[])[]): NewSheet =>
  newSheet(name, { blocks: [{ row: 0, column: 0, contents }] });

export const sumOfLengths = native('SUM', { table: 'Plots', allOf: 'Length' });

export interface Whole {
  readonly sheets: readonly (SheetInfo & { readonly cells: CellsRead | null; readonly stamp: string })[];
  readonly tables: readonly (TableRead | null)[];
  readonly names: readonly unknown[];
}

/** All that the port can read, to compare with. */
export async function readWhole(port: WorkbookPort): Promise<Whole> {
  const unsettled = await port.settle(settleMs);
  expect(unsettled).toEqual([]);
  const sheets = [];
  for (const info of await port.sheets()) {
    const cells = info.used === null ? null : await port.read(info.used);
    sheets.push({ ...info, cells, stamp: await port.stamp(info.name) });
  }
  const tables = [];
  for (const name of ['Plots', 'Beds']) tables.push(await port.readTable(name));
  const names = [];
  for (const name of ['SEASON_YEAR', 'OTHER_NAME']) names.push(await port.locate(name));
  return { sheets, tables, names };
}

/** The change is refused with that problem, and the workbook is as before. */
export async function expectRefusal(
  port: WorkbookPort,
  refused: Change,
  problem: HostProblem,
): Promise<void> {
  const before = await readWhole(port);
  const error = await port.apply(refused).then(
    () => null,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(HostError);
  expect((error as HostError).problem).toEqual(problem);
  expect(await readWhole(port)).toEqual(before);
}
