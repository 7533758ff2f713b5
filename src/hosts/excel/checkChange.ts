/** Refuses a change that cannot be made whole, before anything is written, and reads what it will write over. */
import { HostError, isCarried, type Area, type Change, type HostProblem } from '../../workbook/port';
import type { RawCells } from './cellContents';
import type { ExcelFeature } from './excelFeatures';
import { readCells } from './readCells';
import { findRules } from './ruleSteps';
import { stampOf } from './readWorkbook';
import { demandSheet, isSameName, type SheetSurvey, type Survey, type TableSurvey } from './surveyWorkbook';

/** Rows to put under one table; a table named twice gets all its rows at once. */
export interface Growth {
  readonly table: TableSurvey;
  readonly rows: Change['tableRows'][number]['rows'];
  /** The cells that the rows will take. */
  readonly free: Area;
}

export interface Checked {
  /** What stands in the areas of `change.cells`, in their order. */
  readonly standing: readonly RawCells[];
  readonly growths: readonly Growth[];
  /** Those that are not there. */
  readonly rules: NonNullable<Change['rules']>;
  /** What stands where cells are carried from. */
  readonly carried: readonly { readonly area: Area; readonly cells: RawCells }[];
}

/** @throws HostError */
export async function checkChange(
  excel: typeof Excel,
  survey: Survey,
  lacks: readonly ExcelFeature[],
  change: Change,
): Promise<Checked> {
  const wants = (feature: ExcelFeature, count: number): void => {
    if (count > 0 && lacks.includes(feature)) refuse({ code: 'programTooOld' });
  };
  wants('tableRows', change.tableRows.length);
  wants('pictures', change.pictures.length);
  const expected = change.expect.map(({ sheet }) => demandSheet(survey, sheet));
  checkNewSheets(survey, change);
  const areas = change.cells.map(({ sheet, row, column, contents }): Area => {
    const columns = contents[0]?.length ?? 0;
    if (contents.some((line) => line.length !== columns))
      throw new RangeError('a block that is no rectangle');
    return { sheet: demandOpenSheet(survey, sheet).name, row, column, rows: contents.length, columns };
  });
  for (const { sheet } of change.marks) {
    if (demandOpenSheet(survey, sheet).mark === null) throw new RangeError(`${sheet} has no mark`);
  }
  const rules = (change.rules ?? []).map((rule) => ({
    ...rule,
    sheet: demandOpenSheet(survey, rule.sheet).name,
  }));
  const growths = groupGrowths(survey, change);
  for (const { sheet } of change.pictures) {
    if (!change.newSheets.some((each) => isSameName(each.name, sheet))) demandOpenSheet(survey, sheet);
  }
  if (survey.isLocked) refuse({ code: 'workbookLocked' });

  const used = expected.flatMap((sheet) => sheet.used ?? []);
  const origins = [
    ...change.cells.flatMap(({ contents }, i) => originOf(areas[i] as Area, contents) ?? []),
    ...growths.flatMap(({ free, rows }) => originOf(free, rows) ?? []),
  ];
  const cells = await readCells(excel, [...used, ...growths.map(({ free }) => free), ...areas, ...origins]);
  const stamps = cells.splice(0, used.length);
  change.expect.forEach(({ sheet, stamp }, i) => {
    const area = expected[i]?.used ?? null;
    if (stampOf(area, area === null ? null : (stamps.shift() ?? null)) !== stamp) {
      refuse({ code: 'changedMeanwhile', sheet });
    }
  });
  cells.splice(0, growths.length).forEach((free, i) => checkFree(survey, growths[i] as Growth, free));
  const standing = cells.splice(0, areas.length);
  const there = await findRules(excel, rules);
  return {
    standing,
    growths,
    rules: rules.filter((_, i) => there[i]?.length === 0),
    carried: origins.map((area, i) => ({ area, cells: cells[i] as RawCells })),
  };
}

/** The rows, in the columns of the area, that its cells are carried from; null where none is. */
function originOf(area: Area, contents: Growth['rows']): Area | null {
  const rows = contents.flat().flatMap((content) => (isCarried(content) ? [content.carriedFrom] : []));
  if (rows.length === 0) return null;
  const row = rows.reduce((least, each) => Math.min(least, each));
  return { ...area, row, rows: rows.reduce((most, each) => Math.max(most, each)) - row + 1 };
}

function refuse(problem: HostProblem): never {
  throw new HostError(problem);
}

function demandOpenSheet(survey: Survey, name: string): SheetSurvey {
  const sheet = demandSheet(survey, name);
  return sheet.isLocked ? refuse({ code: 'sheetLocked', sheet: sheet.name }) : sheet;
}

/** Tables and named cells share one space of names. */
function checkNewSheets(survey: Survey, change: Change): void {
  const lower = (each: { readonly name: string }): string => each.name.toLowerCase();
  const sheets = new Set(survey.sheets.map(lower));
  const names = new Set([...survey.tables, ...survey.names.filter(({ isDead }) => !isDead)].map(lower));
  const take = (taken: Set<string>, name: string, problem: HostProblem): void => {
    if (taken.has(name.toLowerCase())) refuse(problem);
    taken.add(name.toLowerCase());
  };
  for (const sheet of change.newSheets) {
    take(sheets, sheet.name, { code: 'sheetNameTaken', sheet: sheet.name });
    if (!/^(?!')[^\\/?*[\]:]{1,31}(?<!')$/.test(sheet.name)) throw new RangeError(`sheet name ${sheet.name}`);
    for (const { name } of sheet.tables) take(names, name, { code: 'tableNameTaken', table: name });
    for (const name of Object.keys(sheet.names)) take(names, name, { code: 'nameTaken', name });
  }
}

function groupGrowths(survey: Survey, change: Change): Growth[] {
  const rowsOf = new Map<TableSurvey, Growth['rows']>();
  for (const { table: name, rows } of change.tableRows) {
    const table = survey.tables.find((each) => isSameName(each.name, name));
    if (table === undefined) return refuse({ code: 'noSuchTable', table: name });
    demandOpenSheet(survey, table.sheet);
    if (rows.some((row) => row.length !== table.span.columns)) throw new RangeError(`a row of ${name}`);
    rowsOf.set(table, [...(rowsOf.get(table) ?? []), ...rows]);
  }
  return [...rowsOf]
    .filter(([, rows]) => rows.length > 0)
    .map(([table, rows]) => {
      const { row, column, rows: height, columns } = table.span;
      return {
        table,
        rows,
        free: { sheet: table.sheet, row: row + height, column, rows: rows.length, columns },
      };
    });
}

/** No content and no other table in the cells that the rows will take; a row of totals is in the way itself. */
function checkFree(survey: Survey, { table, free }: Growth, cells: RawCells): void {
  const isOfOther = (row: number, column: number): boolean =>
    survey.tables.some(
      ({ sheet, span }) =>
        isSameName(sheet, free.sheet) &&
        row >= span.row &&
        row < span.row + span.rows &&
        column >= span.column &&
        column < span.column + span.columns,
    );
  if (table.hasTotals)
    refuse({ code: 'cellsInTheWay', sheet: free.sheet, row: free.row - 1, column: free.column });
  cells.types.forEach((line, i) =>
    line.forEach((type, j) => {
      const [row, column] = [free.row + i, free.column + j];
      if (type !== 'Empty' || isOfOther(row, column)) {
        refuse({ code: 'cellsInTheWay', sheet: free.sheet, row, column });
      }
    }),
  );
}
