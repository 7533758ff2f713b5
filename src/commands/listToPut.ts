/** A list that goes into a table of the plan beside the plots, and what wants mending in it once it is there. */
import { findInPrices } from '../templates/findInPrices';
import { findInSeedOrder } from '../templates/findInSeedOrder';
import {
  listOfSeedPrices,
  type ListKind,
  type ListProblem,
  type NearestNames,
} from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { cellAddress } from '../workbook/cellAddress';
import type { FillRequest } from '../workbook/fillSheets';
import type { Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { listToMend, sayPlace, type FindingOfLine } from './listToMend';

export interface ListToPut {
  readonly file: string;
  readonly kind: ListKind;
  /** Met in reading it. */
  readonly problems: readonly ListProblem[];
  /** The filling of a sheet, with what the list has for it. */
  addTo(request: FillRequest): FillRequest;
  /** The line of a row of its table, by the row's place and name; undefined where the row is of no line. */
  lineOf(index: number, name: string): number | undefined;
}

export interface ToMend {
  readonly file: string;
  readonly lines: readonly string[];
}

/**
 * What wants mending in the sheets of seed and money: by its line where it came from a list, else by its cell.
 *
 * @param file of the workbook @throws HostError
 */
export async function pricesToMend(
  workbook: WorkbookPort,
  file: string,
  lists: readonly ListToPut[],
  nearestNames: NearestNames,
): Promise<readonly ToMend[]> {
  let left: readonly Finding[] = [...(await findInSeedOrder(workbook)), ...(await findInPrices(workbook))];
  const toMend: ToMend[] = [];
  for (const list of lists) {
    const table = await workbook.readTable(list.kind.table.name);
    const lineOf = ({ area, row }: Finding): number | undefined => {
      const index = area.row - (table?.area.row ?? 0) - 1;
      const isInTable = area.sheet === table?.area.sheet && table.rows[index] !== undefined;
      return isInTable ? list.lineOf(index, row) : undefined;
    };
    const errors = left.flatMap((finding): FindingOfLine[] => {
      const line = lineOf(finding);
      return line === undefined ? [] : [{ ...finding, line }];
    });
    left = left.filter((finding) => lineOf(finding) === undefined);
    const lines = listToMend(list.file, list.problems, errors, nearestNames, list.kind);
    toMend.push({ file: list.file, lines });
  }
  return [...toMend, { file, lines: left.map((finding) => sayCell(file, finding)) }];
}

function sayCell(file: string, finding: Finding): string {
  const { sheet, row, column } = finding.area;
  // Of all these rows only a pack may have no name.
  const problem = sayPlace(finding, listOfSeedPrices);
  return fill(catalogue.commands.plan.cell, { file, sheet, cell: cellAddress(row, column), problem });
}
