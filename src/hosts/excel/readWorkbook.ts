/// <reference types="office-js" />

/** Everything the port reads. */
import {
  HostError,
  isCellError,
  type Area,
  type CellsRead,
  type SheetInfo,
  type TableRead,
} from '../../workbook/port';
import { areaOfReference } from './areaOfReference';
import { askExcel, errorCode } from './askExcel';
import { cellsRead, standingOf, type RawCells } from './cellContents';
import { hashText } from '../../workbook/hashText';
import { readCells } from './readCells';
import { isSameName, spanOf, type Survey } from './surveyWorkbook';

export function listSheets(survey: Survey): SheetInfo[] {
  return survey.sheets
    .filter(({ part, mark, visibility }) => !isHelp(part?.kind, mark !== null && visibility === 'VeryHidden'))
    .map(({ name, mark, isLocked, used }) => ({ name, mark, locked: isLocked, used }));
}

/** Sheets of a change that is not finished, and the one that holds our long lists: not for people. */
function isHelp(part: string | undefined, isOursVeryHidden: boolean): boolean {
  return part === 'journal' || part === 'made' || isOursVeryHidden;
}

/** In the order of the areas. @throws HostError */
export async function readAreas(excel: typeof Excel, areas: readonly Area[]): Promise<CellsRead[]> {
  const cells = await onSheet(areas[0]?.sheet ?? '', () => readCells(excel, areas));
  return cells.map(cellsRead);
}

/** @throws HostError */
export async function readTable(excel: typeof Excel, name: string): Promise<TableRead | null> {
  const found = await orNull(() =>
    askExcel(excel, 'read', ({ workbook }) => {
      const table = workbook.tables.getItem(name).load('name,showTotals,worksheet/name');
      const range = table.getRange().load('rowIndex,columnIndex,rowCount,columnCount');
      return () => ({
        name: table.name,
        sheet: table.worksheet.name,
        span: spanOf(range),
        hasTotals: table.showTotals,
      });
    }),
  );
  if (found === null) return null;
  const { span, sheet, hasTotals } = found;
  const area: Area = { sheet, ...span, rows: span.rows - (hasTotals ? 1 : 0) };
  const [read] = await readAreas(excel, [area]);
  const [headers = [], ...rows] = read?.values ?? [];
  return {
    name: found.name,
    area,
    headers: headers.map((header) => (isCellError(header) ? header.error : String(header ?? ''))),
    rows,
  };
}

/** In the order of the names. @throws HostError */
export async function locateNames(excel: typeof Excel, wanted: readonly string[]): Promise<(Area | null)[]> {
  const names = await askExcel(excel, 'read', ({ workbook }) => {
    const all = workbook.names.load('items/name,items/formula');
    return () => all.items.map((item) => ({ name: item.name, formula: String(item.formula) }));
  });
  return wanted.map((name) => {
    const found = names.find((each) => isSameName(each.name, name));
    return found === undefined ? null : areaOfReference(found.formula);
  });
}

/** @throws HostError */
export async function stampSheet(excel: typeof Excel, name: string): Promise<string> {
  const used = await onSheet(name, () =>
    askExcel(excel, 'read', ({ workbook }) => {
      const range = workbook.worksheets.getItem(name).getUsedRangeOrNullObject(true);
      range.load('rowIndex,columnIndex,rowCount,columnCount');
      return () => (range.isNullObject ? null : { sheet: name, ...spanOf(range) });
    }),
  );
  return stampOf(used, used === null ? null : ((await readCells(excel, [used]))[0] as RawCells));
}

/** Of what stands in the cells, not of what formulas make of it: a calculation under way changes nothing. */
export function stampOf(used: Area | null, cells: RawCells | null): string {
  if (used === null || cells === null) return hashText('');
  const parts = cells.values.flatMap((row, i) =>
    row.flatMap((value, j) => {
      const standing = standingOf(value, cells.formulas[i]?.[j] ?? '', cells.types[i]?.[j] ?? 'Empty');
      return standing === null ? [] : [`${used.row + i},${used.column + j},${JSON.stringify(standing)}`];
    }),
  );
  return hashText(parts.join('\n'));
}

async function onSheet<T>(sheet: string, read: () => Promise<T>): Promise<T> {
  const result = await orNull(read);
  if (result === null) throw new HostError({ code: 'noSuchSheet', sheet });
  return result;
}

/** null when what was asked for is not there. */
async function orNull<T>(read: () => Promise<T>): Promise<T | null> {
  try {
    return await read();
  } catch (error) {
    if (error instanceof HostError && errorCode(error.cause) === 'ItemNotFound') return null;
    throw error;
  }
}
