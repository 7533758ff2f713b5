/** What a formula calls of our functions, with the values that its arguments have now, and what cannot be followed. */
import type { Operand } from './evaluation/operand';
import { argumentOf, followFormula, type Followed, type Outcome, type RunFunction } from './followFormula';
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

export interface UnfoldOptions {
  /** Stands before the ids of our functions, its dot included. */
  readonly namespace: string;
  /** Tables that the cell may stand in. */
  readonly tables: readonly string[];
  readonly run: RunFunction;
}

export interface UnfoldedArgument {
  readonly text: string;
  /** The cells that its value was taken from; none where that cannot be told. */
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
  /**
   * What the formula comes to when one argument is another, so that the call gives something else; undefined where that
   * cannot be told: the formula does not come to the call, is not followed, gives a list, or uses what that argument
   * stands on elsewhere too.
   */
  wholeWith(argument: number, outcome: Outcome): ReadValue | undefined;
}

/** A part of the formula around our functions. */
export interface UnfoldedPart {
  /** Each of our functions with "…" for its arguments. */
  readonly text: string;
  readonly value: ReadValue;
}

export interface Unfolded {
  readonly shown: ReadValue;
  /** What is worked out here; undefined where that cannot be done. Of a list the first. */
  readonly result: ReadValue | undefined;
  /** Of what is worked out, in cells. */
  readonly size: { readonly rows: number; readonly columns: number };
  /** Those inside before what they are in. */
  readonly calls: readonly UnfoldedCall[];
  /** What the formula goes on to do with what they give, in that order, as far as it is followed. */
  readonly around: readonly UnfoldedPart[];
  readonly notFollowed: readonly { readonly text: string; readonly why: NotFollowed }[];
}

/** @returns null for a cell without a call of ours; 'unreadable' for a formula with one that cannot be read. @throws HostError */
export async function unfoldFormula(
  workbook: WorkbookPort,
  at: Area,
  { namespace, tables, run }: UnfoldOptions,
): Promise<Unfolded | 'unreadable' | null> {
  const { values, formulas } = await workbook.read({ ...at, rows: 1, columns: 1 });
  const formula = formulas[0]?.[0] ?? null;
  if (formula === null) return null;
  const whole = parseFormula(formula);
  if (whole === null) return formula.toUpperCase().includes(namespace) ? 'unreadable' : null;
  const idOf = (part: Formula): string | null =>
    part.kind === 'call' && part.name.startsWith(namespace) ? part.name.slice(namespace.length) : null;
  if (everyPart(whole).every((part) => idOf(part) === null)) return null;
  const cells = await readCellsOf(workbook, whole, at, tables);
  const followed = followFormula(cells, idOf, run);
  const result = followed.operandOf(whole);
  const reached = followed.reached();
  const calls = everyPart(whole).flatMap((part): UnfoldedCall[] => {
    const id = idOf(part);
    if (id === null || part.kind !== 'call') return [];
    const isAsked = reached.has(part) ? true : result === null ? null : false;
    followed.operandOf(part);
    const operands = followed.operandsOf(part).map((operand) => operand && { value: argumentOf(operand) });
    const args = part.args.map((arg) => arg && unfoldArgument(arg, followed, idOf));
    const wholeWith: UnfoldedCall['wholeWith'] = (argument, outcome) => {
      if (isAsked !== true || usesElsewhere(whole, part, argument, cells)) return undefined;
      const operand = followFormula(cells, idOf, run, { text: part.text, outcome }).operandOf(whole);
      const { rows, columns } = sizeOf(operand);
      return operand === null || rows * columns > 1 ? undefined : firstOf(operand);
    };
    return [{ id, text: part.text, isAsked, args, values: operands, wholeWith }];
  });
  return {
    shown: values[0]?.[0] ?? null,
    result: result === null ? undefined : firstOf(result),
    size: sizeOf(result),
    calls,
    around: partsAround(whole, followed, reached, idOf),
    notFollowed: [...followed.notFollowed].map(([text, why]) => ({ text, why })),
  };
}

