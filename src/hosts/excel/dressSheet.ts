/// <reference types="office-js" />

/** Looks, widths, lists, notes and print set-up of a new sheet. */
import { borderColor, formatCodes, isIndented, looks } from '../../workbook/appearance';
import type { Area, Dressing, Format, NewSheet, PickList, TableShape } from '../../workbook/port';
import { cellAddress, columnLetters } from '../../workbook/cellAddress';
import type { ExcelFeature } from './excelFeatures';
import { rangeOf } from './readCells';
import { putRule } from './ruleSteps';
import { step, type WriteStep } from './writeSteps';

const pointsPerPixel = 0.75;
const pixelsPerCharacter = 7;
const paddingPixels = 5;
const pointsPerInch = 72;

/** Free rows under a growing table that take texts as texts: a plot 007 must not become a number before its row does. */
const preparedRows = 500;

export function dressingSteps(at: string, sheet: NewSheet, lacks: readonly ExcelFeature[]): WriteStep[] {
  return [
    ...sheet.dressings.map((dressing) =>
      step(18, (context) => dress(rangeOf(context, { sheet: at, ...dressing }), dressing)),
    ),
    ...sheet.rules.map((rule) =>
      step(6, (context) => putRule(rangeOf(context, { sheet: at, ...rule }), rule)),
    ),
    ...sheet.tables.flatMap((table) => prepareSteps(at, sheet, table)),
    ...sheet.widths.map((characters, column) =>
      step(1, (context) => {
        const range = rangeOf(context, { sheet: at, row: 0, column, rows: 1, columns: 1 });
        range.format.columnWidth = (characters * pixelsPerCharacter + paddingPixels) * pointsPerPixel;
      }),
    ),
    step(12, (context) => setUpPage(context.workbook.worksheets.getItem(at), sheet)),
    ...(lacks.includes('notes') ? [] : noteSteps(at, sheet)),
  ];
}

/** After the cells are there: rows grow with the texts that wrap. */
export function fittingSteps(at: string, sheet: NewSheet): WriteStep[] {
  return sheet.dressings
    .filter(({ role }) => looks[role].wrap)
    .map((dressing) =>
      step(1, (context) => rangeOf(context, { sheet: at, ...dressing }).format.autofitRows()),
    );
}

function dress(range: Excel.Range, dressing: Dressing): void {
  const look = looks[dressing.role];
  setFormat(range, formatOf(dressing));
  const { font, fill, borders } = range.format;
  font.bold = look.bold;
  font.italic = look.italic;
  font.size = look.sizePt;
  font.color = `#${look.color}`;
  if (look.fill !== null) fill.color = `#${look.fill}`;
  range.format.wrapText = look.wrap;
  range.format.verticalAlignment = 'Center';
  if (look.centred) range.format.horizontalAlignment = 'Center';
  if (isIndented(dressing)) {
    range.format.horizontalAlignment = 'Left';
    range.format.indentLevel = 1;
  }
  if (!look.border) return;
  for (const side of sidesOf(dressing)) {
    const border = borders.getItem(side);
    border.style = 'Continuous';
    border.color = `#${borderColor}`;
  }
}

function sidesOf({ rows, columns }: Dressing) {
  return [
    ...(['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] as const),
    ...(rows > 1 ? (['InsideHorizontal'] as const) : []),
    ...(columns > 1 ? (['InsideVertical'] as const) : []),
  ];
}

/** A formula entered into a cell of text format would stay a text. */
function formatOf({ role, format }: Dressing): Format {
  return (role === 'computed' || role === 'prose') && format === 'text' ? 'general' : format;
}

/** One code for the whole range: documented under "Update all cells in a range", though not in the types. */
function setFormat(range: Excel.Range, format: Format): void {
  (range as { numberFormat: unknown }).numberFormat = formatCodes[format];
}

function prepareSteps(at: string, sheet: NewSheet, table: TableShape): WriteStep[] {
  if (table.grows === null) return [];
  const row = table.row + table.rows;
  return sheet.dressings
    .filter((dressing) => formatOf(dressing) === 'text' && dressing.row + dressing.rows === row)
    .map(({ column, columns }) => {
      const free: Area = { sheet: at, row, column, rows: preparedRows, columns };
      return step(1, (context) => setFormat(rangeOf(context, free), 'text'));
    });
}

function setUpPage(worksheet: Excel.Worksheet, { page, frozenRows, frozenColumns }: NewSheet): void {
  const { pageLayout, freezePanes } = worksheet;
  if (frozenRows > 0 && frozenColumns > 0) {
    freezePanes.freezeAt(worksheet.getRangeByIndexes(0, 0, frozenRows, frozenColumns));
  } else if (frozenRows > 0) freezePanes.freezeRows(frozenRows);
  else if (frozenColumns > 0) freezePanes.freezeColumns(frozenColumns);
  pageLayout.orientation = page.landscape ? 'Landscape' : 'Portrait';
  pageLayout.zoom = { horizontalFitToPages: page.pagesWide };
  pageLayout.leftMargin = pageLayout.rightMargin = 0.4 * pointsPerInch;
  pageLayout.topMargin = 0.5 * pointsPerInch;
  pageLayout.bottomMargin = 0.6 * pointsPerInch;
  // Sheet name, page and number of pages, in no language.
  pageLayout.headersFooters.defaultForAllPages.leftFooter = '&A';
  pageLayout.headersFooters.defaultForAllPages.rightFooter = '&P / &N';
  if (page.repeatRows !== null) {
    const [first, last] = page.repeatRows;
    pageLayout.setPrintTitleRows(`$${first + 1}:$${last + 1}`);
  }
  if (page.repeatColumns !== null) {
    const [first, last] = page.repeatColumns;
    pageLayout.setPrintTitleColumns(`$${columnLetters(first)}:$${columnLetters(last)}`);
  }
}

function noteSteps(at: string, sheet: NewSheet): WriteStep[] {
  return sheet.notes.map(({ row, column, text }) => ({
    bytes: 400 + 3 * text.length,
    write(context) {
      const { notes } = context.workbook.worksheets.getItem(at);
      notes.add(cellAddress(row, column), text);
    },
  }));
}

/** Other entries are let in: functions say what is wrong with them. */
export function putList(range: Excel.Range, source: string | Excel.Range): void {
  range.dataValidation.rule = { list: { inCellDropDown: true, source } };
  range.dataValidation.errorAlert = { showAlert: false, style: 'Information', title: '', message: '' };
}

/** Excel takes a list of no more than 255 characters as such, and its commas divide. */
export function inlineList({ values }: PickList): string | null {
  const text = values.join(',');
  const isSafe = values.every((value) => !/[,"]/.test(value) && value.trim() === value && value !== '');
  return isSafe && text.length <= 255 ? text : null;
}
