import { SheetClipboardService } from '@univerjs/sheets-ui';

/**
 * What is pasted into the grid. Of a text of several cells the grid makes a piece of HTML, and took tags and "<" in
 * the text for its own: they were gone, and lines after them too. Whatever stands in a text is text.
 */
export class PlainPaste extends SheetClipboardService {
  override legacyPaste(html?: string, text?: string, files?: File[]): Promise<boolean> {
    const isOfCells = !html && text !== undefined && /[\n\t]/.test(text);
    return super.legacyPaste(html, isOfCells ? escapeMarks(text) : text, files);
  }
}

function escapeMarks(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