function unfoldArgument(
  arg: Formula,
  followed: Followed,
  idOf: (part: Formula) => string | null,
): UnfoldedArgument {
  // A function of the program, such as OFFSET, may take the value from another cell than those that it names.
  const cells = followed.operandOf(arg) === null ? [] : followed.cellsOf(arg);
  const byPlace = cells.map((one) => [JSON.stringify(one.area), one] as const);
  const from = [...new Map(byPlace).values()];
  const calls = [...new Set(everyPart(arg).flatMap((part) => idOf(part) ?? []))];
  const isSum = arg.kind !== 'value' && arg.kind !== 'array' && from.length + calls.length === 0;
  return { text: arg.text, from, calls, isSum };
}

/** Whether the formula names cells of the call's argument outside it, but to see that they are filled in. */
function usesElsewhere(
  whole: Formula,
  call: Extract<Formula, { kind: 'call' }>,
  argument: number,
  cells: CellsOf,
): boolean {
  const areas = (part: Formula): Area[] => {
    const found = cells.get(part);
    return found === undefined || 'why' in found ? [] : [found.area];
  };
  const arg = call.args[argument];
  const own = arg == null ? [] : everyPart(arg).flatMap(areas);
  const isUsed = (part: Formula): boolean => {
    if (part === arg || isBlankTest(part)) return false;
    // The very same call moves along.
    if (part !== call && part.kind === 'call' && part.text === call.text) return false;
    return areas(part).some((area) => own.some((one) => overlap(one, area))) || innerParts(part).some(isUsed);
  };
  return isUsed(whole);
}

function isBlankTest(part: Formula): boolean {
  if (part.kind !== 'operation' || !['=', '<>'].includes(part.operator)) return false;
  return [part.left, part.right].some((side) => side.kind === 'value' && side.value === '');
}

function overlap(one: Area, other: Area): boolean {
  const meet = (start: number, count: number, from: number, many: number): boolean =>
    start < from + many && from < start + count;
  return (
    one.sheet === other.sheet &&
    meet(one.row, one.rows, other.row, other.rows) &&
    meet(one.column, one.columns, other.column, other.columns)
  );
}

function partsAround(
  whole: Formula,
  followed: Followed,
  reached: ReadonlySet<Formula>,
  idOf: (part: Formula) => string | null,
): UnfoldedPart[] {
  const parts: UnfoldedPart[] = [];
  const shorten = (part: Formula): string => {
    const id = idOf(part);
    if (id !== null) return `${id}(…)`;
    return innerParts(part).reduce(
      (text, inner) => text.replace(inner.text, () => shorten(inner)),
      part.text,
    );
  };
  /** What our calls in the part come to; one that hands it on, such as an IF, says nothing new. */
  const follow = (part: Formula): readonly ReadValue[] => {
    const operand = reached.has(part) ? followed.operandOf(part) : null;
    const inside = idOf(part) === null ? innerParts(part).flatMap(follow) : null;
    const { rows, columns } = sizeOf(operand);
    if (operand === null || inside?.length === 0 || rows * columns > 1) return inside ?? [];
    const value = firstOf(operand);
    if (inside !== null && !isCellError(value) && !inside.includes(value)) {
      parts.push({ text: shorten(part), value });
    }
    return [value];
  };
  follow(whole);
  return parts;
}

function sizeOf(operand: Operand | null): Unfolded['size'] {
  if (operand?.kind === 'range') return { rows: operand.values.length, columns: 1 };
  if (operand?.kind !== 'list') return { rows: 1, columns: 1 };
  return { rows: operand.rows.length, columns: operand.rows[0]?.length ?? 1 };
}

function firstOf(operand: Operand): ReadValue {
  if (operand.kind === 'range') return operand.values[0] ?? null;
  return operand.kind === 'list' ? (operand.rows[0]?.[0] ?? null) : operand.value;
}
