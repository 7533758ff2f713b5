import type exceljs from 'exceljs';
import { indentCharacters, isIndented, looks } from '../../workbook/appearance';
import type { Role } from '../../workbook/port';
import type { SheetState } from './bookState';
import { countLines } from './countLines';
import type { Evaluation } from './evaluate';

const usualSizePt = 11;
const linePt = 15;
/** Room that the filter button takes from a header, in characters. */
const buttonCharacters = 3;
/** Texts in these would be cut off by the next cell; all others may run over empty cells to their right. */
const boxed: ReadonlySet<Role> = new Set<Role>(['input', 'computed', 'prose', 'header']);

/**
 * Lets texts that are wider than their column run over several lines, and gives rows the height for it. Not every
 * program finds the height by itself, and what is cut off on paper cannot be scrolled to.
 */
export function fitRows(to: exceljs.Worksheet, sheet: SheetState, evaluation: Evaluation): void {
  const heights = new Map<number, number>();
  const demand = (row: number, height: number): void => {
    heights.set(row, Math.max(height, heights.get(row) ?? linePt));
  };
  for (const dressing of sheet.dressings) {
    const { role, ...span } = dressing;
    const { sizePt } = looks[role];
    const taken = (role === 'header' ? buttonCharacters : 0) + (isIndented(dressing) ? indentCharacters : 0);
    for (let row = span.row; row < span.row + span.rows; row++) {
      if (sizePt > usualSizePt) demand(row, (linePt * sizePt) / usualSizePt);
      if (!boxed.has(role)) continue;
      for (let column = span.column; column < span.column + span.columns; column++) {
        const { value } = evaluation.result(sheet, row, column);
        const width = sheet.widths[column];
        if (typeof value !== 'string' || width === undefined) continue;
        const lines = countLines(value, Math.max(1, width - taken));
        if (lines === 1) continue;
        demand(row, lines * linePt);
        const cell = to.getCell(row + 1, column + 1);
        cell.style = { ...cell.style, alignment: { ...cell.style.alignment, wrapText: true } };
      }
    }
  }
  for (const [row, height] of heights) to.getRow(row + 1).height = height;
}
