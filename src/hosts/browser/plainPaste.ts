import { SheetClipboardService } from '@univerjs/sheets-ui';
import type { DateWords } from '../../workbook/serialDate';
import { inOneMeaning } from './typedDates';

/**
 * What is pasted into the grid. Of a text of several cells the grid makes a piece of HTML, and took tags and "<" in
 * the text for its own: they were gone, and lines after them too. Whatever stands in a text is text. Dates are read as
 * those that are typed.
 */
export function plainPaste(dates: DateWords): typeof SheetClipboardService {
  return class extends SheetClipboardService {
    override legacyPaste(html?: string, text?: string, files?: File[]): Promise<boolean> {
      if (html) return super.legacyPaste(datesInTable(html, dates), text, files);
      const given = text?.replace(/[^\t\r\n]+/g, (cell) => inOneMeaning(cell, dates));
      const isOfCells = given !== undefined && /[\n\t]/.test(given);
      return super.legacyPaste(html, isOfCells ? escapeMarks(given) : given, files);
    }
  };
}

/** As it was, where none of its cells is a date that is read otherwise. */
function datesInTable(html: string, dates: DateWords): string {
  const page = new DOMParser().parseFromString(html, 'text/html');
  let isChanged = false;
  for (const cell of page.querySelectorAll('td, th')) {
    const read = inOneMeaning(cell.textContent, dates);
    if (read === cell.textContent) continue;
    cell.textContent = read;
    isChanged = true;
  }
  return isChanged ? page.documentElement.outerHTML : html;
}

function escapeMarks(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
