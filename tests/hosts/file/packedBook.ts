/**
 * Workbook files made by hand, after ECMA-376 part 1: what other programs may write and ours does not, and what none
 * should. A part given replaces the usual one.
 */
import { strToU8, zipSync, type Zippable } from 'fflate';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const related = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packaged = 'http://schemas.openxmlformats.org/package/2006/relationships';

export const sheetXml = (rows: string, more = ''): string =>
  `<worksheet xmlns="${main}" xmlns:r="${related}"><sheetData>${rows}</sheetData>${more}</worksheet>`;

const relations = (...entries: readonly (readonly [id: string, type: string, target: string])[]): string =>
  `<Relationships xmlns="${packaged}">${entries
    .map(([id, type, target]) => `<Relationship Id="${id}" Type="${related}/${type}" Target="${target}"/>`)
    .join('')}</Relationships>`;

export const workbookXml = (names = '', properties = ''): string =>
  `<workbook xmlns="${main}" xmlns:r="${related}"><workbookPr${properties}/><sheets><sheet name="Notes" sheetId="7" r:id="rId9"/><sheet name="Joe's plots" sheetId="3" r:id="rId1"/></sheets><definedNames><definedName name="_made_by_template" localSheetId="1" hidden="1">"plots 1"</definedName>${names}</definedNames></workbook>`;

export const tableXml = (ref: string, name = 'Plots'): string =>
  `<table xmlns="${main}" id="1" name="${name}" displayName="${name}" ref="${ref}"/>`;

export const parts: Readonly<Record<string, string>> = {
  '_rels/.rels': relations(['r', 'officeDocument', '/xl/workbook.xml']),
  'xl/workbook.xml': workbookXml(),
  'xl/_rels/workbook.xml.rels': relations(
    ['rId9', 'worksheet', 'worksheets/sheet1.xml'],
    ['rId1', 'worksheet', '/xl/worksheets/sheet2.xml'],
    ['rId4', 'sharedStrings', 'sharedStrings.xml'],
  ),
  'xl/worksheets/sheet1.xml': sheetXml(''),
  'xl/worksheets/sheet2.xml': sheetXml(''),
  'xl/worksheets/_rels/sheet2.xml.rels': relations(['rId1', 'table', '../tables/table1.xml']),
  'xl/tables/table1.xml': tableXml('A1:A2'),
};

export const tableParts = '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>';

export function packBook(changed: Readonly<Record<string, string | Uint8Array>> = {}): Uint8Array {
  const all = Object.entries({ ...parts, ...changed });
  const zippable: Zippable = Object.fromEntries(
    all.map(([name, part]) => [name, typeof part === 'string' ? strToU8(part) : part]),
  );
  return zipSync(zippable, { level: 6 });
}
