/**
 * Each request of a change fails, one after the other and in every way: refused, carried out half, carried out with
 * its answer lost, and with nothing answered from then on. The workbook is whole before, whole after, or whole before
 * again once the next session has put back what the journal kept.
 */
import { describe, expect, test } from 'vitest';
import { HostError, type Change } from '../../../src/workbook/port';
import {
  change,
  formulaSheet,
  newSheet,
  plotRow,
  plots,
  png,
  sumOfLengths,
} from '../../contract/contractWorkbook';
import { deleteSheet, numberFormatAt } from '../../excelStandIn/book';
import type { FaultKind, StandIn } from '../../excelStandIn/openStandIn';
import { snapshotBook } from '../../excelStandIn/snapshotBook';
import { openTestWorkbook, reopen, sheetNamed, type TestWorkbook } from './openTestWorkbook';

const longList = Array.from({ length: 60 }, (_, i) => `a rather long crop name ${i}`);

/** Sheets with all that a sheet can have. */
const fill: Change = change({
  title: 'fill',
  newSheets: [
    { ...plots, lists: [...plots.lists, { row: 3, column: 1, rows: 2, columns: 1, values: longList }] },
    formulaSheet('Totals', [[{ compute: sumOfLengths }]]),
  ],
  pictures: [
    { name: 'sketch', sheet: 'Plots', row: 9, column: 0, png, widthPx: 4, heightPx: 3, altText: 'of old' },
    { name: 'dot', sheet: 'Totals', row: 2, column: 0, png, widthPx: 40, heightPx: 30, altText: 'a dot' },
  ],
});

/** Everything that can be done to sheets that are there, and a new one. */
const refresh: Change = change({
  title: 'refresh',
  newSheets: [newSheet('Beds', { blocks: [{ row: 0, column: 0, contents: [[1]] }], names: { BED: [0, 0] } })],
  cells: [
    {
      sheet: 'Kitchen',
      row: 0,
      column: 0,
      contents: [
        [null, 'x'],
        ['new', 7],
        [1, true],
      ],
    },
    { sheet: 'Plots', row: 4, column: 2, contents: [[{ compute: { column: 'Length' } }]] },
  ],
  tableRows: [{ table: 'Plots', rows: [plotRow('c', 5), plotRow('007', null)] }],
  rules: [{ sheet: 'Plots', row: 3, column: 0, rows: 20, columns: 2, equals: 'south', shade: 'pale' }],
  marks: [{ sheet: 'Plots', mark: { template: 'plots', version: 2 } }],
  pictures: [
    { name: 'sketch', sheet: 'Plots', row: 12, column: 0, png, widthPx: 40, heightPx: 30, altText: 'a dot' },
  ],
});

/** A sheet that somebody deleted comes again, over the name that it left behind. */
const remake: Change = change({
  title: 'remake',
  newSheets: [{ ...plots, names: { SEASON_YEAR: [0, 1], SECOND_YEAR: [0, 0] } }],
});

async function ready(which: Change): Promise<TestWorkbook> {
  const opened = openTestWorkbook();
  if (which !== fill) await opened.workbook.apply(fill);
  if (which === remake) deleteSheet(opened.standIn.book, sheetNamed(opened.standIn, 'Plots'));
  opened.standIn.takeRequests();
  return opened;
}

async function outcome(applying: Promise<void>): Promise<HostError | null> {
  try {
    await applying;
    return null;
  } catch (error) {
    expect(error).toBeInstanceOf(HostError);
    return error as HostError;
  }
}

async function requestsOf(which: Change): Promise<{ count: number; before: unknown; after: unknown }> {
  const { standIn, workbook } = await ready(which);
  const before = snapshotBook(standIn.book);
  await workbook.apply(which);
  return { count: standIn.takeRequests().length, before, after: snapshotBook(standIn.book) };
}

const names = new Map([
  [fill, 'a fill'],
  [refresh, 'a refresh'],
  [remake, 'a sheet made again'],
]);

