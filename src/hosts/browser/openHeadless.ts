import { FormulaCalculationSessionController, TriggerCalculationController } from '@univerjs/sheets-formula';
import { startEngine, type WorkbookOptions } from './engine';
import { openWorkbook, type BrowserWorkbook } from './openWorkbook';

/** The workbook without a screen: the same engine in Node, and behind the page. */
export function openHeadless(options: WorkbookOptions): BrowserWorkbook {
  const engine = startEngine(options, null);
  // In a browser the engine waits with calculating for its first picture, and there is none here.
  engine.accessor.get(TriggerCalculationController);
  engine.accessor.get(FormulaCalculationSessionController);
  return openWorkbook(engine, {
    onWrite: options.onWrite ?? (() => undefined),
    scrollTo: () => undefined,
  });
}
