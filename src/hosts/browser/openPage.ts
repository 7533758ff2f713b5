import { LifecycleService, LifecycleStages, type ILanguagePack, type ILocales } from '@univerjs/core';
import { UniverDocsPlugin } from '@univerjs/docs';
import { UniverDocsDrawingPlugin } from '@univerjs/docs-drawing';
import { UniverDocsUIPlugin } from '@univerjs/docs-ui';
import { UniverDrawingUIPlugin } from '@univerjs/drawing-ui';
import { UniverRenderEnginePlugin } from '@univerjs/engine-render';
import { UniverSheetsConditionalFormattingUIPlugin } from '@univerjs/sheets-conditional-formatting-ui';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import { UniverSheetsDrawingUIPlugin } from '@univerjs/sheets-drawing-ui';
import { UniverSheetsFormulaUIPlugin } from '@univerjs/sheets-formula-ui';
import { UniverSheetsNoteUIPlugin } from '@univerjs/sheets-note-ui';
import { UniverSheetsNumfmtUIPlugin } from '@univerjs/sheets-numfmt-ui';
import { IEditorBridgeService, ISheetClipboardService, UniverSheetsUIPlugin } from '@univerjs/sheets-ui';
import { ILayoutService, UniverUIPlugin } from '@univerjs/ui';
import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import '@univerjs/sheets-numfmt-ui/lib/index.css';
import '@univerjs/sheets-data-validation-ui/lib/index.css';
import '@univerjs/sheets-conditional-formatting-ui/lib/index.css';
import '@univerjs/sheets-note-ui/lib/index.css';
import '@univerjs/drawing-ui/lib/index.css';
import '@univerjs/sheets-drawing-ui/lib/index.css';
import type { FunctionHelp } from '../../workbook/functionHelp';
import type { DateWords } from '../../workbook/serialDate';
import { copySpilled } from './copySpilled';
import { describeFunctions } from './describeFunctions';
import { startEngine, type EngineShell, type WorkbookOptions } from './engine';
import { openWorkbook, type BrowserWorkbook } from './openWorkbook';
import { pageLocales, type GridLanguage } from './pageLocales';
import { plainPaste } from './plainPaste';
import { scrollIntoSight, scrollWhole } from './scrollIntoSight';
import { takeFittingNames } from './takeFittingNames';
import { TypingBridge } from './typingBridge';
import { readTypedDates } from './typedDates';

export interface PageWorkbook extends BrowserWorkbook {
  /** Gives the keyboard to the grid. */
  takeFocus(): void;
}

export interface PageOptions extends WorkbookOptions {
  readonly gridLanguage: GridLanguage;
  readonly help: readonly FunctionHelp[];
  /** What the grid says beyond its packages' own texts, by their keys. */
  readonly gridTexts: ILanguagePack;
  /** How people who read the page write a date. */
  readonly dates: DateWords;
}

/** The workbook in a page: the grid fills the container. */
export function openPage(options: PageOptions, container: HTMLElement): PageWorkbook {
  const engine = startEngine(
    options,
    pageShell(container, pageLocales(options.gridLanguage, options.gridTexts), options.dates),
  );
  describeFunctions(engine, options.help);
  takeFittingNames(engine.accessor);
  readTypedDates(engine.accessor, options.dates);
  copySpilled(engine);
  scrollWhole(engine.accessor, engine.workbook);
  // What scrolls is there only when the grid has been drawn once.
  const drawn = engine.accessor.get(LifecycleService).onStage(LifecycleStages.Rendered);
  const workbook = openWorkbook(engine, {
    onWrite: options.onWrite ?? (() => undefined),
    scrollTo: (range) => void drawn.then(() => scrollIntoSight(engine.accessor, engine.workbook, range)),
  });
  return { ...workbook, takeFocus: () => engine.accessor.get(ILayoutService).focus() };
}

/** Rendering comes before the core, what draws a feature after it. */
function pageShell(container: HTMLElement, locales: ILocales, dates: DateWords): EngineShell {
  return {
    locales,
    registerBefore(univer) {
      univer.registerPlugin(UniverRenderEnginePlugin);
      univer.registerPlugin(UniverUIPlugin, { container });
      univer.registerPlugin(UniverDocsPlugin);
      univer.registerPlugin(UniverDocsUIPlugin);
    },
    registerAfter(univer) {
      univer.registerPlugin(UniverSheetsUIPlugin, {
        override: [
          [IEditorBridgeService, { useClass: TypingBridge }],
          [ISheetClipboardService, { useClass: plainPaste(dates) }],
        ],
      });
      univer.registerPlugin(UniverSheetsFormulaUIPlugin);
      univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
      // The list opens while somebody types; a search box in it would take the keys from the cell.
      univer.registerPlugin(UniverSheetsDataValidationUIPlugin, {
        showSearchOnDropdown: false,
        showEditOnDropdown: false,
      });
      univer.registerPlugin(UniverSheetsConditionalFormattingUIPlugin);
      univer.registerPlugin(UniverSheetsNoteUIPlugin);
      univer.registerPlugin(UniverDocsDrawingPlugin);
      univer.registerPlugin(UniverDrawingUIPlugin);
      univer.registerPlugin(UniverSheetsDrawingUIPlugin);
    },
  };
}
