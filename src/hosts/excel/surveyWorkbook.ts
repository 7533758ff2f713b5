/// <reference types="office-js" />

/** What there is in the workbook besides cells: two requests, however many sheets. */
import { HostError, type Area, type Mark, type Span } from '../../workbook/port';
import { markName, readCellName, readMark } from '../../workbook/sheetMark';
import { areaOfReference, isDeadReference } from './areaOfReference';
import { askExcel } from './askExcel';
import { partName, readPart, type Part } from './sheetPart';

export interface SheetSurvey {
  readonly name: string;
  readonly visibility: string;
  readonly isLocked: boolean;
  readonly mark: Mark | null;
  /** False where it is known by the name of a cell. */
  readonly hasMarkOfItsOwn: boolean;
  /** What the sheet is to a change that is under way, or was cut off. */
  readonly part: Part | null;
  readonly used: Area | null;
}

export interface TableSurvey {
  readonly name: string;
  readonly sheet: string;
  /** Headers and totals included. */
  readonly span: Span;
  readonly hasTotals: boolean;
}

export interface Survey {
  readonly isLocked: boolean;
  readonly sheets: readonly SheetSurvey[];
  readonly tables: readonly TableSurvey[];
  readonly names: readonly NameSurvey[];
}

export interface NameSurvey {
  readonly name: string;
  /** null for a name of something else than cells, or of cells that are gone. */
  readonly area: Area | null;
  /** Only what mentions it still holds on to it: it may be given a cell again. */
  readonly isDead: boolean;
}

/** @throws HostError */
export async function surveyWorkbook(excel: typeof Excel): Promise<Survey> {
  const outline = await askExcel(excel, 'read', ({ workbook }) => {
    const sheets = workbook.worksheets.load('items/name,items/visibility,items/protection/protected');
    const tables = workbook.tables.load('items/name,items/showTotals,items/worksheet/name');
    const names = workbook.names.load('items/name,items/formula');
    const protection = workbook.protection.load('protected');
    return () => ({
      isLocked: protection.protected,
      sheets: sheets.items.map((sheet) => ({
        name: sheet.name,
        visibility: sheet.visibility as string,
        isLocked: sheet.protection.protected,
      })),
      tables: tables.items.map((table) => ({
        name: table.name,
        sheet: table.worksheet.name,
        hasTotals: table.showTotals,
      })),
      names: names.items.map(({ name, formula }) => ({
        name,
        area: areaOfReference(String(formula)),
        isDead: isDeadReference(String(formula)),
      })),
    });
  });
  return askExcel(excel, 'read', ({ workbook }) => {
    const sheets = outline.sheets.map(({ name }) => {
      const sheet = workbook.worksheets.getItem(name);
      return {
        mark: sheet.names.getItemOrNullObject(markName).load('formula'),
        part: sheet.names.getItemOrNullObject(partName).load('formula'),
        used: sheet.getUsedRangeOrNullObject(true).load('rowIndex,columnIndex,rowCount,columnCount'),
      };
    });
    const ranges = outline.tables.map(({ name }) =>
      workbook.tables.getItem(name).getRange().load('rowIndex,columnIndex,rowCount,columnCount'),
    );
    return () => ({
      ...outline,
      sheets: outline.sheets.map((sheet, i) => {
        const { mark, part, used } = sheets[i] as (typeof sheets)[number];
        return {
          ...sheet,
          mark: mark.isNullObject ? markOfCell(outline.names, sheet.name) : readMark(String(mark.formula)),
          hasMarkOfItsOwn: !mark.isNullObject,
          part: part.isNullObject ? null : readPart(String(part.formula)),
          used: used.isNullObject ? null : usedFromA1(sheet.name, used),
        };
      }),
      tables: outline.tables.map((table, i) => ({ ...table, span: spanOf(ranges[i] as Excel.Range) })),
    });
  });
}

function markOfCell(names: readonly NameSurvey[], sheet: string): Mark | null {
  const inSheet = names.filter(({ area }) => area !== null && isSameName(area.sheet, sheet));
  return inSheet.map(({ name }) => readCellName(name)).find((mark) => mark !== null) ?? null;
}

export function spanOf(range: Excel.Range): Span {
  return { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };
}

function usedFromA1(sheet: string, range: Excel.Range): Area {
  const { row, column, rows, columns } = spanOf(range);
  return { sheet, row: 0, column: 0, rows: row + rows, columns: column + columns };
}

export const isSameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** @throws HostError */
export function demandSheet(survey: Survey, name: string): SheetSurvey {
  const sheet = survey.sheets.find((each) => isSameName(each.name, name));
  if (sheet === undefined) throw new HostError({ code: 'noSuchSheet', sheet: name });
  return sheet;
}
