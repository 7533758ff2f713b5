/**
 * What a formula calls of our functions, with the values that its arguments have now. Native functions are worked out
 * as the file host does; what cannot be followed is named.
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
import {
  everyPart,
  innerParts,
  readCellsOf,
  type CellsOf,
  type NamedCells,
  type NotFollowed,
} from './formulaCells';
import { parseFormula, type Formula } from './parseFormula';
import { isCellError, type Area, type ReadValue, type WorkbookPort } from './port';

type Bare = number | string | boolean;

export interface UnfoldOptions {
  /** Stands before the ids of our functions, its dot included. */
  readonly namespace: string;
  /** Tables that the cell may stand in. */
  readonly tables: readonly string[];
  /** One of our functions; null for an id that there is not. */
  readonly run: (
    id: string,
    args: readonly unknown[],
  ) => { readonly value: Bare | Bare[][] } | { readonly error: ErrorCode; readonly message: string } | null;
}

export interface UnfoldedArgument {
  readonly text: string;
  /** The cells that its value was taken from. */
  readonly from: readonly NamedCells[];
  /** Ids of our functions that it calls. */
  readonly calls: readonly string[];
  /** Whether it is worked out, from nothing but what is written in it. */
  readonly isSum: boolean;
}

export interface UnfoldedCall {
  readonly id: string;
  readonly text: string;
  /** Whether the formula comes to it as things stand; null where that cannot be told. */
  readonly isAsked: boolean | null;
  /** null for one that is left out. */
  readonly args: readonly (UnfoldedArgument | null)[];
  /** As the function gets them; null for one that cannot be worked out. */
  readonly values: readonly ({ readonly value: unknown } | null)[];
}

export interface Unfolded {
  readonly formula: string;
  readonly shown: ReadValue;
  /** What is worked out here; undefined where that cannot be done. Of a list the first. */
  readonly result: ReadValue | undefined;
  /** Those inside before what they are in. */
  readonly calls: readonly UnfoldedCall[];
  readonly notFollowed: readonly { readonly text: string; readonly why: NotFollowed }[];
}

/** @returns null for a cell without a formula; 'unreadable' for a formula that cannot be read. @throws HostError */
export async function unfoldFormula(
  workbook: WorkbookPort,
  at: Area,
  options: UnfoldOptions,
): Promise<Unfolded | 'unreadable' | null> {
  const { values, formulas } = await workbook.read({ ...at, rows: 1, columns: 1 });
  const formula = formulas[0]?.[0] ?? null;
  const shown = values[0]?.[0] ?? null;
  if (formula === null) return null;
  const whole = parseFormula(formula);
  if (whole === null) return 'unreadable';
  const ours = everyPart(whole).filter((part) => idOf(part, options.namespace) !== null);
  if (ours.length === 0) return { formula, shown, result: undefined, calls: [], notFollowed: [] };
  const cells = await readCellsOf(workbook, whole, at, options.tables);
  return { formula, shown, ...workOut(whole, cells, options) };
}

function idOf(part: Formula, namespace: string): string | null {
  const isOurs = part.kind === 'call' && part.name.startsWith(namespace.toUpperCase());
  return isOurs ? part.name.slice(namespace.length) : null;
}

/** A part that cannot be followed, and with it all that needs its value. */
class CannotFollow extends Error {}

/** Of these, what they come to depends on more than the values of their arguments. */
const choosing = new Set(['IFS', 'SWITCH', 'CHOOSE', 'IFNA', 'LET', 'LAMBDA', 'XLOOKUP']);

