/** Writes an expression as the en-US formula that Excel and the browser workbook both read. */
import type { Expression, NativeFunction, Operator } from './port';

export interface Dialect {
  /** Stands before the ids of our functions, its dot included. */
  readonly namespace: string;
  /** The table that the formula stands in; null outside a table. */
  readonly table: string | null;
  /** Whether it is written into a file: there functions younger than the format have a prefix. */
  readonly isStored?: boolean;
}

const youngerThanFormat: ReadonlySet<NativeFunction> = new Set(['MINIFS']);

/** Operators that bind tighter have a higher rank. All of them group from the left. */
export const ranks: Readonly<Record<Operator, number>> = {
  '=': 1,
  '<>': 1,
  '<': 1,
  '<=': 1,
  '>': 1,
  '>=': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
};

/** With its "=". @throws RangeError for a column outside a table and for a number that no cell can hold */
export function printFormula(expression: Expression, dialect: Dialect): string {
  return `=${print(expression, dialect)}`;
}

function print(expression: Expression, dialect: Dialect): string {
  if ('value' in expression) return printValue(expression.value);
  if ('column' in expression) {
    if (dialect.table === null) throw new RangeError(`column ${expression.column} outside a table`);
    return `${dialect.table}[[#This Row],[${escapeColumn(expression.column)}]]`;
  }
  if ('table' in expression) return `${expression.table}[${columnSpecifier(expression.allOf)}]`;
  if ('input' in expression) return expression.input;
  if ('typed' in expression) return expression.typed;
  if ('call' in expression) {
    const args = [...expression.args];
    while (args.length > 0 && args.at(-1) === null) args.pop();
    const printed = args.map((arg) => (arg === null ? '' : print(arg, dialect)));
    return `${dialect.namespace}${expression.call}(${printed.join(',')})`;
  }
  if ('native' in expression) {
    const prefix = dialect.isStored === true && youngerThanFormat.has(expression.native) ? '_xlfn.' : '';
    return `${prefix}${expression.native}(${expression.args.map((arg) => print(arg, dialect)).join(',')})`;
  }
  const rank = ranks[expression.operator];
  const left = printOperand(expression.left, (inner) => inner < rank, dialect);
  const right = printOperand(expression.right, (inner) => inner <= rank, dialect);
  return `${left}${expression.operator}${right}`;
}

function printOperand(
  operand: Expression,
  needsParentheses: (rank: number) => boolean,
  dialect: Dialect,
): string {
  const printed = print(operand, dialect);
  if (!('operator' in operand)) return printed;
  return needsParentheses(ranks[operand.operator]) ? `(${printed})` : printed;
}

function printValue(value: string | number | boolean): string {
  if (typeof value === 'string') return printText(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (!Number.isFinite(value)) throw new RangeError(`${value} in a formula`);
  const printed = String(value).toUpperCase();
  // 2--3 reads badly, and programs differ on what they make of it.
  return value < 0 ? `(${printed})` : printed;
}

export function printText(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** In a structured reference these have a meaning of their own; a quote before them takes it away. */
function escapeColumn(name: string): string {
  return name.replace(/[[\]#'@]/g, "'$&");
}

/** A name of letters, digits, underscores and spaces stands as it is; any other takes brackets of its own. */
function columnSpecifier(name: string): string {
  return /^[\p{L}\p{N}_ ]+$/u.test(name) ? name : `[${escapeColumn(name)}]`;
}
