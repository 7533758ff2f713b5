/// <reference types="office-js" />

/** Everything that a change writes, as steps, and the journal that takes it back. */
import type { Area, Change, Mark, Picture } from '../../workbook/port';
import { markName, printMark } from '../../workbook/sheetMark';
import { standingOf } from './cellContents';
import type { Checked } from './checkChange';
import { enterContents, type Place } from './enterContents';
import type { ExcelFeature } from './excelFeatures';
import { stateSteps, type Journal } from './journal';
import { nameSheet, newSheetSteps, type StagedSheet } from './newSheetSteps';
import { rangeOf } from './readCells';
import { addRule } from './ruleSteps';
import { partName, printPart } from './sheetPart';
import { demandSheet, isSameName, type Survey } from './surveyWorkbook';
import { cellSteps, step, type WriteStep } from './writeSteps';

export interface PlannedPicture {
  readonly picture: Picture;
  /** The sheet's name while the change is written. */
  readonly at: string;
  /** Until the change is whole: on a sheet that was there another picture may have the name that it gets. */
  readonly name: string;
}

export interface Plan {
  readonly journalAt: string;
  readonly journal: Journal;
  /** Names of sheets that come with the change, until it is whole. */
  readonly staged: readonly string[];
  /** Marks the sheets that were there and will be touched. */
  readonly touching: readonly WriteStep[];
  readonly writing: readonly WriteStep[];
  /** Put on once the cells under them are there. */
  readonly pictures: readonly PlannedPicture[];
  /** Makes the change whole, and what is left to do then: one request. */
  readonly finishing: readonly WriteStep[];
  readonly tidying: readonly WriteStep[];
}

export interface PlanOptions {
  readonly namespace: string;
  readonly lacks: readonly ExcelFeature[];
  /** Told apart from every other change of this workbook. */
  readonly key: string;
}

/** @throws RangeError for what no cell can hold */
export function planChange(survey: Survey, change: Change, checked: Checked, options: PlanOptions): Plan {
  const { namespace, lacks, key } = options;
  const freeName = nameSheets(survey, change);
  const journalAt = freeName('_journal');
  const sheets = change.newSheets.map((sheet): StagedSheet => ({ sheet, at: freeName('_new') }));
  const listsAt = freeName('_lists');
  // A library took the other sheets' own marks away. A mark is written to say how new the sheet is, and needs no saying.
  const marks = change.marks.filter(({ sheet }) => demandSheet(survey, sheet).hasMarkOfItsOwn);
  const deadNames = survey.names.filter(({ isDead }) => isDead).map(({ name }) => name);
  const staging = newSheetSteps({ namespace, lacks, sheets, deadNames, listsAt });
  const touched = touchedSheets(survey, change, checked);
  const numberOf = (sheet: string): number => touched.findIndex((each) => isSameName(each, sheet));
  const pictures = change.pictures.map((picture, i): PlannedPicture => {
    const staged = sheets.find(({ sheet }) => isSameName(sheet.name, picture.sheet));
    return { picture, at: staged?.at ?? picture.sheet, name: staged ? picture.name : `${key} ${i}` };
  });
  return {
    journalAt,
    journal: {
      title: change.title,
      lists: staging.usesLists ? listsAt : null,
      deadNames,
      cells: change.cells.map(({ sheet, row, column }, i) => ({
        sheet: numberOf(sheet),
        row,
        column,
        contents: standings(checked, i),
      })),
      tables: checked.growths.map(({ table, rows }) => ({
        table: table.name,
        ...table.span,
        added: rows.length,
      })),
      rules: checked.rules.map(({ sheet, row, column, equals }) => ({
        sheet: numberOf(sheet),
        row,
        column,
        equals,
      })),
      marks: marks.flatMap(({ sheet }) => {
        const { mark } = demandSheet(survey, sheet);
        return mark === null ? [] : [{ sheet: numberOf(sheet), mark }];
      }),
      pictures: pictures
        .filter(({ picture }) => numberOf(picture.sheet) >= 0)
        .map(({ picture, name }) => ({ sheet: numberOf(picture.sheet), name, becomes: picture.name })),
    },
    staged: [...sheets.map(({ at }) => at), ...(staging.usesLists ? [listsAt] : [])],
    touching: touched.map((sheet, number) =>
      nameSheet(sheet, partName, printPart({ kind: 'touched', number })),
    ),
    writing: [
      ...staging.steps,
      ...cellsOfSheets(survey, change, checked, namespace),
      ...rowSteps(checked, namespace),
      ...checked.rules.map(({ sheet, ...rule }) => addRule({ sheet, ...rule }, rule)),
      ...marks.map(({ sheet, mark }) => markSheet(sheet, mark)),
    ],
    pictures,
    finishing: [
      ...sheets.map(({ sheet, at }) =>
        step(1, ({ workbook }) => (workbook.worksheets.getItem(at).name = sheet.name)),
      ),
      ...stateSteps(journalAt, 'done'),
    ],
    tidying: tidyingSteps(
      sheets.map(({ sheet }) => sheet.name),
      staging.usesLists ? listsAt : null,
      touched,
      journalAt,
    ),
  };
}

