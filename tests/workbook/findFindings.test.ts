import { describe, expect, it } from 'vitest';
import { findFindings } from '../../src/workbook/findFindings';
import type { Area, ReadValue, WorkbookPort } from '../../src/workbook/port';
import type { TableColumn, TableTemplate } from '../../src/workbook/template';

const headers = ['Name', 'First', 'Second', 'Third', 'Remarks'];
const area = { sheet: 'Sheet', row: 3, column: 1, rows: 2, columns: headers.length };
const passedOn = { error: '#N/A', message: null };
const said = (message: string) => ({ error: '#VALUE!', message });

const column = (header: string, more: Partial<TableColumn> = {}): TableColumn => ({
  header,
  kind: 'computed',
  compute: null,
  format: 'general',
  width: 9,
  choices: [],
  note: '',
  unit: null,
  ...more,
});
const things: TableTemplate = {
  name: 'Things',
  heading: '',
  rows: null,
  grows: true,
  columns: [
    column('Name', { kind: 'input', format: 'text' }),
    column('First', { kind: 'input', limits: { above: 0 }, quantity: 'length of the thing' }),
    ...['Second', 'Third', 'Remarks'].map((header) => column(header)),
  ],
};

/** `under` stands below the table, in its columns; a text with "=" is a formula. */
function portOver(rows: ReadValue[][], under: ReadValue[][] = []): WorkbookPort {
  const end = area.row + area.rows;
  const port = {
    readTable: async () => ({ name: 'Things', area, headers, rows }),
    sheets: async () => [
      { name: 'Other', used: { sheet: 'Other', row: 0, column: 0, rows: 99, columns: 99 } },
      { name: 'Sheet', used: { sheet: 'Sheet', row: 0, column: 0, rows: end + under.length, columns: 9 } },
    ],
    read: async (asked: Area) => {
      expect(asked).toEqual({ ...area, row: end, rows: under.length });
      const isFormula = (value: ReadValue): boolean => typeof value === 'string' && value.startsWith('=');
      return { values: under, formulas: under.map((row) => row.map((v) => (isFormula(v) ? v : null))) };
    },
  };
  return port as unknown as WorkbookPort;
}

/** The findings in a table of one row, as [header, text]. */
async function findingsOf(...row: ReadValue[]) {
  const found = await findFindings(portOver([['A', ...row]]), things, 'Remarks');
  return found.map(({ header, text }) => [header, text]);
}

describe('findFindings', () => {
  it('has every error that explains itself, without those that pass it on', async () => {
    expect(await findingsOf(passedOn, said('Too narrow.'), said('Too late.'), '')).toEqual([
      ['Second', 'Too narrow.'],
      ['Third', 'Too late.'],
    ]);
  });

  it('has one finding of a row whose errors are all passed on: the first', async () => {
    expect(await findingsOf(1, passedOn, passedOn, '')).toEqual([['Second', '#N/A']]);
  });

  it('says once what several cells of a row say', async () => {
    expect(await findingsOf(said('Too narrow.'), 2, said('Too narrow.'), '')).toEqual([
      ['First', 'Too narrow.'],
    ]);
  });

  it('leads to the input that an error is about, where that is one its column does not take', async () => {
    const refused = said('The length of the thing is -5. It must be above 0.');
    expect(await findingsOf(-5, passedOn, refused, '')).toEqual([
      ['First', 'The length of the thing is -5. It must be above 0.'],
    ]);
    const unread = said('The length of the thing is "five", which is not a number.');
    expect(await findingsOf('five', unread, passedOn, '')).toEqual([['First', unread.message]]);
  });

  it('stays with the result where the input fits, or the error is about something else', async () => {
    const together = said('Nothing fits: the length of the thing is too small for it.');
    expect(await findingsOf(5, together, 3, '')).toEqual([['Second', together.message]]);
    expect(await findingsOf(-5, said('Too late.'), 3, '')).toEqual([['Second', 'Too late.']]);
  });

  it('passes over a remark that says no more than an error of the row, and nothing else', async () => {
    const port = portOver([['A', 1, said('Too late.'), 3, 'Look. Something is wrong. Look again.']]);
    const found = await findFindings(port, things, 'Remarks', [], ['Something is wrong.']);
    expect(found.map(({ kind, text }) => [kind, text])).toEqual([
      ['remark', 'Look. Look again.'],
      ['error', 'Too late.'],
    ]);
  });

  it('keeps a remark beside an error, with the row and the cell', async () => {
    const rows: ReadValue[][] = [
      ['A', 1, 2, 3, ''],
      ['B', passedOn, 2, 3, 'Look.'],
    ];
    expect(await findFindings(portOver(rows), things, 'Remarks')).toEqual([
      { kind: 'remark', row: 'B', header: 'Remarks', text: 'Look.', area: cell(5, 5) },
      { kind: 'error', row: 'B', header: 'First', text: '#N/A', area: cell(5, 2) },
    ]);
  });

  it('has every row under the table with something typed in its columns', async () => {
    const under = [
      [null, null, null, null, null],
      ['B', 4, null, null, null],
      [null, null, '=SUM(Things[First])', null, null],
      [null, 7, '=1', null, null],
    ];
    expect(await findFindings(portOver([['A', 1, 2, 3, '']], under), things, 'Remarks')).toEqual([
      { kind: 'stray', row: 'B', header: '', text: 'B', area: cell(6, 1) },
      { kind: 'stray', row: '', header: '', text: '7', area: cell(8, 2) },
    ]);
  });

  it('has none where there is no table', async () => {
    const port = { readTable: async () => null } as unknown as WorkbookPort;
    expect(await findFindings(port, things, 'Remarks')).toEqual([]);
  });
});

function cell(row: number, column: number) {
  return { sheet: 'Sheet', row, column, rows: 1, columns: 1 };
}
