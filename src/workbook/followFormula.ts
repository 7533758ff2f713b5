/**
 * Works a formula out part by part. Native functions are worked out as the file host does; a part that cannot be
 * followed is noted, and with it falls all that needs its value.
 */
import { evaluateNative, isNativeFunction, takesManyCells } from './evaluation/evaluateNative';
import {
  errorOf,
  plainValue,
  singleValue,
  withoutMessage,
  type ErrorCode,
  type Operand,
} from './evaluation/operand';
import { applyOperator } from './evaluation/operators';
import { innerParts, type CellsOf, type NamedCells, type NotFollowed } from './formulaCells';
import type { Formula } from './parseFormula';
import { isCellError, type ReadValue } from './port';

export type Call = Extract<Formula, { kind: 'call' }>;
type Bare = number | string | boolean;

/** What one of our functions gives. */
export type Outcome =
  { readonly value: Bare | Bare[][] } | { readonly error: ErrorCode; readonly message: string };

/** One of our functions; null for an id that there is not. */
export type RunFunction = (id: string, args: readonly unknown[]) => Outcome | null;

export interface Followed {
  /** null where it cannot be followed. */
  operandOf(part: Formula): Operand | null;
  /** Of all arguments, so that each that cannot be followed is noted. */
  operandsOf(call: Call): (Operand | null)[];
  /** The parts that have been worked out, or tried, so far. */
  reached(): ReadonlySet<Formula>;
  /** The cells that a part's value was taken from, as things stand; a call of ours in it tells for itself. */
  cellsOf(part: Formula): NamedCells[];
  readonly notFollowed: ReadonlyMap<string, NotFollowed>;
}

class CannotFollow extends Error {}

/** Which of their arguments they come to, nobody can tell without working them out. */
const choosing = new Set(['IFS', 'SWITCH', 'CHOOSE', 'IFNA', 'LET', 'LAMBDA', 'XLOOKUP']);

/**
 * @param idOf of a call of ours, null for any other part
 * @param instead what a call of ours, by its text, is taken to give in place of what it does
 */
export function followFormula(
  cells: CellsOf,
  idOf: (part: Formula) => string | null,
  run: RunFunction,
  instead?: { readonly text: string; readonly outcome: Outcome },
): Followed {
  const known = new Map<Formula, Operand | CannotFollow>();
  const notFollowed = new Map<string, NotFollowed>();

  const refuse = (part: Formula, why: NotFollowed): never => {
    notFollowed.set(part.text, why);
    throw new CannotFollow();
  };

  function tried(part: Formula): Operand | null {
    try {
      return evaluate(part);
    } catch (error) {
      if (error instanceof CannotFollow) return null;
      throw error;
    }
  }

  function evaluate(part: Formula): Operand {
    const before = known.get(part);
    if (before instanceof CannotFollow) throw before;
    if (before !== undefined) return before;
    try {
      const operand = evaluateAnew(part);
      known.set(part, operand);
      return operand;
    } catch (error) {
      if (error instanceof CannotFollow) known.set(part, error);
      throw error;
    }
  }

  function evaluateAnew(part: Formula): Operand {
    switch (part.kind) {
      case 'value':
        return plainValue(part.value);
      case 'array':
        return { kind: 'list', rows: part.rows };
      case 'operation':
        // Both first, so that of two sides that cannot be followed each is noted.
        tried(part.left);
        tried(part.right);
        return plainValue(applyOperator(part.operator, single(part.left), single(part.right)));
      case 'call':
        return idOf(part) === null ? callNative(part) : callOurs(part);
      case 'other':
        part.parts.forEach(tried);
        return refuse(part, 'notation');
      default: {
        const found = cells.get(part);
        return found === undefined || 'why' in found
          ? refuse(part, found?.why ?? 'name')
          : operandOfCells(found);
      }
    }
  }

  const single = (part: Formula): ReadValue => singleValue(evaluateOne(part));

  /** With several values a program goes through them one by one; that is not followed. */
  function evaluateOne(part: Formula): Operand {
    const operand = evaluate(part);
    return isSeveral(operand) ? refuse(part, 'list') : operand;
  }

  function callNative(part: Call): Operand {
    const { name, args } = part;
    const given = args.filter((arg) => arg !== null);
    if (!isNativeFunction(name) || given.length < args.length) {
      if (!choosing.has(name)) given.forEach(tried);
      return refuse(part, 'function');
    }
    return evaluateNative(name, given, (arg) =>
      takesManyCells(name, given.indexOf(arg)) ? evaluate(arg) : evaluateOne(arg),
    );
  }

  const operandsOf = (part: Call): (Operand | null)[] =>
    part.args.map((arg) => (arg === null ? plainValue(null) : tried(arg)));

  function callOurs(part: Call): Operand {
    const args = operandsOf(part).map((operand) => {
      if (operand === null) throw new CannotFollow();
      return argumentOf(operand);
    });
    // A program hands a single error on without asking the function.
    const error = args.find(isCellError);
    if (error !== undefined) return plainValue(error);
    const asked = part.text === instead?.text ? instead.outcome : run(idOf(part) ?? '', args);
    const outcome = asked ?? refuse(part, 'function');
    if ('error' in outcome) return plainValue(errorOf(outcome.error, outcome.message));
    const { value } = outcome;
    return Array.isArray(value) ? { kind: 'list', rows: value } : plainValue(value);
  }

  function cellsOf(part: Formula): NamedCells[] {
    if (idOf(part) !== null) return [];
    const own = known.has(part) ? cells.get(part) : undefined;
    const found = own === undefined || 'why' in own ? [] : [own];
    return [...found, ...innerParts(part).flatMap(cellsOf)];
  }

  return { operandOf: tried, operandsOf, reached: () => new Set(known.keys()), cellsOf, notFollowed };
}

function operandOfCells({ values, isColumn, area }: NamedCells): Operand {
  if (!isColumn && area.rows * area.columns === 1) {
    return { kind: 'cell', value: withoutMessage(values[0]?.[0] ?? null) };
  }
  return area.columns === 1
    ? { kind: 'range', values: values.map(([value = null]) => value) }
    : { kind: 'list', rows: values };
}

function isSeveral(operand: Operand): boolean {
  if (operand.kind === 'range') return operand.values.length > 1;
  return operand.kind === 'list' && operand.rows.flat().length > 1;
}

/** As a function gets it. */
export function argumentOf(operand: Operand): unknown {
  if (operand.kind === 'range') return operand.values.map((value) => [value]);
  return operand.kind === 'list' ? operand.rows : operand.value;
}
