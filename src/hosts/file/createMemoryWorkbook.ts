import { hashText } from '../../workbook/hashText';
import { HostError, type Area, type Change, type WorkbookPort } from '../../workbook/port';
import {
  contentAt,
  emptyBook,
  findNamedCell,
  findTableState,
  isComputed,
  type BookState,
  type SheetState,
} from './bookState';
import { buildNextBook, type BeforeStep } from './buildNextBook';
import { buildXlsx } from './buildXlsx';
import { carryCells } from './carryCells';
import { checkChange, demandSheet } from './checkChange';
import { createEvaluation, type Evaluation, type FileFunction } from './evaluate';
import { formulaAt } from './ourFormula';
import { usedSize } from './usedSize';

export interface MemoryWorkbookOptions {
  /** What evaluates our calls. */
  readonly functions: readonly FileFunction[];
  /** Called before each step of a change; for tests, which make it throw. */
  readonly beforeStep?: BeforeStep;
}

export interface MemoryWorkbook extends WorkbookPort {
  /** The .xlsx. */
  bytes(): Promise<Uint8Array>;
}

/** A workbook in memory that starts empty. Results are there as soon as a change is. */
export function createMemoryWorkbook(options: MemoryWorkbookOptions): MemoryWorkbook {
  const functions = new Map(options.functions.map((each) => [each.id.toUpperCase(), each]));
  const beforeStep: BeforeStep = options.beforeStep ?? (() => undefined);
  let book: BookState = emptyBook;
  let evaluation: Evaluation = createEvaluation(book, functions);
  let turn: Promise<unknown> = Promise.resolve();

  /** One at a time; one that fails does not hold up the next. */
  function inTurn<T>(action: () => Promise<T> | T): Promise<T> {
    const done = turn.then(action);
    turn = done.catch(() => undefined);
    return done;
  }

  function stampOf(sheet: SheetState): string {
    const { rows, columns } = usedSize(sheet, evaluation);
    const parts: string[] = [];
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) {
        const content = contentAt(sheet, row, column);
        const value = evaluation.result(sheet, row, column).value;
        parts.push(JSON.stringify([isComputed(content) ? content.compute : null, value]));
      }
      parts.push('\n');
    }
    return hashText(parts.join(''));
  }

  function applyNow(asked: Change, progress: (done: number) => void): void {
    progress(0);
    const change = carryCells(book, asked);
    checkChange(book, change, stampOf);
    let steps = 0;
    const stepCount =
      change.cells.length +
      change.tableRows.length +
      (change.rules?.length ?? 0) +
      change.newSheets.length +
      change.pictures.length +
      1;
    const nextStep = (step: string): void => {
      beforeStep(step);
      progress(steps++ / stepCount);
    };
    const next = buildNextBook(book, change, nextStep);
    nextStep('evaluate');
    const nextEvaluation = createEvaluation(next, functions);
    evaluateAll(next, nextEvaluation);
    book = next;
    evaluation = nextEvaluation;
    progress(1);
  }

  return {
    sheets: async () =>
      book.sheets.map((sheet) => {
        const size = usedSize(sheet, evaluation);
        const used: Area | null = size.rows === 0 ? null : { sheet: sheet.name, row: 0, column: 0, ...size };
        return { name: sheet.name, mark: sheet.mark, locked: false, used };
      }),

    async read(area) {
      const sheet = demandSheet(book, area.sheet);
      const cells = <T>(read: (row: number, column: number) => T): T[][] =>
        Array.from({ length: area.rows }, (_, row) =>
          Array.from({ length: area.columns }, (_, column) => read(area.row + row, area.column + column)),
        );
      return {
        values: cells((row, column) => evaluation.result(sheet, row, column).value),
        formulas: cells((row, column) => {
          const content = contentAt(sheet, row, column);
          return isComputed(content) ? formulaAt(sheet, row, column, content.compute) : null;
        }),
      };
    },

    async readTable(name) {
      const table = findTableState(book, name);
      if (table === undefined) return null;
      const sheet = demandSheet(book, table.sheet);
      const rows = Array.from({ length: table.rows - 1 }, (_, row) =>
        table.headers.map(
          (_, column) => evaluation.result(sheet, table.row + 1 + row, table.column + column).value,
        ),
      );
      const { row, column, columns } = table;
      const area = { sheet: table.sheet, row, column, rows: table.rows, columns };
      return { name: table.name, area, headers: table.headers, rows };
    },

    async locate(name) {
      const cell = findNamedCell(book, name);
      return cell
        ? { sheet: cell.sheet, row: cell.row, column: cell.column, rows: cell.rows, columns: 1 }
        : null;
    },

    stamp: async (sheet) => stampOf(demandSheet(book, sheet)),

    apply: (change, progress = () => undefined) =>
      inTurn(() => {
        try {
          applyNow(change, progress);
        } catch (cause) {
          throw cause instanceof HostError
            ? cause
            : new HostError({ code: 'failed', action: change.title }, { cause });
        }
      }),

    settle: async () => [],

    bytes: () => inTurn(() => buildXlsx(book, evaluation)),
  };
}

/** Everything is computed before the change counts, so that a function that breaks takes the change back. */
function evaluateAll(book: BookState, evaluation: Evaluation): void {
  for (const sheet of book.sheets) {
    sheet.cells.forEach((cells, row) =>
      cells?.forEach((content, column) => {
        if (content !== undefined && isComputed(content)) evaluation.result(sheet, row, column);
      }),
    );
  }
}
