/** The words of the grid in a page: what its packages bring, and what they leave out. */
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

const brought = mergeLocales(
  design,
  ui,
  docsUi,
  sheets,
  sheetsUi,
  formula,
  formulaUi,
  numfmtUi,
  dataValidationCore,
  dataValidation,
  conditionalFormatting,
  noteUi,
  drawingUi,
  sheetsDrawingUi,
  table,
);

/** @param added by the packages' own keys, beside what stands under them */
export function pageLocales(added: ILanguagePack): ILocales {
  return { [LocaleType.EN_US]: merge({}, brought, added) };
}
