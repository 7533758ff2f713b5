import type { Expression, Operator, ReadValue, Span } from '../../workbook/port';
import { HostError, isCellError } from '../../workbook/port';
import {
  columnPlace,
  contentAt,
  findSheetState,
  findTableState,
  holdsCell,
  isComputed,
  spillsIn,
  tableAround,
  type BookState,
  type NamedCell,
  type SheetState,
} from './bookState';
import { evaluateNative } from '../../workbook/evaluation/evaluateNative';
import {
  errorOf,
  plainValue,
  singleValue,
  withoutMessage,
  type Operand,
} from '../../workbook/evaluation/operand';
import { applyOperator } from '../../workbook/evaluation/operators';

type FunctionValue = number | string | boolean;

/** One of our functions, as an entry hands it in. An omitted argument and an empty cell are null. */
export interface FileFunction {
  readonly id: string;
  run(
    args: unknown[],
  ):
    | { readonly value: FunctionValue | FunctionValue[][]; readonly pattern?: string }
    | { readonly error: '#N/A' | '#VALUE!' | '#NUM!'; readonly message: string };
}

export interface Result {
  readonly value: ReadValue;
  /** How the function wants its number shown; null for no wish. */
  readonly pattern: string | null;
  /** What fills the cells below and beside it, its own value the first. */
  readonly list?: readonly (readonly ReadValue[])[];
}

export interface Evaluation {
  result(sheet: SheetState, row: number, column: number): Result;
}

/**
 * Computes the cells of one state when they are asked for, each once. A cell computes what it needs first, so the
 * order of columns and sheets does not matter.
 */
export function createEvaluation(book: BookState, functions: ReadonlyMap<string, FileFunction>): Evaluation {
  const results = new Map<SheetState, (Result | 'running')[][]>();
  const columns = new Map<string, Operand>();
  const named = new Map<string, NamedCell>();
  for (const cell of book.sheets.flatMap((sheet) => sheet.names)) named.set(cell.name.toLowerCase(), cell);

  function result(sheet: SheetState, row: number, column: number): Result {
    const content = contentAt(sheet, row, column);
    if (content === null) return { value: spilledValue(sheet, row, column), pattern: null };
    if (!isComputed(content)) return { value: content, pattern: null };
    const rows = results.get(sheet) ?? [];
    results.set(sheet, rows);
    const cells = (rows[row] ??= []);
    const known = cells[column];
    if (known === 'running') return { value: errorOf('#CYCLE!'), pattern: null };
    if (known !== undefined) return known;
    cells[column] = 'running';
    const operand = evaluateAt(sheet, row, column)(content.compute);
    if (operand.kind === 'list' && content.spillsOver !== undefined) {
      return (cells[column] = spill(sheet, { row, column, ...content.spillsOver }, operand.rows));
    }
    // A formula that points at an empty cell shows 0.
    const value = singleValue(operand) ?? 0;
    const pattern = operand.kind === 'value' ? operand.pattern : null;
    return (cells[column] = { value, pattern });
  }

  function spilledValue(sheet: SheetState, row: number, column: number): ReadValue {
    const from = spillsIn(sheet).find((span) => holdsCell(span, row, column));
    if (from === undefined) return null;
    return result(sheet, from.row, from.column).list?.[row - from.row]?.[column - from.column] ?? null;
  }

  function cell(sheet: SheetState, row: number, column: number): Operand {
    return { kind: 'cell', value: withoutMessage(result(sheet, row, column).value) };
  }

  function evaluateAt(sheet: SheetState, row: number, column: number): (expression: Expression) => Operand {
    const table = tableAround(sheet, row, column);
    return function evaluate(expression: Expression): Operand {
      if ('value' in expression) return plainValue(expression.value);
      if ('column' in expression) {
        const place = table && columnPlace(table, expression.column);
        if (table === undefined || place === undefined) return plainValue(errorOf('#REF!'));
        return cell(sheet, row, table.column + place);
      }
      if ('allOf' in expression) return wholeColumn(expression.table, expression.allOf);
      if ('input' in expression) return namedCell(expression.input);
      if ('typed' in expression) return plainValue(errorOf('#NAME?'));
      if ('call' in expression) return callFunction(functions, expression, evaluate);
      if ('native' in expression) return evaluateNative(expression.native, expression.args, evaluate);
      return operateOn(expression.operator, evaluate(expression.left), evaluate(expression.right));
    };
  }

  function namedCell(name: string): Operand {
    const place = named.get(name.toLowerCase());
    const sheet = place && findSheetState(book, place.sheet);
    if (place === undefined || sheet === undefined) return plainValue(errorOf('#NAME?'));
    if (place.rows === 1) return cell(sheet, place.row, place.column);
    const values = Array.from(
      { length: place.rows },
      (_, down) => result(sheet, place.row + down, place.column).value,
    );
    return { kind: 'range', values };
  }

  function wholeColumn(tableName: string, header: string): Operand {
    const key = `${tableName}[${header}]`.toLowerCase();
    const known = columns.get(key);
    if (known) return known;
    const table = findTableState(book, tableName);
    const sheet = table && findSheetState(book, table.sheet);
    const place = table && columnPlace(table, header);
    if (!table || !sheet || place === undefined) return plainValue(errorOf('#REF!'));
    const values: ReadValue[] = [];
    for (let row = table.row + 1; row < table.row + table.rows; row++) {
      values.push(result(sheet, row, table.column + place).value);
    }
    const operand: Operand = { kind: 'range', values };
    // A column read while one of its own cells is running holds a cycle: it is not the column's final state.
    if (!values.some((value) => isCellError(value) && value.error === '#CYCLE!')) columns.set(key, operand);
    return operand;
  }

  return { result };
}

