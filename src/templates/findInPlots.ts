/** What does not fit in the Plots sheet, and what its notes say, each at its cell. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { findFindings, type Finding } from '../workbook/findFindings';
import type { ReadValue, TableRead, WorkbookPort } from '../workbook/port';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { causesInPlots, plotsTable } from './plots';

const { columns, remarks } = catalogue.sheets.plots;

/** @throws HostError */
export async function findInPlots(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const inCells = await findFindings(workbook, plotsTable, columns.notes.header, causesInPlots, [
    remarks.misfit,
  ]);
  const plots = await workbook.readTable(plotsTable.name);
  if (plots === null) return inCells;
  return [...inCells, ...(await findOtherYears(workbook, plots)), ...findWholeShares(plots)];
}

/** Starts that were typed for a year in which the season is not; it runs from its year to that of the first frost. */
async function findOtherYears(workbook: WorkbookPort, plots: TableRead): Promise<readonly Finding[]> {
  const year = await valueOf(workbook, 'SEASON_YEAR');
  const column = plots.headers.indexOf(columns.startsOn.header);
  if (typeof year !== 'number' || column < 0) return [];
  const lastYear = Number(isoOf(await valueOf(workbook, 'FIRST_FROST'))?.slice(0, 4) ?? year);
  return plots.rows.flatMap((cells, index): Finding[] => {
    const date = isoOf(cells[column] ?? null);
    const typed = Number(date?.slice(0, 4));
    if (date === null || (typed >= year && typed <= Math.max(year, lastYear))) return [];
    return [remarkAt(plots, index, column, fill(remarks.otherYear, { date, year: String(year) }))];
  });
}

/** Shares of 1: a cell has the same for 100%, and somebody who goes on from a column in per cent means 1 of them. */
function findWholeShares(plots: TableRead): readonly Finding[] {
  return plots.headers.flatMap((header, column) => {
    const limits = plotsTable.columns.find((one) => one.header === header)?.limits;
    if (limits?.isNeverOnePercent !== true) return [];
    return plots.rows.flatMap((cells, index) =>
      cells[column] === 1 ? [remarkAt(plots, index, column, remarks.wholeShare)] : [],
    );
  });
}

function remarkAt({ headers, rows, area }: TableRead, index: number, column: number, text: string): Finding {
  return {
    kind: 'remark',
    row: String(rows[index]?.[0] ?? ''),
    header: headers[column] ?? '',
    text,
    area: {
      sheet: area.sheet,
      row: area.row + 1 + index,
      column: area.column + column,
      rows: 1,
      columns: 1,
    },
  };
}

async function valueOf(workbook: WorkbookPort, name: string): Promise<ReadValue> {
  const area = await workbook.locate(name);
  return area === null ? null : ((await workbook.read(area)).values[0]?.[0] ?? null);
}

function isoOf(value: ReadValue): string | null {
  const day = typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? null : isoOfDay(day);
}
