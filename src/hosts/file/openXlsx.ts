/** An .xlsx to read plans from: our sheets in it, whichever program saved it last. Nothing else of it is looked at. */
import { mostFileBytes } from '../../workbook/fileLimits';
import { HostError, type Area, type ReadValue, type Span } from '../../workbook/port';
import type { ReadableBook } from '../../workbook/readFilling';
import { isSameName } from './bookState';
import { readPackage } from './readPackage';
import { mostCells, readSheetCells, type SheetCells } from './readSheetCells';
import { readTexts } from './readTexts';
import { readWorkbookParts } from './readWorkbookParts';
import { isEncrypted, tooBig } from './refusals';

/** Days from the first day of the 1900 date system to that of the 1904 one (ECMA-376 part 1, 18.17.4.1). */
const daysTo1904 = 1462;

/** @throws HostError */
export function openXlsx(bytes: Uint8Array): ReadableBook {
  if (bytes.length > mostFileBytes) throw tooBig(`${bytes.length} bytes`);
  refuseOtherKinds(bytes);
  const parts = readPackage(bytes);
  const book = readWorkbookParts(parts);
  const ours = book.sheets.filter(({ mark }) => mark !== null);
  const texts = ours.length === 0 ? [] : readTexts(parts, book.texts);
  const sheets = ours.map(({ name, part }) => ({ name, ...readSheetCells(parts, part, texts) }));
  const sheetNamed = (name: string): (typeof sheets)[number] | undefined =>
    sheets.find((sheet) => isSameName(sheet.name, name));

  return {
    daysToAdd: book.is1904 ? daysTo1904 : 0,
    sheets: async () =>
      book.sheets.map(({ name, mark }) => ({ name, mark, locked: false, used: usedOf(sheetNamed(name)) })),
    async read(area) {
      const sheet = sheetNamed(area.sheet);
      if (sheet === undefined) throw new HostError({ code: 'noSuchSheet', sheet: area.sheet });
      const formulas = cellsOf(area, (row, column) => sheet.formulas.get(row)?.get(column) ?? null);
      return { values: valuesIn(sheet, area), formulas };
    },
    async readTable(name) {
      const found = sheets.flatMap((sheet) => {
        const table = sheet.tables.find((one) => isSameName(one.name, name));
        return table === undefined ? [] : [{ sheet, table }];
      })[0];
      if (found === undefined) return null;
      const { sheet, table } = found;
      const area = { sheet: sheet.name, ...asLongAsThere(table, sheet) };
      const [headers = [], ...rows] = valuesIn(sheet, area);
      return { name: table.name, area, headers: headers.map((header) => String(header ?? '')), rows };
    },
    async locate(name) {
      const place = book.names.find(
        (one) => isSameName(one.name, name) && sheetNamed(one.sheet) !== undefined,
      );
      if (place === undefined) return null;
      return { sheet: place.sheet, row: place.row, column: place.column, rows: 1, columns: 1 };
    },
  };
}

const ofCompound = [0xd0, 0xcf, 0x11, 0xe0];
const ofZip = [0x50, 0x4b];

/** By its first bytes, not by its name. */
function refuseOtherKinds(bytes: Uint8Array): void {
  const begins = (signature: readonly number[]): boolean =>
    signature.every((byte, index) => bytes[index] === byte);
  // In the old compound file an .xlsx with a password is wrapped as well.
  if (begins(ofCompound)) {
    if (
      new TextDecoder('utf-16le').decode(bytes.subarray(0, bytes.length & ~1)).includes('EncryptedPackage')
    ) {
      throw isEncrypted();
    }
    throw new HostError({ code: 'fileOtherKind', kind: '.xls' });
  }
  if (!begins(ofZip)) throw new HostError({ code: 'fileNoWorkbook' });
}

/** null where nothing of the sheet is read, or there is nothing. */
function usedOf(sheet: (SheetCells & { readonly name: string }) | undefined): Area | null {
  if (sheet === undefined || sheet.lastRow < 0) return null;
  return { sheet: sheet.name, row: 0, column: 0, rows: sheet.lastRow + 1, columns: sheet.lastColumn + 1 };
}

/** A table may say that it is a million rows long. */
function asLongAsThere(table: Span, { lastRow, lastColumn }: SheetCells): Span {
  const rows = Math.max(1, Math.min(table.rows, lastRow - table.row + 1));
  const columns = Math.max(1, Math.min(table.columns, lastColumn - table.column + 1));
  if (rows * columns > mostCells) throw tooBig(`a table of ${rows} rows and ${columns} columns`);
  return { row: table.row, column: table.column, rows, columns };
}

function valuesIn(sheet: SheetCells, span: Span): ReadValue[][] {
  return cellsOf(span, (row, column) => sheet.values.get(row)?.get(column) ?? null);
}

function cellsOf<Cell>(span: Span, cell: (row: number, column: number) => Cell): Cell[][] {
  return Array.from({ length: span.rows }, (_, i) =>
    Array.from({ length: span.columns }, (__, j) => cell(span.row + i, span.column + j)),
  );
}
