/// <reference types="office-js" />

/** The writes that make new sheets, out of sight and under names of their own until the change is whole. */
import { absoluteAddress } from '../../workbook/cellAddress';
import type { Area, CellContent, NamedPlace, NewSheet } from '../../workbook/port';
import { markName, printMark } from '../../workbook/sheetMark';
import { enterContent, enterText, type RawCell } from './cellContents';
import { dressingSteps, fittingSteps, inlineList, putList } from './dressSheet';
import type { ExcelFeature } from './excelFeatures';
import { rangeOf } from './readCells';
import { partName, printPart, type Part } from './sheetPart';
import { isSameName } from './surveyWorkbook';
import { cellSteps, step, type WriteStep } from './writeSteps';

export interface StagedSheet {
  readonly sheet: NewSheet;
  /** Its name until the change is whole. */
  readonly at: string;
}

export interface Staging {
  readonly namespace: string;
  readonly lacks: readonly ExcelFeature[];
  readonly sheets: readonly StagedSheet[];
  /** Names that a deleted sheet left behind. */
  readonly deadNames: readonly string[];
  /** Where lists stand that are too long to stand in a cell's rule. */
  readonly listsAt: string;
}

export interface StagingSteps {
  readonly steps: readonly WriteStep[];
  readonly usesLists: boolean;
}

/** Everything that formulas refer to comes before all formulas. @throws RangeError for what no cell can hold */
export function newSheetSteps(staging: Staging): StagingSteps {
  const { sheets, deadNames, lacks, namespace, listsAt } = staging;
  const lists = listSteps(sheets, listsAt);
  const steps = [
    ...sheets.flatMap(({ sheet, at }) => [
      addHidden(at, { kind: 'made' }),
      nameSheet(at, markName, `=${printMark(sheet.mark)}`),
      ...dressingSteps(at, sheet, lacks),
      ...blockSteps(sheet, at, (content) =>
        isComputed(content) ? null : enterContent(content, { namespace, table: null }),
      ),
      ...tableSteps(sheet, at),
      ...Object.entries(sheet.names).map(([name, place]) => nameCell(at, name, place, deadNames)),
    ]),
    ...lists.steps,
    ...sheets.flatMap(({ sheet, at }) =>
      blockSteps(sheet, at, (content, row, column) => {
        if (!isComputed(content)) return null;
        return enterContent(content, { namespace, table: tableAt(sheet, row, column) });
      }),
    ),
    ...sheets.flatMap(({ sheet, at }) => fittingSteps(at, sheet)),
  ];
  return { steps, usesLists: lists.usesLists };
}

function isComputed(content: CellContent): boolean {
  return typeof content === 'object' && content !== null;
}

function tableAt({ tables }: NewSheet, row: number, column: number): string | null {
  const isIn = ({ row: first, column: left, rows, columns }: NewSheet['tables'][number]): boolean =>
    row > first && row < first + rows && column >= left && column < left + columns;
  return tables.find(isIn)?.name ?? null;
}

/** The part's name comes right after the sheet: by it a sheet left over is known as ours. */
export function addHidden(at: string, part: Part): WriteStep {
  return step(6, ({ workbook }) => {
    workbook.worksheets.add(at);
    const sheet = workbook.worksheets.getItem(at);
    sheet.names.add(partName, printPart(part)).visible = false;
    sheet.visibility = part.kind === 'journal' ? 'VeryHidden' : 'Hidden';
  });
}

export function nameSheet(at: string, name: string, formula: string): WriteStep {
  return step(3, ({ workbook }) => {
    workbook.worksheets.getItem(at).names.add(name, formula).visible = false;
  });
}

/** A dead name gets its cell by one action, so that it is at no time away. */
function nameCell(
  at: string,
  name: string,
  [row, column, rows = 1]: NamedPlace,
  deadNames: readonly string[],
): WriteStep {
  return step(1, (context) => {
    const { names } = context.workbook;
    const isDead = deadNames.some((each) => isSameName(each, name));
    if (isDead) names.getItem(name).formula = `=${absoluteAddress(at, row, column, rows)}`;
    else names.add(name, rangeOf(context, { sheet: at, row, column, rows, columns: 1 }));
  });
}

/** Only what `enter` gives; a block of which it gives nothing is left out. */
function blockSteps(
  sheet: NewSheet,
  at: string,
  enter: (content: CellContent, row: number, column: number) => RawCell | null,
): WriteStep[] {
  return sheet.blocks.flatMap((block) => {
    const contents = block.contents.map((line, i) =>
      line.map((content, j) => (content === null ? null : enter(content, block.row + i, block.column + j))),
    );
    if (contents.every((line) => line.every((cell) => cell === null))) return [];
    const area: Area = {
      sheet: at,
      row: block.row,
      column: block.column,
      rows: contents.length,
      columns: contents[0]?.length ?? 0,
    };
    return cellSteps(area, contents);
  });
}

function tableSteps(sheet: NewSheet, at: string): WriteStep[] {
  return sheet.tables.map(({ name, row, column, rows, columns }) =>
    step(4, (context) => {
      const { tables } = context.workbook.worksheets.getItem(at);
      const table = tables.add(rangeOf(context, { sheet: at, row, column, rows, columns }), true);
      table.name = name;
      table.style = 'TableStyleLight1';
    }),
  );
}

function listSteps(sheets: readonly StagedSheet[], listsAt: string): StagingSteps {
  const columns = new Map<string, number>();
  const putting: WriteStep[] = [];
  for (const { sheet, at } of sheets) {
    for (const list of sheet.lists) {
      const { values, ...span } = list;
      const inline = inlineList(list);
      const key = JSON.stringify(values);
      const column = columns.get(key) ?? columns.size;
      if (inline === null) columns.set(key, column);
      const source: Area = { sheet: listsAt, row: 0, column, rows: values.length, columns: 1 };
      putting.push(
        step(3, (context) =>
          putList(rangeOf(context, { sheet: at, ...span }), inline ?? rangeOf(context, source)),
        ),
      );
    }
  }
  if (columns.size === 0) return { steps: putting, usesLists: false };
  const standing = [...columns].flatMap(([key, column]) => {
    const values = JSON.parse(key) as string[];
    const area: Area = { sheet: listsAt, row: 0, column, rows: values.length, columns: 1 };
    return cellSteps(
      area,
      values.map((value) => [enterText(value)]),
    );
  });
  const made = [
    addHidden(listsAt, { kind: 'made' }),
    nameSheet(listsAt, markName, `=${printMark({ template: 'lists', version: 1 })}`),
  ];
  return { steps: [...made, ...standing, ...putting], usesLists: true };
}
