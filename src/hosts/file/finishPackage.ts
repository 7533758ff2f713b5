import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Note } from '../../workbook/port';
import { isSameName, type BookState, type TableState } from './bookState';
import { escapeXml } from './escapeXml';
import { hasCall } from './hasCall';
import { formulaInTable } from './ourFormula';
import { printNames } from './printNames';
import { sizeNotes } from './sizeNotes';

/**
 * Puts into the written package what the library cannot write: alt texts, readable note boxes, names that belong to
 * a sheet, and the formula that a table gives to a new row.
 */
export function finishPackage(
  packed: Uint8Array,
  book: BookState,
  notes: readonly (readonly Note[])[],
): Uint8Array {
  const parts = unzipSync(packed);
  const rewrite = (path: string, edit: (xml: string) => string): void => {
    const part = parts[path];
    if (part === undefined) throw new Error(`no part ${path}`);
    const edited = edit(strFromU8(part));
    parts[path] = strToU8(edited);
  };
  rewrite('xl/workbook.xml', (xml) =>
    xml
      .replace(/<definedNames>[\s\S]*?<\/definedNames>/, '')
      .replace('<calcPr', `${printNames(book)}<calcPr`),
  );
  let table = 0;
  let drawing = 0;
  book.sheets.forEach((sheet, index) => {
    // The library numbers notes by sheet, tables one by one, drawings by the sheets that have one.
    const sheetNotes = notes[index] ?? [];
    if (sheetNotes.length > 0) {
      rewrite(`xl/drawings/vmlDrawing${index + 1}.vml`, (vml) => sizeNotes(vml, sheetNotes, sheet.widths));
      rewrite(`xl/comments${index + 1}.xml`, (xml) =>
        xml.replace('<author>Author</author>', '<author></author>'),
      );
    }
    for (const each of sheet.tables) {
      rewrite(`xl/tables/table${++table}.xml`, (xml) => finishTable(xml, each));
    }
    const altTexts = book.pictures
      .filter((each) => isSameName(each.sheet, sheet.name))
      .map((each) => each.altText);
    if (altTexts.length > 0) {
      rewrite(`xl/drawings/drawing${++drawing}.xml`, (xml) => putAltTexts(xml, altTexts));
    }
  });
  return zipSync(parts, { level: 6 });
}

/**
 * A filter button on every column goes without saying. Where it is said, exceljs 4.4 cannot read a table with a formula
 * in a column: it takes the formula's end for that of all columns.
 */
function finishTable(xml: string, table: TableState): string {
  const grows = table.grows ?? [];
  return xml
    .replace(' totalsRowShown="1"', ' totalsRowShown="0"')
    .replace(/ totalsRow(Label|Function)="[^"]*"/g, '')
    .replace(/<filterColumn colId="\d+" hiddenButton="0"\/>/g, '')
    .replace(/<tableColumn id="(\d+)"([^>]*?)\/>/g, (column: string, id: string, more: string) => {
      const compute = grows[Number(id) - 1] ?? null;
      if (compute === null || hasCall(compute)) return column;
      const formula = escapeXml(formulaInTable(table, compute).slice(1));
      return `<tableColumn id="${id}"${more}><calculatedColumnFormula>${formula}</calculatedColumnFormula></tableColumn>`;
    });
}

function putAltTexts(xml: string, altTexts: readonly string[]): string {
  let next = 0;
  return xml.replace(/<xdr:cNvPr id="\d+" name="[^"]*"/g, (start) => {
    const altText = altTexts[next++];
    return altText === undefined ? start : `${start} descr="${escapeXml(altText)}"`;
  });
}
