/**
 * Results of the stand-in's formulas, by the engine of the browser workbook: it parses the formulas as they were
 * entered, knows tables and names, and never saw the host under test. Where it departs from Excel stands in
 * tests/contract/browserSemantics.test.ts.
 */
import { ICommandService } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { startEngine, type WorkbookOptions } from '../../src/hosts/browser/engine';
import { openWorkbook } from '../../src/hosts/browser/openWorkbook';
import { isCellError, type CellContent, type NewSheet, type ReadValue } from '../../src/workbook/port';
import { cellAt, usedSpan, type Book, type Sheet } from './book';
import { UnknownToStandIn } from './excelError';
import { rectangleOf } from './span';

export type Functions = WorkbookOptions['functions'];

/** By sheet, then by "row,column": of cells with a formula, and of those that a list spills into. */
export type Results = ReadonlyMap<Sheet, ReadonlyMap<string, ReadValue>>;

const namespace = 'CUCURBIT.';
/** Not how long it should take, but when to give up: other work may share the machine. */
const settleMs = 120_000;

export async function calculateBook(book: Book, functions: Functions): Promise<Results> {
  const formulas = new Map(book.sheets.map((sheet) => [sheet, formulasOf(book, sheet)]));
  if ([...formulas.values()].every((cells) => cells.length === 0)) return new Map();
  const engine = startEngine({ functions, namespace, firstSheet: 'engine' }, null);
  const workbook = openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
  try {
    const newSheets = book.sheets.map((sheet) => constantsOf(book, sheet));
    await workbook.apply({
      title: '',
      expect: [],
      newSheets,
      cells: [],
      tableRows: [],
      pictures: [],
      marks: [],
    });
    for (const [sheet, cells] of formulas) {
      const subUnitId = engine.workbook.getSheetBySheetName(sheet.name)?.getSheetId();
      const cellValue: Record<number, Record<number, { f: string }>> = {};
      for (const { row, column, formula } of cells) (cellValue[row] ??= {})[column] = { f: formula };
      const commands = engine.accessor.get(ICommandService);
      commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId: engine.unitId, subUnitId, cellValue });
    }
    const unsettled = await workbook.settle(settleMs);
    if (unsettled.length > 0) throw new UnknownToStandIn('the engine did not finish');
    const results = new Map<Sheet, Map<string, ReadValue>>();
    for (const [sheet, cells] of formulas) {
      const { used = null } = (await workbook.sheets()).find(({ name }) => name === sheet.name) ?? {};
      if (used === null) continue;
      const { values } = await workbook.read(used);
      const ofSheet = new Map<string, ReadValue>();
      const put = (row: number, column: number, value: ReadValue): void =>
        void ofSheet.set(
          `${row},${column}`,
          isCellError(value) ? { error: value.error, message: null } : value,
        );
      for (const { row, column } of cells) put(row, column, values[row]?.[column] ?? 0);
      values.forEach((line, row) =>
        line.forEach((value, column) => {
          if (value !== null && cellAt(sheet, row, column) === undefined) put(row, column, value);
        }),
      );
      results.set(sheet, ofSheet);
    }
    return results;
  } finally {
    workbook.dispose();
  }
}

/** No function has this name. */
const unknownCall = '=CUCURBIT.UNKNOWN()';

/** An error that was typed goes to the engine as a formula that makes it. */
function formulasOf(book: Book, sheet: Sheet): { row: number; column: number; formula: string }[] {
  return [...sheet.cells].flatMap(([row, cells]) =>
    [...cells].flatMap(([column, cell]) => {
      if ('constant' in cell) return [];
      if ('error' in cell) return [{ row, column, formula: makingError(cell.error) }];
      return [{ row, column, formula: book.forgotten.has(cell) ? unknownCall : cell.formula }];
    }),
  );
}

function makingError(error: string): string {
  if (error !== '#N/A') throw new UnknownToStandIn(`${error} as a constant`);
  return '=NA()';
}

function constantsOf(book: Book, sheet: Sheet): NewSheet {
  const used = usedSpan(sheet);
  const constantAt = (row: number, column: number): CellContent => {
    const cell = cellAt(sheet, row, column);
    return cell !== undefined && 'constant' in cell ? cell.constant : null;
  };
  const tables = book.tables.filter((table) => table.sheet === sheet);
  const names = book.names.flatMap(({ name, target }) =>
    typeof target === 'object' && target.sheet === sheet
      ? [[name, [target.span.row, target.span.column, target.span.rows]] as const]
      : [],
  );
  return {
    name: sheet.name,
    mark: { template: '', version: 0 },
    blocks:
      used === null ? [] : [{ row: used.row, column: used.column, contents: rectangleOf(used, constantAt) }],
    tables: tables.map(({ name, span }) => ({
      name,
      ...span,
      headers: rectangleOf({ ...span, rows: 1 }, constantAt)[0]?.map(String) ?? [],
      grows: null,
    })),
    dressings: [],
    lists: [],
    rules: [],
    notes: [],
    names: Object.fromEntries(names),
    widths: [],
    frozenRows: 0,
    frozenColumns: 0,
    page: { landscape: false, pagesWide: 1, repeatRows: null, repeatColumns: null },
  };
}
