/** The words of the grid in a page: what its packages bring in the page's language, and what they leave out. */
import { LocaleType, merge, mergeLocales, type ILanguagePack, type ILocales } from '@univerjs/core';
import conditionalFormatting from '@univerjs/sheets-conditional-formatting-ui/locale/en-US';
import dataValidation from '@univerjs/sheets-data-validation-ui/locale/en-US';
import dataValidationCore from '@univerjs/sheets-data-validation/locale/en-US';
import design from '@univerjs/design/locale/en-US';
import docsUi from '@univerjs/docs-ui/locale/en-US';
import drawingUi from '@univerjs/drawing-ui/locale/en-US';
import formula from '@univerjs/sheets-formula/locale/en-US';
import formulaUi from '@univerjs/sheets-formula-ui/locale/en-US';
import noteUi from '@univerjs/sheets-note-ui/locale/en-US';
import numfmtUi from '@univerjs/sheets-numfmt-ui/locale/en-US';
import sheets from '@univerjs/sheets/locale/en-US';
import sheetsDrawingUi from '@univerjs/sheets-drawing-ui/locale/en-US';
import sheetsUi from '@univerjs/sheets-ui/locale/en-US';
import table from '@univerjs/sheets-table/locale/en-US';
import ui from '@univerjs/ui/locale/en-US';
import conditionalFormattingInSpanish from '@univerjs/sheets-conditional-formatting-ui/locale/es-ES';
import dataValidationInSpanish from '@univerjs/sheets-data-validation-ui/locale/es-ES';
import dataValidationCoreInSpanish from '@univerjs/sheets-data-validation/locale/es-ES';
import designInSpanish from '@univerjs/design/locale/es-ES';
import docsUiInSpanish from '@univerjs/docs-ui/locale/es-ES';
import drawingUiInSpanish from '@univerjs/drawing-ui/locale/es-ES';
import formulaInSpanish from '@univerjs/sheets-formula/locale/es-ES';
import formulaUiInSpanish from '@univerjs/sheets-formula-ui/locale/es-ES';
import noteUiInSpanish from '@univerjs/sheets-note-ui/locale/es-ES';
import numfmtUiInSpanish from '@univerjs/sheets-numfmt-ui/locale/es-ES';
import sheetsInSpanish from '@univerjs/sheets/locale/es-ES';
import sheetsDrawingUiInSpanish from '@univerjs/sheets-drawing-ui/locale/es-ES';
import sheetsUiInSpanish from '@univerjs/sheets-ui/locale/es-ES';
import tableInSpanish from '@univerjs/sheets-table/locale/es-ES';
import uiInSpanish from '@univerjs/ui/locale/es-ES';

const brought = [
  { en: design, es: designInSpanish },
  { en: ui, es: uiInSpanish },
  { en: docsUi, es: docsUiInSpanish },
  { en: sheets, es: sheetsInSpanish },
  { en: sheetsUi, es: sheetsUiInSpanish },
  { en: formula, es: formulaInSpanish },
  { en: formulaUi, es: formulaUiInSpanish },
  { en: numfmtUi, es: numfmtUiInSpanish },
  { en: dataValidationCore, es: dataValidationCoreInSpanish },
  { en: dataValidation, es: dataValidationInSpanish },
  { en: conditionalFormatting, es: conditionalFormattingInSpanish },
  { en: noteUi, es: noteUiInSpanish },
  { en: drawingUi, es: drawingUiInSpanish },
  { en: sheetsDrawingUi, es: sheetsDrawingUiInSpanish },
  { en: table, es: tableInSpanish },
];

/** The languages that the grid's own menus and messages are there in. */
export type GridLanguage = keyof (typeof brought)[number];

/**
 * All stand in the place of English: the engine's formats of numbers and dates go by that place, and must not change
 * with the words.
 *
 * @param added by the packages' own keys, beside what stands under them
 */
export function pageLocales(gridLanguage: GridLanguage, added: ILanguagePack): ILocales {
  const words = mergeLocales(...brought.map((pack) => pack[gridLanguage]));
  return { [LocaleType.EN_US]: merge({}, words, added) };
}
