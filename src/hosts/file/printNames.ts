import type { BookState, SheetState } from './bookState';
import { columnLetters, quoteSheet } from '../../workbook/cellAddress';
import { escapeXml } from './escapeXml';

/** The sheet-wide hidden name that holds which template made a sheet, as "id version". */
const markName = '_made_by_template';

/**
 * The workbook's names. The mark is a name of its sheet: it goes along when the sheet is renamed, copied or moved
 * and goes away with it; every spreadsheet program keeps names.
 */
export function printNames(book: BookState): string {
  const names = book.sheets.flatMap((sheet, index) => [
    ...sheet.names.map(({ name, row, column }) => {
      const place = `${quoteSheet(sheet.name)}!$${columnLetters(column)}$${row + 1}`;
      return `<definedName name="${escapeXml(name)}">${escapeXml(place)}</definedName>`;
    }),
    printLocalName('_xlnm.Print_Titles', index, printTitles(sheet)),
    printLocalName(markName, index, `"${sheet.mark.template} ${sheet.mark.version}"`, ' hidden="1"'),
  ]);
  return `<definedNames>${names.join('')}</definedNames>`;
}

function printLocalName(name: string, sheetIndex: number, value: string, more = ''): string {
  if (value === '') return '';
  return `<definedName name="${name}" localSheetId="${sheetIndex}"${more}>${escapeXml(value)}</definedName>`;
}

function printTitles(sheet: SheetState): string {
  const { repeatRows, repeatColumns } = sheet.page;
  const place = (first: string, last: string): string => `${quoteSheet(sheet.name)}!$${first}:$${last}`;
  return [
    repeatColumns && place(columnLetters(repeatColumns[0]), columnLetters(repeatColumns[1])),
    repeatRows && place(String(repeatRows[0] + 1), String(repeatRows[1] + 1)),
  ]
    .filter((part) => part !== null)
    .join(',');
}
