/** Heights of rows whose cells wrap or are set large: the engine fits rows to what is typed, not to a snapshot. */
import { indentCharacters, isIndented, looks } from '../../workbook/appearance';
import type { Dressing, NewSheet } from '../../workbook/port';

const pxPerPt = 4 / 3;
const lineSpacing = 1.25;
const paddingPx = 5;
const defaultWidth = 10;
/** Bold letters are wider than those that a column's width counts. */
const boldWidening = 1.1;

/** Row → pixels, for the rows that need more than `defaultPx`. */
export function rowHeights(sheet: NewSheet, defaultPx: number): Map<number, number> {
  const heights = new Map<number, number>();
  for (const dressing of sheet.dressings) {
    const { sizePt, wrap } = looks[dressing.role];
    if (!wrap && sizePt * pxPerPt * lineSpacing + paddingPx <= defaultPx) continue;
    for (const { row, column, text } of textsIn(sheet, dressing)) {
      const lines = wrap ? countLines(text, charactersIn(sheet, dressing, column)) : 1;
      const height = Math.ceil(lines * sizePt * pxPerPt * lineSpacing + paddingPx);
      if (height > (heights.get(row) ?? defaultPx)) heights.set(row, height);
    }
  }
  return heights;
}

function charactersIn(sheet: NewSheet, dressing: Dressing, column: number): number {
  const width = sheet.widths[column] ?? defaultWidth;
  const room = width - (isIndented(dressing) ? indentCharacters : 0);
  return looks[dressing.role].bold ? room / boldWidening : room;
}

function* textsIn(sheet: NewSheet, span: Dressing): Generator<{ row: number; column: number; text: string }> {
  for (const block of sheet.blocks) {
    for (const [i, line] of block.contents.entries()) {
      const row = block.row + i;
      if (row < span.row || row >= span.row + span.rows) continue;
      for (const [j, content] of line.entries()) {
        const column = block.column + j;
        const isInSpan = column >= span.column && column < span.column + span.columns;
        if (isInSpan && typeof content === 'string') yield { row, column, text: content };
      }
    }
  }
}

/** Words go to the next line whole; a word wider than the column is broken. */
export function countLines(text: string, characters: number): number {
  const room = Math.max(1, Math.floor(characters));
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    let used = 0;
    lines += 1;
    for (const word of paragraph.split(' ')) {
      if (used > 0 && used + 1 + word.length > room) {
        lines += 1;
        used = 0;
      }
      used += (used > 0 ? 1 : 0) + word.length;
      while (used > room) {
        lines += 1;
        used -= room;
      }
    }
  }
  return lines;
}