/** A list that finds no room fills nothing, as in every spreadsheet program. */
function spill(sheet: SheetState, over: Span, list: readonly (readonly ReadValue[])[]): Result {
  const [first = []] = list;
  const isFree = (down: number, across: number): boolean =>
    (down === 0 && across === 0) || contentAt(sheet, over.row + down, over.column + across) === null;
  const hasRoom =
    list.length <= over.rows &&
    first.length <= over.columns &&
    list.every((values, down) => values.every((_, across) => isFree(down, across)));
  if (!hasRoom) return { value: errorOf('#SPILL!'), pattern: null };
  return { value: first[0] ?? null, pattern: null, list };
}

/** With each value of a list, as every spreadsheet program that spills does. */
function operateOn(operator: Operator, left: Operand, right: Operand): Operand {
  const list = left.kind === 'list' ? left : right;
  if (list.kind !== 'list') return plainValue(applyOperator(operator, singleValue(left), singleValue(right)));
  const rows = list.rows.map((row) =>
    row.map((value) =>
      list === left
        ? applyOperator(operator, value, singleValue(right))
        : applyOperator(operator, singleValue(left), value),
    ),
  );
  return { kind: 'list', rows };
}

function callFunction(
  functions: ReadonlyMap<string, FileFunction>,
  expression: Extract<Expression, { call: string }>,
  evaluate: (expression: Expression) => Operand,
): Operand {
  const called = functions.get(expression.call.toUpperCase());
  if (called === undefined) return plainValue(errorOf('#NAME?'));
  const args: unknown[] = [];
  for (const arg of expression.args) {
    const operand = arg === null ? plainValue(null) : evaluate(arg);
    if (operand.kind === 'range') {
      args.push(operand.values.map((value) => [value]));
    } else if (operand.kind === 'list') {
      args.push(operand.rows);
    } else if (isCellError(operand.value)) {
      return plainValue(operand.value);
    } else {
      args.push(operand.value);
    }
  }
  // An argument left out at the end is not there at all.
  while (args.length > 0 && expression.args[args.length - 1] === null) args.pop();
  const outcome = runFunction(called, args);
  if ('error' in outcome) return plainValue(errorOf(outcome.error, outcome.message));
  if (Array.isArray(outcome.value))
    return { kind: 'list', rows: outcome.value.map((row) => row.map(finite)) };
  return { kind: 'value', value: finite(outcome.value), pattern: outcome.pattern ?? null };
}

/** A function answers with an error as data; one that throws is broken, and the change with it. */
function runFunction(called: FileFunction, args: unknown[]): ReturnType<FileFunction['run']> {
  try {
    return called.run(args);
  } catch (cause) {
    throw new HostError({ code: 'failed', action: called.id }, { cause });
  }
}

function finite(value: FunctionValue): ReadValue {
  return typeof value === 'number' && !Number.isFinite(value) ? errorOf('#NUM!') : value;
}
