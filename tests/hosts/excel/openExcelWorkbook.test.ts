import { describe, expect, test, vi } from 'vitest';
import { change, plots } from '../../contract/contractWorkbook';
import { cellNameOf } from '../../../src/workbook/sheetMark';
import { addName } from '../../excelStandIn/book';
import { openTestWorkbook, sheetNamed } from './openTestWorkbook';

const soon = { timeout: 5000 };

test('a sheet whose own mark a library took away is known by the name of its first cell', async () => {
  const { standIn, workbook, kitchen } = openTestWorkbook();
  await workbook.apply(change({ newSheets: [plots] }));
  const sheet = sheetNamed(standIn, 'Plots');
  sheet.names.length = 0;
  expect((await workbook.sheets()).map(({ mark }) => mark)).toEqual([null, null]);
  addName(standIn.book, standIn.book.names, cellNameOf(plots.mark), {
    sheet,
    span: { row: 0, column: 0, rows: 1, columns: 1 },
  });
  const marksThere = async () => (await workbook.sheets()).map(({ name, mark }) => [name, mark]);
  expect(await marksThere()).toEqual([
    [kitchen.name, null],
    ['Plots', plots.mark],
  ]);
  await workbook.apply(change({ marks: [{ sheet: 'Plots', mark: { ...plots.mark, version: 2 } }] }));
  expect(await marksThere()).toContainEqual(['Plots', plots.mark]);
  standIn.close();
});

describe('a person in front of the workbook', () => {
  test('selects, and is shown a cell', async () => {
    const { standIn, workbook, kitchen } = openTestWorkbook();
    await workbook.apply(change({ newSheets: [plots] }));
    expect(await workbook.selection()).toBeNull();
    standIn.select(kitchen, 1, 2);
    expect(await workbook.selection()).toEqual({ sheet: 'Kitchen', row: 1, column: 2, rows: 1, columns: 1 });
    const area = { sheet: 'Plots', row: 3, column: 1, rows: 2, columns: 1 };
    await workbook.reveal(area);
    expect(standIn.book.active).toBe(sheetNamed(standIn, 'Plots'));
    expect(await workbook.selection()).toEqual(area);
    standIn.close();
  });

  test('is followed by listeners until they are taken off', async () => {
    const { standIn, workbook, kitchen } = openTestWorkbook();
    const selected = vi.fn();
    const changed = vi.fn();
    const stops = [workbook.onSelection(selected), workbook.onChange(changed)];
    await vi.waitFor(
      () => {
        standIn.select(kitchen, 1, 0);
        standIn.type(kitchen, 5, 0, 'typed');
        expect(selected).toHaveBeenCalledWith({ sheet: 'Kitchen', row: 1, column: 0, rows: 1, columns: 1 });
        expect(changed).toHaveBeenCalled();
      },
      { ...soon, interval: 300 },
    );
    const events = standIn.takeRequests();
    expect(events.length).toBeGreaterThan(0);
    for (const stop of stops) stop();
    await vi.waitFor(() => expect(standIn.takeRequests().length).toBeGreaterThan(0), soon);
    selected.mockClear();
    changed.mockClear();
    standIn.select(kitchen, 2, 0);
    standIn.type(kitchen, 5, 0, 'again');
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(selected).not.toHaveBeenCalled();
    expect(changed).not.toHaveBeenCalled();
    standIn.close();
  });

  test('a run of changes is told once, recalculation and deletion as well', async () => {
    const { standIn, workbook, kitchen } = openTestWorkbook();
    const changed = vi.fn();
    workbook.onChange(changed);
    await vi.waitFor(() => expect(standIn.listensTo('Deleted')).toBe(true), soon);
    standIn.type(kitchen, 5, 0, 1);
    standIn.type(kitchen, 5, 0, 2);
    standIn.tell('Calculated');
    standIn.tell('Deleted');
    await vi.waitFor(() => expect(changed).toHaveBeenCalled(), soon);
    expect(changed).toHaveBeenCalledTimes(1);
  });

  test.each(['Calculated', 'Deleted'] as const)('%s alone is told too', async (event) => {
    const { standIn, workbook } = openTestWorkbook();
    const changed = vi.fn();
    workbook.onChange(changed);
    await vi.waitFor(() => expect(standIn.listensTo(event)).toBe(true), soon);
    standIn.tell(event);
    await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(1), soon);
  });

  test('who is editing a cell when the pane opens is listened to afterwards', async () => {
    const { standIn, workbook } = openTestWorkbook();
    standIn.book.isCellBeingEdited = true;
    workbook.onChange(() => undefined);
    await vi.waitFor(() => expect(standIn.takeRequests().length).toBeGreaterThan(0), soon);
    standIn.book.isCellBeingEdited = false;
    await vi.waitFor(() => expect(standIn.listensTo('DataChanged')).toBe(true), soon);
  });
});

describe('settling', () => {
  test('waits for our busy cells, and not for other people’s', async () => {
    const { standIn, workbook } = openTestWorkbook();
    await workbook.apply(change({ newSheets: [plots] }));
    standIn.book.busy.add('Kitchen!2,1');
    expect(await workbook.settle(10_000)).toEqual([]);
    standIn.book.busy.add('Plots!3,2').add('Plots!4,2');
    standIn.takeRequests();
    expect(await workbook.settle(10_000)).toEqual([
      { sheet: 'Plots', row: 3, column: 2 },
      { sheet: 'Plots', row: 4, column: 2 },
    ]);
    // 0.1, 0.2, 0.4, 0.8 seconds, then one second each; three requests a look, and a first and a last look.
    expect(standIn.takeRequests().length).toBe(3 * (4 + 9 + 1));
    standIn.book.busy.clear();
    expect(await workbook.settle(10_000)).toEqual([]);
  });
});
