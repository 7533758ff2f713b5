/** What does not fit in the Plots sheet, and what its notes say, each at its cell. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { findFindings, type Finding } from '../workbook/findFindings';
import type { ReadValue, WorkbookPort } from '../workbook/port';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { causesInPlots, plotsTable } from './plots';

const { columns, remarks } = catalogue.sheets.plots;

/** @throws HostError */
export async function findInPlots(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const inCells = await findFindings(workbook, plotsTable, columns.notes.header, causesInPlots, [
    remarks.misfit,
  ]);
  return [...inCells, ...(await findOtherYears(workbook))];
}

/** Starts that were typed for a year in which the season is not; it runs from its year to that of the first frost. */
async function findOtherYears(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const plots = await workbook.readTable(plotsTable.name);
  const year = await valueOf(workbook, 'SEASON_YEAR');
  const column = plots?.headers.indexOf(columns.startsOn.header) ?? -1;
  if (plots === null || typeof year !== 'number' || column < 0) return [];
  const lastYear = Number(isoOf(await valueOf(workbook, 'FIRST_FROST'))?.slice(0, 4) ?? year);
  return plots.rows.flatMap((cells, index): Finding[] => {
    const date = isoOf(cells[column] ?? null);
    const typed = Number(date?.slice(0, 4));
    if (date === null || (typed >= year && typed <= Math.max(year, lastYear))) return [];
    const { sheet, row, column: first } = plots.area;
    return [
      {
        kind: 'remark',
        row: String(cells[0] ?? ''),
        header: columns.startsOn.header,
        text: fill(remarks.otherYear, { date, year: String(year) }),
        area: { sheet, row: row + 1 + index, column: first + column, rows: 1, columns: 1 },
      },
    ];
  });
}

async function valueOf(workbook: WorkbookPort, name: string): Promise<ReadValue> {
  const area = await workbook.locate(name);
  return area === null ? null : ((await workbook.read(area)).values[0]?.[0] ?? null);
}

function isoOf(value: ReadValue): string | null {
  const day = typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? null : isoOfDay(day);
}
