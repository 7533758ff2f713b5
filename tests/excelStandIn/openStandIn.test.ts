/** What Excel refuses the stand-in refuses: else a test over it would prove nothing. */
import { describe, expect, test } from 'vitest';
import { openStandIn, type StandIn } from './openStandIn';

async function send(standIn: StandIn, write: (workbook: Excel.Workbook) => void): Promise<string | null> {
  const context = new standIn.excel.RequestContext();
  write(context.workbook);
  return context.sync().then(
    () => null,
    (error: { code: string }) => error.code,
  );
}

const open = (): StandIn => openStandIn({ firstSheet: 'First' });
const first = (workbook: Excel.Workbook): Excel.Worksheet => workbook.worksheets.getItem('First');

describe('the stand-in refuses', () => {
  test.each<[string, string, (workbook: Excel.Workbook) => void]>([
    ['an array of another size', 'InvalidArgument', (w) => (first(w).getRange('A1:B2').values = [[1, 2]])],
    ['a sheet name in use', 'ItemAlreadyExists', (w) => w.worksheets.add('FIRST')],
    ['a sheet name too long', 'InvalidArgument', (w) => w.worksheets.add('x'.repeat(32))],
    ['a sheet name with a slash', 'InvalidArgument', (w) => w.worksheets.add('a/b')],
    ['a name like a cell', 'InvalidArgument', (w) => w.names.add('LF1', first(w).getRange('A1'))],
    ['a name like a row', 'InvalidArgument', (w) => w.names.add('R1', first(w).getRange('A1'))],
    ['a sheet that is not there', 'ItemNotFound', (w) => w.worksheets.getItem('None').activate()],
    ['hiding the last sheet', 'InvalidOperation', (w) => (first(w).visibility = 'Hidden')],
    ['deleting the last sheet', 'InvalidOperation', (w) => first(w).delete()],
    [
      'a formula over a table that is not there',
      'InvalidArgument',
      (w) => (first(w).getRange('A1').formulas = [['=SUM(T[x])']]),
    ],
    ['half a formula', 'InvalidArgument', (w) => (first(w).getRange('A1').formulas = [['=SUM(1']])],
    ['a table without a row', 'InvalidArgument', (w) => first(w).tables.add('A1:B1', true)],
    ['a table without headers', 'InvalidArgument', (w) => first(w).tables.add('A1:B2', true)],
    [
      'selecting on a sheet that is not shown',
      'InvalidOperation',
      (w) => {
        w.worksheets.add('Other').getRange('A1').select();
      },
    ],
    [
      'activating a hidden sheet',
      'InvalidOperation',
      (w) => {
        const other = w.worksheets.add('Other');
        other.visibility = 'VeryHidden';
        other.activate();
      },
    ],
    [
      'deleting a very hidden sheet',
      'InvalidOperation',
      (w) => {
        const other = w.worksheets.add('Other');
        other.visibility = 'VeryHidden';
        other.delete();
      },
    ],
    [
      'a list too long',
      'InvalidArgument',
      (w) => {
        first(w).getRange('A1').dataValidation.rule = {
          list: { inCellDropDown: true, source: 'x'.repeat(256) },
        };
      },
    ],
  ])('%s', async (_, code, write) => {
    expect(await send(open(), write)).toBe(code);
  });

  test('a table over a table, and a name in use by a table', async () => {
    const standIn = open();
    const table = await send(standIn, (workbook) => {
      first(workbook).getRange('A1:B1').values = [['a', 'b']];
      first(workbook).tables.add('A1:B3', true).name = 'Beds';
    });
    expect(table).toBeNull();
    expect(await send(standIn, (workbook) => first(workbook).tables.add('B1:C3', true))).toBe(
      'InvalidArgument',
    );
    const name = (workbook: Excel.Workbook): unknown =>
      workbook.names.add('BEDS', first(workbook).getRange('A1'));
    expect(await send(standIn, name)).toBe('ItemAlreadyExists');
  });

  test('writing into what is protected, and anything while a cell is edited', async () => {
    const standIn = open();
    const write = (workbook: Excel.Workbook): unknown => (first(workbook).getRange('A1').values = [[1]]);
    standIn.book.active.isProtected = true;
    expect(await send(standIn, write)).toBe('AccessDenied');
    standIn.book.active.isProtected = false;
    standIn.book.isProtected = true;
    expect(await send(standIn, (workbook) => workbook.worksheets.add('More'))).toBe('AccessDenied');
    standIn.book.isCellBeingEdited = true;
    expect(await send(standIn, write)).toBe('InvalidOperationInCellEditMode');
  });

  test('what came with a later ExcelApi', async () => {
    const standIn = openStandIn({ firstSheet: 'First', apiMinor: 12 });
    standIn.book.tables.push({
      id: '{9}',
      name: 'T',
      sheet: standIn.book.active,
      span: { row: 0, column: 0, rows: 2, columns: 1 },
      showTotals: false,
      showFilterButton: true,
      style: '',
    });
    expect(await send(standIn, (workbook) => workbook.tables.getItem('T').resize('A1:A3'))).toBe(
      'ApiNotFound',
    );
    expect(await send(standIn, (workbook) => void first(workbook).notes.add('A1', 'x'))).toBe('ApiNotFound');
  });

  test('a request of more than 5 MB', async () => {
    const rows = Array.from({ length: 200 }, () => ['x'.repeat(30_000)]);
    const write = (workbook: Excel.Workbook): unknown => (first(workbook).getRange('A1:A200').values = rows);
    expect(await send(open(), write)).toBe('RequestPayloadSizeLimitExceeded');
  });
});

test('a call that it was not taught is named when the workbook is closed', async () => {
  const standIn = open();
  await send(standIn, (workbook) => first(workbook).getRange('A1').merge(false));
  expect(() => standIn.close()).toThrow('Range.Merge');
});

test('what is typed becomes what Excel makes of it', async () => {
  const standIn = open();
  const typed = ['007', "'007", '50%', 'true', '=1+1', 'north', '2026-05-02', '#N/A'];
  typed.forEach((text, column) => standIn.type(standIn.book.active, 0, column, text));
  const context = new standIn.excel.RequestContext();
  const range = first(context.workbook).getRange('A1:H1').load('values,valueTypes,formulas');
  await context.sync();
  expect(range.values).toEqual([[7, '007', 0.5, true, 2, 'north', expect.any(Number), '#N/A']]);
  expect(range.formulas[0]?.[4]).toBe('=1+1');
  expect(range.valueTypes[0]?.[7]).toBe('Error');
});
