/** Short constructors for expressions, so that a template reads like the formula it becomes. */
import type { Expression, NativeFunction, Operator } from './port';

type Operand = Expression | string | number | boolean;

function expressionOf(operand: Operand): Expression {
  return typeof operand === 'object' ? operand : { value: operand };
}

export function column(header: string): Expression {
  return { column: header };
}

export function input(name: string): Expression {
  return { input: name };
}

export function allOf(table: string, header: string): Expression {
  return { table, allOf: header };
}

/** null leaves an argument out. */
export function call(id: string, ...args: (Operand | null)[]): Expression {
  return { call: id, args: args.map((arg) => (arg === null ? null : expressionOf(arg))) };
}

export function native(name: NativeFunction, ...args: Operand[]): Expression {
  return { native: name, args: args.map(expressionOf) };
}

export function operate(left: Operand, operator: Operator, right: Operand): Expression {
  return { operator, left: expressionOf(left), right: expressionOf(right) };
}

export function when(condition: Expression, then: Operand, otherwise: Operand): Expression {
  return native('IF', condition, then, otherwise);
}

/** By its text: the browser's engine holds that 0 = "". */
export function isBlank(of: Expression): Expression {
  return operate(operate(of, '&', ''), '=', '');
}

/** The cell, or "" where it is blank: programs differ on what an empty cell is to a function. */
export function given(of: Expression): Expression {
  return when(isBlank(of), '', of);
}

/** The cell where it is filled in, else the other value. */
export function givenOr(of: Expression, otherwise: Operand): Expression {
  return when(isBlank(of), otherwise, of);
}

/** The cell of `header` in the row of the table whose `keyHeader` equals the key; #N/A when there is none. */
export function lookUp(key: Expression, table: string, keyHeader: string, header: string): Expression {
  return native('INDEX', allOf(table, header), native('MATCH', key, allOf(table, keyHeader), 0));
}
