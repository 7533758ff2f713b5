import type { SheetState } from './bookState';

/** How many rows and columns from A1 hold all content; 0 by 0 for an empty sheet. */
export function usedSize(sheet: SheetState): { readonly rows: number; readonly columns: number } {
  let rows = 0;
  let columns = 0;
  sheet.cells.forEach((cells, row) =>
    cells?.forEach((content, column) => {
      if (content === null || content === undefined) return;
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    }),
  );
  return { rows, columns };
}
