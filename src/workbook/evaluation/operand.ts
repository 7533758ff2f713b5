import { isCellError, type CellError, type ReadValue } from '../port';

/**
 * What a part of an expression gives. Where a value came from matters: SUM and AND pass over text in cells, but
 * not text that stands in the formula itself; a range reaches our functions as rows, a cell as one value.
 */
export type Operand =
  | { readonly kind: 'value'; readonly value: ReadValue; readonly pattern: string | null }
  | { readonly kind: 'cell'; readonly value: ReadValue }
  | { readonly kind: 'range'; readonly values: readonly ReadValue[] }
  | { readonly kind: 'list'; readonly rows: readonly (readonly ReadValue[])[] };

export type ErrorCode =
  | '#N/A'
  | '#VALUE!'
  | '#NUM!'
  | '#DIV/0!'
  | '#REF!'
  | '#NAME?'
  | '#SPILL!'
  /** A cell that needs its own result. No file format has this one: it is stored as #REF!. */
  | '#CYCLE!';

export function errorOf(code: ErrorCode, message: string | null = null): CellError {
  return { error: code, message };
}

export function plainValue(value: ReadValue): Operand {
  return { kind: 'value', value, pattern: null };
}

/** An error is explained in the cell that made it; a cell that only passes it on has nothing of its own to say. */
export function withoutMessage(value: ReadValue): ReadValue {
  return isCellError(value) && value.message !== null ? { error: value.error, message: null } : value;
}

/** The one value of an operand; more than one where one is due is #VALUE!: only a cell that says so spills. */
export function singleValue(operand: Operand): ReadValue {
  switch (operand.kind) {
    case 'value':
    case 'cell':
      return operand.value;
    case 'range':
      return operand.values.length === 1 ? withoutMessage(operand.values[0] ?? null) : errorOf('#VALUE!');
    case 'list': {
      const [row, ...more] = operand.rows;
      return row?.length === 1 && more.length === 0 ? (row[0] ?? null) : errorOf('#VALUE!');
    }
  }
}

/** All values of an operand, row by row. Errors keep their messages. */
export function allValues(operand: Operand): readonly ReadValue[] {
  switch (operand.kind) {
    case 'value':
    case 'cell':
      return [operand.value];
    case 'range':
      return operand.values;
    case 'list':
      return operand.rows.flat();
  }
}
