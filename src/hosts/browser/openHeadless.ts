import { startEngine, type WorkbookOptions } from './engine';
import { openWorkbook, type BrowserWorkbook } from './openWorkbook';

/** The workbook without a screen: the same engine in Node. */
export function openHeadless(options: WorkbookOptions): BrowserWorkbook {
  return openWorkbook(startEngine(options, null), {
    onWrite: options.onWrite ?? (() => undefined),
    scrollTo: () => undefined,
  });
}
