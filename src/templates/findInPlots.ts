/** What does not fit in the Plots sheet, and what its notes say, each at its cell. */
import { catalogue } from '../texts/catalogue';
import { findFindings, type Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { causesInPlots, plotsTable } from './plots';

const { columns, remarks } = catalogue.sheets.plots;

/** @throws HostError */
export function findInPlots(workbook: WorkbookPort): Promise<readonly Finding[]> {
  return findFindings(workbook, plotsTable, columns.notes.header, causesInPlots, [remarks.misfit]);
}