/** What is left when a change is whole: its sheets are shown, its own marks go, and the journal last. */
export function tidyingSteps(
  made: readonly string[],
  lists: string | null,
  touched: readonly string[],
  journalAt: string,
): WriteStep[] {
  const show = (sheet: string, visibility: 'Visible' | 'VeryHidden'): WriteStep =>
    step(3, ({ workbook }) => {
      const worksheet = workbook.worksheets.getItem(sheet);
      worksheet.visibility = visibility;
      worksheet.names.getItem(partName).delete();
    });
  return [
    ...made.map((sheet) => show(sheet, 'Visible')),
    ...(lists === null ? [] : [show(lists, 'VeryHidden')]),
    ...touched.map((sheet) =>
      step(2, ({ workbook }) => workbook.worksheets.getItem(sheet).names.getItem(partName).delete()),
    ),
    removeSheet(journalAt),
  ];
}

/** Excel removes no very hidden sheet. */
export function removeSheet(sheet: string): WriteStep {
  return step(3, ({ workbook }) => {
    const worksheet = workbook.worksheets.getItem(sheet);
    worksheet.visibility = 'Hidden';
    worksheet.delete();
  });
}

/** A sheet that has a mark gets another one. */
export function markSheet(sheet: string, mark: Mark): WriteStep {
  return step(1, ({ workbook }) => {
    workbook.worksheets.getItem(sheet).names.getItem(markName).formula = `=${printMark(mark)}`;
  });
}

function nameSheets(survey: Survey, change: Change): (wanted: string) => string {
  const taken = new Set([...survey.sheets, ...change.newSheets].map(({ name }) => name.toLowerCase()));
  return (wanted) => {
    let name = wanted;
    for (let n = 2; taken.has(name); n++) name = `${wanted}${n}`;
    taken.add(name);
    return name;
  };
}

function touchedSheets(survey: Survey, change: Change, { growths, rules }: Checked): string[] {
  const isNew = (sheet: string): boolean => change.newSheets.some(({ name }) => isSameName(name, sheet));
  const named = [
    ...change.cells.map(({ sheet }) => sheet),
    ...change.marks.map(({ sheet }) => sheet),
    ...rules.map(({ sheet }) => sheet),
    ...growths.map(({ table }) => table.sheet),
    ...change.pictures.map(({ sheet }) => sheet).filter((sheet) => !isNew(sheet)),
  ];
  return [...new Set(named.map((sheet) => demandSheet(survey, sheet).name))];
}

function standings({ standing }: Checked, index: number) {
  const cells = standing[index];
  return (cells?.values ?? []).map((line, i) =>
    line.map((value, j) => standingOf(value, cells?.formulas[i]?.[j] ?? '', cells?.types[i]?.[j] ?? 'Empty')),
  );
}

function cellsOfSheets(survey: Survey, change: Change, checked: Checked, namespace: string): WriteStep[] {
  return change.cells.flatMap(({ sheet, row, column, contents }) => {
    const tables = survey.tables.filter((table) => isSameName(table.sheet, sheet));
    const tableAt = ({ row: r, column: c }: Place): string | null =>
      tables.find(
        ({ span }) =>
          r > span.row && r < span.row + span.rows && c >= span.column && c < span.column + span.columns,
      )?.name ?? null;
    const area: Area = { sheet, row, column, rows: contents.length, columns: contents[0]?.length ?? 0 };
    return cellSteps(area, enterContents(checked, area, contents, namespace, tableAt));
  });
}

/** The new rows are like the last one, in look and lists; then they get their own contents. */
function rowSteps(checked: Checked, namespace: string): WriteStep[] {
  return checked.growths.flatMap(({ table, rows, free }) => {
    const longer: Area = { sheet: table.sheet, ...table.span, rows: table.span.rows + rows.length };
    const last: Area = { ...free, row: free.row - 1, rows: 1 };
    return [
      step(4, (context) => {
        context.workbook.tables.getItem(table.name).resize(rangeOf(context, longer));
        rangeOf(context, free).copyFrom(rangeOf(context, last), 'All');
      }),
      ...cellSteps(
        free,
        enterContents(checked, free, rows, namespace, () => table.name),
      ),
    ];
  });
}