describe.each([...names].map(([which, name]) => [name, which] as const))('%s that is cut off', (_, which) => {
  test.each<FaultKind>(['refused', 'half', 'lost'])(
    'at any request (%s) is whole before or after at once',
    async (kind) => {
      const { count, before, after } = await requestsOf(which);
      expect(count).toBeGreaterThan(4);
      for (let request = 0; request < count; request++) {
        const { standIn, workbook } = await ready(which);
        standIn.failAt(request, kind);
        const error = await outcome(workbook.apply(which));
        expect(snapshotBook(standIn.book), `request ${request}`).toEqual(error === null ? after : before);
        if (error !== null) expect(error.problem).toEqual({ code: 'failed', action: which.title });
        expect(await workbook.findCutOff()).toBeNull();
        // And the same change can be made then.
        if (error !== null) await workbook.apply(which);
        expect(snapshotBook(standIn.book), `request ${request}, again`).toEqual(after);
        standIn.close();
      }
    },
  );

  test.each<FaultKind>(['refused', 'lost'])(
    'with the connection (%s) is put back by the next session',
    async (kind) => {
      const { count, before, after } = await requestsOf(which);
      let leftOver = 0;
      for (let request = 0; request < count; request++) {
        const { standIn, workbook } = await ready(which);
        cutConnection(standIn, request, kind);
        const error = await outcome(workbook.apply(which));
        // A request that only reads and loses its answer has failed like any other.
        expect(['noAnswer', 'cutOff', ...(kind === 'lost' ? ['failed'] : [])]).toContain(error?.problem.code);
        standIn.goneFrom(null);
        standIn.failAt(null);
        const next = reopen(standIn);
        const found = await next.findCutOff();
        if (found !== null) {
          leftOver += 1;
          expect(['', which.title]).toContain(found);
          // Nobody sees what is half done.
          const shown = (await next.sheets()).map(({ name }) => name);
          expect(shown.filter((name) => name.startsWith('_'))).toEqual([]);
          await next.putBack();
          expect(await next.findCutOff()).toBeNull();
        }
        const isWhole = kind === 'lost' && request === count - 1;
        expect(snapshotBook(standIn.book), `request ${request}`).toEqual(isWhole ? after : before);
        standIn.close();
      }
      expect(leftOver).toBeGreaterThan(1);
    },
  );

  test('and whose putting back is cut off as well is put back by the session after', async () => {
    const { count, before } = await requestsOf(which);
    for (let fault = 0; ; fault++) {
      const { standIn, workbook } = await ready(which);
      cutConnection(standIn, count - 2, 'lost');
      await outcome(workbook.apply(which));
      standIn.goneFrom(null);
      standIn.failAt(fault, 'half');
      const error = await outcome(reopen(standIn).putBack());
      standIn.failAt(null);
      await reopen(standIn).putBack();
      expect(snapshotBook(standIn.book), `fault ${fault}`).toEqual(before);
      if (error === null) break;
    }
  });
});

test('no further change is made before one that was cut off is put back', async () => {
  const { count } = await requestsOf(refresh);
  const { standIn, workbook } = await ready(refresh);
  cutConnection(standIn, count - 2, 'lost');
  await outcome(workbook.apply(refresh));
  standIn.goneFrom(null);
  standIn.failAt(null);
  const left = snapshotBook(standIn.book);
  const next = reopen(standIn);
  const error = await outcome(next.apply(refresh));
  expect(error?.problem).toEqual({ code: 'cutOff', action: 'refresh' });
  expect(snapshotBook(standIn.book)).toEqual(left);
  await next.putBack();
  await next.apply(refresh);
  expect((await next.readTable('Plots'))?.rows.length).toBe(4);
});

/** The request of that number is refused or loses its answer; nothing is answered after it. */
function cutConnection(standIn: StandIn, request: number, kind: FaultKind): void {
  standIn.failAt(request, kind);
  standIn.goneFrom(kind === 'refused' ? request : request + 1);
}

test('a sheet that looks like a left-over but is somebody’s stays', async () => {
  const { standIn, workbook, kitchen } = openTestWorkbook();
  kitchen.name = '_new';
  await workbook.apply(fill);
  standIn.failAt(5);
  await outcome(workbook.apply(refresh));
  await workbook.putBack();
  expect(sheetNamed(standIn, '_new')).toBe(kitchen);
  expect(sheetNamed(standIn, 'Plots').visibility).toBe('Visible');
});

test('what is typed under a table that was put back is a text where it was to be one', async () => {
  const { standIn, workbook } = await ready(refresh);
  const sheet = sheetNamed(standIn, 'Plots');
  const under = 5;
  expect(numberFormatAt(sheet, under, 0)).toBe('@');
  const { count } = await requestsOf(refresh);
  standIn.failAt(count - 1, 'refused');
  expect(await outcome(workbook.apply(refresh))).not.toBeNull();
  standIn.failAt(null);
  expect(numberFormatAt(sheet, under, 0)).toBe('@');
  standIn.type(sheet, under, 0, '007');
  const read = await workbook.read({ sheet: 'Plots', row: under, column: 0, rows: 1, columns: 1 });
  expect(read.values).toEqual([['007']]);
});
