import type exceljs from 'exceljs';
import type { PickList } from '../../workbook/port';
import type { BookState } from './bookState';
import { cellAddress, columnLetters, quoteSheet } from '../../workbook/cellAddress';

/** A list inside the validation itself may not be longer, and its commas divide. */
const longestInline = 255;

/** The library takes a range here; only its types do not say so. */
interface RangeValidations {
  add(range: string, validation: exceljs.DataValidation): void;
}

/** Drop-down lists. Long ones stand on a hidden sheet of their own, each distinct list in a column. */
export function addLists(workbook: exceljs.Workbook, book: BookState): void {
  const longLists = new Map<string, number>();
  const taken = new Set(book.sheets.map((sheet) => sheet.name.toLowerCase()));
  let listSheetName = '_lists';
  while (taken.has(listSheetName)) listSheetName += '_';
  for (const sheet of book.sheets) {
    const to = workbook.getWorksheet(sheet.name) as exceljs.Worksheet & { dataValidations: RangeValidations };
    for (const list of sheet.lists) {
      to.dataValidations.add(rangeOf(list), {
        type: 'list',
        allowBlank: true,
        showErrorMessage: false,
        formulae: [inlineList(list.values) ?? placeLongList(list.values)],
      });
    }
  }
  if (longLists.size === 0) return;
  const listSheet = workbook.addWorksheet(listSheetName, { state: 'veryHidden' });
  for (const [key, column] of longLists) {
    (JSON.parse(key) as string[]).forEach(
      (value, row) => (listSheet.getCell(row + 1, column + 1).value = value),
    );
  }

  function placeLongList(values: readonly string[]): string {
    const key = JSON.stringify(values);
    const column = longLists.get(key) ?? longLists.size;
    longLists.set(key, column);
    const letters = columnLetters(column);
    return `${quoteSheet(listSheetName)}!$${letters}$1:$${letters}$${values.length}`;
  }
}

function inlineList(values: readonly string[]): string | null {
  const text = values.join(',');
  const isSafe = values.every((value) => !/[,"]/.test(value) && value.trim() === value && value !== '');
  return isSafe && text.length <= longestInline ? `"${text}"` : null;
}

function rangeOf({ row, column, rows, columns }: PickList): string {
  const first = cellAddress(row, column);
  return rows * columns === 1 ? first : `${first}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}