function workOut(
  whole: Formula,
  cells: CellsOf,
  { namespace, run }: UnfoldOptions,
): Pick<Unfolded, 'result' | 'calls' | 'notFollowed'> {
  const known = new Map<Formula, Operand | CannotFollow>();
  const notFollowed = new Map<string, NotFollowed>();

  const refuse = (part: Formula, why: NotFollowed): never => {
    notFollowed.set(part.text, why);
    throw new CannotFollow();
  };
  /** null where it cannot be followed. */
  const tried = (part: Formula): Operand | null => {
    try {
      return evaluate(part);
    } catch (error) {
      if (error instanceof CannotFollow) return null;
      throw error;
    }
  };

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
      case 'cells':
      case 'name':
      case 'ofRow':
      case 'allOf': {
        const found = cells.get(part);
        if (found === undefined || 'why' in found) return refuse(part, found?.why ?? 'name');
        return operandOf(found);
      }
      case 'operation':
        return plainValue(applyOperator(part.operator, single(part.left), single(part.right)));
      case 'other':
        part.parts.forEach(tried);
        return refuse(part, 'notation');
      case 'call':
        return call(part);
    }
  }

  /** With several values a program goes through them one by one; that is not followed. */
  function single(part: Formula): ReadValue {
    const operand = evaluate(part);
    if (isSeveral(operand)) refuse(part, 'list');
    return singleValue(operand);
  }

  function call(part: Extract<Formula, { kind: 'call' }>): Operand {
    if (idOf(part, namespace) !== null) {
      const outcome = resultOf(part);
      return outcome ?? refuse(part, 'function');
    }
    const { name } = part;
    if (!isNativeFunction(name) || part.args.includes(null)) {
      if (!choosing.has(name)) for (const arg of part.args) if (arg !== null) tried(arg);
      return refuse(part, 'function');
    }
    const args = part.args as readonly Formula[];
    return evaluateNative(name, args, (arg) =>
      takesManyCells(name, args.indexOf(arg)) ? evaluate(arg) : plainUnlessCell(arg),
    );
  }

  function plainUnlessCell(part: Formula): Operand {
    const operand = evaluate(part);
    return isSeveral(operand) ? refuse(part, 'list') : operand;
  }

  /** Also of a call that the formula does not come to. All arguments are tried, so that each is told of. */
  function argumentsOf(part: Extract<Formula, { kind: 'call' }>): (Operand | null)[] {
    return part.args.map((arg) => (arg === null ? plainValue(null) : tried(arg)));
  }

  /** null where there is no such function. */
  function resultOf(part: Extract<Formula, { kind: 'call' }>): Operand | null {
    const operands = argumentsOf(part);
    const args = operands.map((operand) => {
      if (operand === null) throw new CannotFollow();
      return argumentOf(operand);
    });
    // A program hands a single error on without asking the function.
    const error = args.find(isCellError);
    if (error !== undefined) return plainValue(error);
    const outcome = run(idOf(part, namespace) ?? '', args);
    if (outcome === null) return null;
    if ('error' in outcome) return plainValue(errorOf(outcome.error, outcome.message));
    const { value } = outcome;
    return Array.isArray(value) ? { kind: 'list', rows: value } : plainValue(value);
  }

  /** Only what its value hangs on, as things stand. Of a call inside it tells for itself. */
  function cellsOf(part: Formula): NamedCells[] {
    if (idOf(part, namespace) !== null) return [];
    const own = known.has(part) ? cells.get(part) : undefined;
    const found = own === undefined || 'why' in own ? [] : [own];
    return [...found, ...innerParts(part).flatMap(cellsOf)];
  }

  function argumentAs(arg: Formula): UnfoldedArgument {
    const from = distinct(cellsOf(arg));
    const ids = new Set(everyPart(arg).flatMap((part) => idOf(part, namespace) ?? []));
    const isSum = arg.kind !== 'value' && arg.kind !== 'array' && from.length + ids.size === 0;
    return { text: arg.text, from, calls: [...ids], isSum };
  }

  const result = tried(whole);
  const asked = new Set(known.keys());
  const isWhole = result !== null;
  const calls = everyPart(whole).flatMap((part): UnfoldedCall[] => {
    const id = idOf(part, namespace);
    if (id === null || part.kind !== 'call') return [];
    tried(part);
    const operands = argumentsOf(part);
    return [
      {
        id,
        text: part.text,
        isAsked: asked.has(part) ? true : isWhole ? false : null,
        args: part.args.map((arg) => arg && argumentAs(arg)),
        values: operands.map((operand) => operand && { value: argumentOf(operand) }),
      },
    ];
  });
  return {
    result: result === null ? undefined : firstOf(result),
    calls,
    notFollowed: [...notFollowed].map(([text, why]) => ({ text, why })),
  };
}

function distinct(cells: readonly NamedCells[]): NamedCells[] {
  return [...new Map(cells.map((one) => [JSON.stringify(one.area), one])).values()];
}

function operandOf({ values, isColumn, area }: NamedCells): Operand {
  if (!isColumn && area.rows * area.columns === 1)
    return { kind: 'cell', value: withoutMessage(values[0]?.[0] ?? null) };
  return area.columns === 1
    ? { kind: 'range', values: values.map(([value = null]) => value) }
    : { kind: 'list', rows: values };
}

function isSeveral(operand: Operand): boolean {
  if (operand.kind === 'range') return operand.values.length > 1;
  return operand.kind === 'list' && operand.rows.flat().length > 1;
}

/** As a function gets it. */
function argumentOf(operand: Operand): unknown {
  if (operand.kind === 'range') return operand.values.map((value) => [value]);
  return operand.kind === 'list' ? operand.rows : operand.value;
}

function firstOf(operand: Operand): ReadValue {
  if (operand.kind === 'range') return operand.values[0] ?? null;
  return operand.kind === 'list' ? (operand.rows[0]?.[0] ?? null) : operand.value;
}
