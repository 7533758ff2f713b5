import type { Book, Name } from './book';
import { printAddress } from './span';

/** All that a person could miss or find too much in the workbook, to compare with. Looks of cells are left out. */
export function snapshotBook(book: Book): unknown {
  const names = (of: readonly Name[]): unknown =>
    of.map(({ name, target }) => [
      name,
      typeof target === 'string' ? target : printAddress(target.sheet.name, target.span),
    ]);
  return {
    names: names(book.names),
    tables: book.tables.map(({ name, sheet, span }) => [name, printAddress(sheet.name, span)]),
    sheets: book.sheets.map((sheet) => ({
      name: sheet.name,
      visibility: sheet.visibility,
      names: names(sheet.names),
      notes: sheet.notes,
      rules: sheet.rules.map(({ span, properties }) => ({ span, properties })),
      shapes: sheet.shapes.length,
      cells: [...sheet.cells]
        .flatMap(([row, cells]) => [...cells].map(([column, cell]) => [row, column, cell] as const))
        .sort(([row, column], [otherRow, otherColumn]) => row - otherRow || column - otherColumn),
    })),
  };
}
