import { isSame } from './book';
import { refuse } from './excelError';
import type { Model, Stage } from './model';
import { rangeModel } from './rangeModel';
import { namesModel, sheetsModel, tableModel } from './sheetModel';

export function workbookModel(stage: Stage): Model {
  const { book } = stage;
  const find = (key: unknown) => book.tables.find(({ id, name }) => id === key || isSame(name, String(key)));
  return {
    className: 'Workbook',
    call: {
      GetSelectedRange() {
        if (book.selection === null) return refuse('InvalidSelection', 'no range is selected');
        return rangeModel(stage, book.selection.sheet, book.selection.span);
      },
    },
    child: {
      Worksheets: () => sheetsModel(stage),
      Names: () => namesModel(stage, book.names, null),
      Tables: () => ({
        className: 'TableCollection',
        items: () => book.tables.map((table) => tableModel(stage, table)),
        item: (key) => tableModel(stage, find(key) ?? refuse('ItemNotFound', `table ${String(key)}`)),
      }),
      Functions: () => ({
        className: 'Functions',
        call: {
          Date: (...parts) => {
            const days = Date.UTC(Number(parts[0]), Number(parts[1]) - 1, Number(parts[2])) / 86_400_000;
            // 1904-01-01 is day 0 of the one count and 1462 of the other; general knowledge, not tried.
            const fromStart = days - Date.UTC(1904, 0, 1) / 86_400_000 + (book.countsFrom1904 ? 0 : 1462);
            return { className: 'FunctionResult', get: { Value: () => fromStart } };
          },
        },
      }),
      Protection: () => ({ className: 'WorkbookProtection', get: { Protected: () => book.isProtected } }),
      Application: () => ({
        className: 'Application',
        call: {
          SuspendApiCalculationUntilNextSync: () => undefined,
          SuspendScreenUpdatingUntilNextSync: () => undefined,
        },
      }),
    },
  };
}
