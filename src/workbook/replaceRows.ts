/** Other rows in place of all that a table has; columns that are not the template's stay. */
import { HostError, type CellContent, type Change, type WorkbookPort } from './port';
import type { InputRow, TableTemplate } from './template';

/**
 * The table keeps its length, or grows: cells of rows that are too many are emptied.
 *
 * @param template whose columns are all typed
 * @returns what goes into a change; null where the workbook has no such table
 * @throws HostError sheetDamaged when one of its columns is gone
 */
export async function replaceRows(
  port: WorkbookPort,
  template: TableTemplate,
  inputs: readonly InputRow[],
): Promise<Pick<Change, 'expect' | 'cells' | 'tableRows'> | null> {
  const table = await port.readTable(template.name);
  if (table === null) return null;
  const { area, headers } = table;
  const { sheet } = area;
  const expect = [{ sheet, stamp: await port.stamp(sheet) }];
  const columns = template.columns.map(({ header }) => {
    const index = headers.indexOf(header);
    if (index < 0) throw new HostError({ code: 'sheetDamaged', sheet, missing: header });
    return { header, index };
  });
  const there = area.rows - 1;
  const cells = columns.map(({ header, index }) => ({
    sheet,
    row: area.row + 1,
    column: area.column + index,
    contents: Array.from({ length: there }, (_, row): CellContent[] => [inputs[row]?.[header] ?? null]),
  }));
  const added = inputs.slice(there).map((input): CellContent[] => {
    const row: CellContent[] = headers.map(() => null);
    for (const { header, index } of columns) row[index] = input[header] ?? null;
    return row;
  });
  return { expect, cells, tableRows: added.length === 0 ? [] : [{ table: template.name, rows: added }] };
}
