/** A change whose carried cells are filled in: a computation here names columns, so that it is the same in any row. */
import { isCarried, type Block, type CellContent, type Carried, type Change } from '../../workbook/port';
import { contentAt, findSheetState, findTableState, type BookState } from './bookState';

export interface FilledChange extends Omit<Change, 'cells' | 'tableRows'> {
  readonly cells: readonly (Block & { readonly sheet: string })[];
  readonly tableRows: readonly {
    readonly table: string;
    readonly rows: readonly (readonly CellContent[])[];
  }[];
}

/** Cells of a sheet that is not there are left to the check of the change. */
export function carryCells(book: BookState, change: Change): FilledChange {
  const fillIn = (
    contents: readonly (readonly (CellContent | Carried)[])[],
    sheet: string,
    firstColumn: number,
  ): CellContent[][] =>
    contents.map((line) =>
      line.map((content, j) => {
        if (!isCarried(content)) return content;
        const state = findSheetState(book, sheet);
        return state === undefined ? null : contentAt(state, content.carriedFrom, firstColumn + j);
      }),
    );
  return {
    ...change,
    cells: change.cells.map((block) => ({
      ...block,
      contents: fillIn(block.contents, block.sheet, block.column),
    })),
    tableRows: change.tableRows.map(({ table, rows }) => {
      const { sheet = '', column = 0 } = findTableState(book, table) ?? {};
      return { table, rows: fillIn(rows, sheet, column) };
    }),
  };
}
