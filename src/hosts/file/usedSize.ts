import { spillsIn, type SheetState } from './bookState';
import type { Evaluation } from './evaluate';

/** How many rows and columns from A1 hold all content; 0 by 0 for an empty sheet. */
export function usedSize(
  sheet: SheetState,
  evaluation: Evaluation,
): { readonly rows: number; readonly columns: number } {
  let rows = 0;
  let columns = 0;
  sheet.cells.forEach((cells, row) =>
    cells?.forEach((content, column) => {
      if (content === null || content === undefined) return;
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    }),
  );
  for (const { row, column } of spillsIn(sheet)) {
    const { list = [] } = evaluation.result(sheet, row, column);
    rows = Math.max(rows, row + list.length);
    columns = Math.max(columns, column + (list[0]?.length ?? 0));
  }
  return { rows, columns };
}
