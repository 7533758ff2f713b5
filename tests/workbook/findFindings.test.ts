import { describe, expect, it } from 'vitest';
import { findFindings } from '../../src/workbook/findFindings';
import type { ReadValue, WorkbookPort } from '../../src/workbook/port';

const headers = ['Name', 'First', 'Second', 'Third', 'Remarks'];
const area = { sheet: 'Sheet', row: 3, column: 1, rows: 2, columns: headers.length };
const passedOn = { error: '#N/A', message: null };
const said = (message: string) => ({ error: '#VALUE!', message });

/** The findings in a table of one row, as [header, text]. */
async function findingsOf(...row: ReadValue[]) {
  const readTable = async () => ({ name: 'Things', area, headers, rows: [['A', ...row]] });
  const found = await findFindings({ readTable } as unknown as WorkbookPort, 'Things', 'Remarks');
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

  it('keeps a remark beside an error, with the row and the cell', async () => {
    const rows: ReadValue[][] = [
      ['A', 1, 2, 3, ''],
      ['B', passedOn, 2, 3, 'Look.'],
    ];
    const readTable = async () => ({ name: 'Things', area, headers, rows });
    const found = await findFindings({ readTable } as unknown as WorkbookPort, 'Things', 'Remarks');
    expect(found).toEqual([
      { kind: 'remark', row: 'B', header: 'Remarks', text: 'Look.', area: cell(5, 5) },
      { kind: 'error', row: 'B', header: 'First', text: '#N/A', area: cell(5, 2) },
    ]);
  });

  it('has none where there is no table', async () => {
    const port = { readTable: async () => null } as unknown as WorkbookPort;
    expect(await findFindings(port, 'Things', 'Remarks')).toEqual([]);
  });
});

function cell(row: number, column: number) {
  return { sheet: 'Sheet', row, column, rows: 1, columns: 1 };
}
