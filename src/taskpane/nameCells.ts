/** Cells by sheet and address, the first of them when they are many. */
import { cellAddress } from '../workbook/cellAddress';
import type { Area } from '../workbook/port';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const mostNamed = 5;

export function nameCells(cells: readonly Pick<Area, 'sheet' | 'row' | 'column'>[]): string {
  const named = cells
    .slice(0, mostNamed)
    .map(({ sheet, row, column }) => `${sheet} ${cellAddress(row, column)}`);
  const more = cells.length - named.length;
  return named.join(', ') + (more > 0 ? fill(catalogue.pane.tools.andMore, { more }) : '');
}
