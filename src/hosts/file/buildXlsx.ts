import exceljs from 'exceljs';
import { isCellError, type Note, type ReadValue } from '../../workbook/port';
import { addLists } from './addLists';
import {
  isComputed,
  isSameName,
  spillsIn,
  type BookState,
  type SheetState,
  type TableState,
} from './bookState';
import { cellAddress } from '../../workbook/cellAddress';
import { numberInText, truthInText } from '../../workbook/evaluation/coerceValue';
import { collectNotes } from './collectNotes';
import { addRules, dressSheet, putFormat } from './dressSheet';
import type { Evaluation, Result } from './evaluate';
import { finishPackage } from './finishPackage';
import { fitRows } from './fitRows';
import { hasCall } from './hasCall';
import { storedFormulaAt } from './ourFormula';

/** Longer formulas no program takes; their values are stored. */
const longestFormula = 8192;

/** The bytes of the .xlsx. */
export async function buildXlsx(book: BookState, evaluation: Evaluation): Promise<Uint8Array> {
  const workbook = new exceljs.Workbook();
  const notes = book.sheets.map((sheet) => collectNotes(sheet, evaluation));
  book.sheets.forEach((sheet, index) => buildSheet(workbook, book, sheet, notes[index] ?? [], evaluation));
  addLists(workbook, book);
  // A file without any sheet is broken.
  if (book.sheets.length === 0) workbook.addWorksheet('Sheet1');
  const packed = await workbook.xlsx.writeBuffer({
    zip: { compression: 'STORE' },
  } as Partial<exceljs.XlsxWriteOptions>);
  return finishPackage(new Uint8Array(packed), book, notes);
}

function buildSheet(
  workbook: exceljs.Workbook,
  book: BookState,
  sheet: SheetState,
  notes: readonly Note[],
  evaluation: Evaluation,
): void {
  const to = workbook.addWorksheet(sheet.name, {
    views: [
      sheet.frozenRows + sheet.frozenColumns > 0
        ? { state: 'frozen', xSplit: sheet.frozenColumns, ySplit: sheet.frozenRows }
        : { state: 'normal' },
    ],
    pageSetup: {
      orientation: sheet.page.landscape ? 'landscape' : 'portrait',
      fitToPage: true,
      fitToWidth: sheet.page.pagesWide,
      fitToHeight: 0,
      margins: { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    // Sheet name, page and number of pages, in no language.
    headerFooter: { oddFooter: '&L&A&R&P / &N' },
  });
  sheet.widths.forEach((width, column) => (to.getColumn(column + 1).width = width));
  for (const table of sheet.tables) addTable(to, table);
  // Styles first: a value that needs a format of its own then changes only its cell.
  dressSheet(to, sheet);
  addRules(to, sheet);
  sheet.cells.forEach((cells, row) =>
    cells?.forEach((content, column) => {
      if (content === undefined || content === null) return;
      const cell = to.getCell(row + 1, column + 1);
      const result = evaluation.result(sheet, row, column);
      const formula =
        isComputed(content) && !hasCall(content.compute)
          ? storedFormulaAt(sheet, row, column, content.compute)
          : null;
      if (formula !== null && formula.length <= longestFormula) putFormula(cell, formula, result);
      else putValue(cell, result);
    }),
  );
  for (const { row, column } of spillsIn(sheet)) {
    const { list = [] } = evaluation.result(sheet, row, column);
    list.forEach((values, down) =>
      values.forEach((value, across) => {
        const cell = to.getCell(row + down + 1, column + across + 1);
        if (value !== null) putValue(cell, { value, pattern: null });
      }),
    );
  }
  fitRows(to, sheet, evaluation);
  for (const { row, column, text } of notes) {
    to.getCell(row + 1, column + 1).note = { texts: [{ text, font: { name: 'Calibri', size: 10 } }] };
  }
  for (const picture of book.pictures.filter((each) => isSameName(each.sheet, sheet.name))) {
    const image = workbook.addImage({
      base64: Buffer.from(picture.png).toString('base64'),
      extension: 'png',
    });
    to.addImage(image, {
      tl: { col: picture.column, row: picture.row },
      ext: { width: picture.widthPx, height: picture.heightPx },
      editAs: 'oneCell',
    });
  }
}

/** The library writes its own cells into the table's range; they are overwritten after. */
function addTable(to: exceljs.Worksheet, table: TableState): void {
  to.addTable({
    name: table.name,
    ref: cellAddress(table.row, table.column),
    headerRow: true,
    style: { theme: 'TableStyleLight1', showRowStripes: true },
    columns: table.headers.map((name) => ({ name, filterButton: true })),
    // A table of headers alone is a broken file to Excel.
    rows: Array.from({ length: Math.max(1, table.rows - 1) }, () => table.headers.map(() => null)),
  });
}

function putFormula(cell: exceljs.Cell, formula: string, { value }: Result): void {
  cell.value = { formula: formula.slice(1), result: storedValue(value) } as exceljs.CellFormulaValue;
}

function putValue(cell: exceljs.Cell, { value, pattern }: Result): void {
  cell.value = storedValue(value);
  const isGeneral = (cell.numFmt ?? 'General') === 'General';
  if (pattern !== null && isGeneral) putFormat(cell, pattern);
  // Entered anew, such a text would become a number or a formula; the text format keeps it.
  if (typeof value === 'string' && isGeneral && looksComputed(value)) putFormat(cell, '@');
}

function looksComputed(text: string): boolean {
  return (
    /^\s*[=+\-@]/.test(text) ||
    numberInText(text) !== null ||
    truthInText(text) !== null ||
    /^\d+[/:-]/.test(text)
  );
}

/** What no file has a code for. */
const storedErrors: Readonly<Record<string, string>> = { '#CYCLE!': '#REF!', '#SPILL!': '#VALUE!' };

function storedValue(value: ReadValue): exceljs.CellValue {
  if (isCellError(value)) {
    return { error: storedErrors[value.error] ?? value.error } as exceljs.CellErrorValue;
  }
  // What looks like an escaped character in a text would be read as that character.
  return typeof value === 'string' ? value.replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_') : value;
}
