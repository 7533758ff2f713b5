import { isCellError, type Note } from '../../workbook/port';
import type { SheetState } from './bookState';
import type { Evaluation } from './evaluate';

/** The sheet's notes, and beside each error what our function said about it: a file keeps the error's code only. */
export function collectNotes(sheet: SheetState, evaluation: Evaluation): readonly Note[] {
  const texts = new Map<string, Note>();
  const add = (note: Note): void => {
    const key = `${note.row} ${note.column}`;
    const there = texts.get(key);
    texts.set(key, there ? { ...note, text: `${there.text}\n\n${note.text}` } : note);
  };
  sheet.notes.forEach(add);
  sheet.cells.forEach((cells, row) =>
    cells?.forEach((_, column) => {
      const { value } = evaluation.result(sheet, row, column);
      if (isCellError(value) && value.message !== null) add({ row, column, text: value.message });
    }),
  );
  return [...texts.values()];
}
