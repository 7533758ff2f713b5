import type { BookState, SheetState } from './bookState';
import { absoluteAddress, columnLetters, quoteSheet } from '../../workbook/cellAddress';
import { cellNameOf, markName, printMark } from '../../workbook/sheetMark';
import { escapeXml } from './escapeXml';

/** The workbook's names, each sheet's mark among them. */
export function printNames(book: BookState): string {
  const names = book.sheets.flatMap((sheet, index) => [
    ...sheet.names.map(({ name, row, column, rows }) => {
      const place = absoluteAddress(sheet.name, row, column, rows);
      return `<definedName name="${escapeXml(name)}">${escapeXml(place)}</definedName>`;
    }),
    printLocalName('_xlnm.Print_Titles', index, printTitles(sheet)),
    printLocalName(markName, index, printMark(sheet.mark), ' hidden="1"'),
    `<definedName name="${cellNameOf(sheet.mark)}" hidden="1">${escapeXml(absoluteAddress(sheet.name, 0, 0))}</definedName>`,
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
