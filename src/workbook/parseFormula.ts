/** Reads an en-US formula, ours or somebody's own, as a tree. Longer than most files: every notation stands here. */
import type { Operator, Span } from './port';
import { ranks } from './printFormula';

/** A part of a formula. `text` is how it is written there, without parentheses around it. */
export type Formula = { readonly text: string } & (
  | { readonly kind: 'value'; readonly value: string | number | boolean }
  /** Cells by address. Whole rows and columns end where a sheet ends; `sheet` is null for the formula's own. */
  | { readonly kind: 'cells'; readonly sheet: string | null; readonly span: Span }
  /** The cell of that column in the formula's row, or all cells of it; `table` is null for the formula's own. */
  | { readonly kind: 'ofRow' | 'allOf'; readonly table: string | null; readonly header: string }
  | { readonly kind: 'name'; readonly name: string }
  /** Any function, by its name in capitals. null is an omitted argument. */
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly (Formula | null)[] }
  | {
      readonly kind: 'operation';
      readonly operator: Operator;
      readonly left: Formula;
      readonly right: Formula;
    }
  /** An array written out. */
  | { readonly kind: 'array'; readonly rows: readonly (readonly (string | number | boolean)[])[] }
  /** A notation that is told from others and not followed: powers, spilled ranges, other workbooks. */
  | { readonly kind: 'other'; readonly parts: readonly Formula[] }
);

/** The last row and column of a sheet of a present-day program, from 0. */
const lastRow = 1048575;
const lastColumn = 16383;

/** Tighter than the operators of `ranks`. */
const powerRank = 5;

const patterns = {
  space: /\s*/y,
  text: /"((?:[^"]|"")*)"/y,
  number: /(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?/iy,
  error: /#(?:N\/A|VALUE!|NUM!|DIV\/0!|REF!|NAME\?|NULL!|SPILL!|CALC!)/iy,
  quotedSheet: /'((?:[^']|'')+)'!/y,
  sheet: /([\p{L}_][\p{L}\p{N}_.]*)!/uy,
  otherBook: /\[[^\][]+\][\p{L}\p{N}_. ]*!/uy,
  cells: /\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?(?![\p{L}\p{N}_.(])/iuy,
  columns: /\$?([A-Z]{1,3}):\$?([A-Z]{1,3})(?![\p{L}\p{N}_.(])/iuy,
  rows: /\$?(\d+):\$?(\d+)(?![\p{L}\p{N}_.(])/uy,
  call: /([\p{L}_\\][\p{L}\p{N}_.\\]*)\s*\(/uy,
  name: /[\p{L}_\\][\p{L}\p{N}_.?\\]*/uy,
  brackets: /\[(?:[^[\]']|'[^]|\[(?:[^[\]']|'[^])*\])*\]/y,
  operator: /<>|<=|>=|[=<>&+\-*/^]/y,
};

/** How a program keeps a function that is younger than the file format. */
const youngerPrefix = /^_XLFN\.(_XLWS\.)?/;

class NotAFormula extends Error {}

/** @param formula with its "="; null for one that cannot be read as a whole */
export function parseFormula(formula: string): Formula | null {
  let at = 0;

  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(formula);
    if (found !== null) at = pattern.lastIndex;
    return found;
  };
  const skip = (): void => void match(patterns.space);
  const take = (character: string): boolean => {
    skip();
    if (formula[at] !== character) return false;
    at += 1;
    return true;
  };
  const demand = (character: string): void => {
    if (!take(character)) throw new NotAFormula();
  };
  const since = (start: number): string => formula.slice(start, at).trim();

  function operation(leastRank: number): Formula {
    skip();
    const start = at;
    let left = signed();
    for (;;) {
      skip();
      const before = at;
      const operator = match(patterns.operator)?.[0];
      const rank = operator === '^' ? powerRank : ranks[operator as Operator];
      if (operator === undefined || rank < leastRank) {
        at = before;
        return left;
      }
      const right = operation(rank + 1);
      const text = since(start);
      left =
        operator === '^'
          ? { text, kind: 'other', parts: [left, right] }
          : { text, kind: 'operation', operator: operator as Operator, left, right };
    }
  }

  function signed(): Formula {
    skip();
    const start = at;
    if (take('+')) return signed();
    if (take('-')) {
      const of = signed();
      const text = since(start);
      if (of.kind === 'value' && typeof of.value === 'number')
        return { text, kind: 'value', value: -of.value };
      return {
        text,
        kind: 'operation',
        operator: '-',
        left: { text: '0', kind: 'value', value: 0 },
        right: of,
      };
    }
    if (take('@')) return { kind: 'other', parts: [signed()], text: since(start) };
    let found = operand();
    for (;;) {
      if (take('%')) {
        const hundred: Formula = { text: '100', kind: 'value', value: 100 };
        found = { kind: 'operation', operator: '/', left: found, right: hundred, text: since(start) };
      } else if (formula[at] === '#') {
        at += 1;
        found = { kind: 'other', parts: [found], text: since(start) };
      } else if (take(':')) {
        found = { kind: 'other', parts: [found, operand()], text: since(start) };
      } else return found;
    }
  }

  function operand(): Formula {
    skip();
    const start = at;
    if (take('(')) {
      const inner = operation(1);
      demand(')');
      return inner;
    }
    if (take('{')) return { kind: 'array', rows: arrayRows(), text: since(start) };
    const text = match(patterns.text);
    if (text !== null) return { text: text[0], kind: 'value', value: (text[1] ?? '').replaceAll('""', '"') };
    const error = match(patterns.error) ?? match(patterns.otherBook);
    if (error !== null) {
      if (error[0].startsWith('[')) afterSheet(null);
      return { kind: 'other', parts: [], text: since(start) };
    }
    const quoted = match(patterns.quotedSheet);
    const sheet = quoted?.[1]?.replaceAll("''", "'") ?? match(patterns.sheet)?.[1];
    if (sheet !== undefined) {
      const found = afterSheet(sheet);
      const told = since(start);
      return sheet.includes('[') ? { kind: 'other', parts: [], text: told } : { ...found, text: told };
    }
    const reference = cells(null);
    if (reference !== null) return reference;
    const number = match(patterns.number);
    if (number !== null) return { text: number[0], kind: 'value', value: Number(number[0]) };
    const called = match(patterns.call)?.[1];
    if (called !== undefined) {
      const args = callArgs();
      return {
        kind: 'call',
        name: called.toUpperCase().replace(youngerPrefix, ''),
        args,
        text: since(start),
      };
    }
    const name = match(patterns.name)?.[0] ?? null;
    const brackets = match(patterns.brackets)?.[0];
    if (brackets !== undefined) return { ...structured(name, brackets.slice(1, -1)), text: since(start) };
    if (name === null) throw new NotAFormula();
    if (/^(TRUE|FALSE)$/i.test(name)) return { text: name, kind: 'value', value: /^t/i.test(name) };
    return { text: name, kind: 'name', name };
  }

  /** Cells of another sheet, or a name that belongs to it. */
  function afterSheet(sheet: string | null): Formula {
    const start = at;
    const found = cells(sheet);
    if (found !== null) return found;
    if (match(patterns.name) === null) throw new NotAFormula();
    return { kind: 'other', parts: [], text: since(start) };
  }

  function cells(sheet: string | null): Formula | null {
    const found = spanAt();
    if (found === null) return null;
    return { kind: 'cells', sheet, span: found.span, text: found.text };
  }

  function spanAt(): { readonly span: Span; readonly text: string } | null {
    const cell = match(patterns.cells);
    if (cell !== null) {
      const [text, column = '', row = '', toColumn = column, toRow = row] = cell;
      return { text, span: spanBetween(row, column, toRow, toColumn) };
    }
    const columns = match(patterns.columns);
    if (columns !== null) {
      const [text, column = '', toColumn = ''] = columns;
      return { text, span: spanBetween('1', column, String(lastRow + 1), toColumn) };
    }
    const rows = match(patterns.rows);
    if (rows === null) return null;
    const [text, row = '', toRow = ''] = rows;
    const { column, columns: width } = { column: 0, columns: lastColumn + 1 };
    return { text, span: { ...spanBetween(row, 'A', toRow, 'A'), column, columns: width } };
  }

  function callArgs(): (Formula | null)[] {
    if (take(')')) return [];
    const args: (Formula | null)[] = [];
    for (;;) {
      skip();
      args.push(formula[at] === ',' || formula[at] === ')' ? null : operation(1));
      if (take(')')) return args;
      demand(',');
    }
  }

  function arrayRows(): (string | number | boolean)[][] {
    const rows: (string | number | boolean)[][] = [[]];
    for (;;) {
      const one = signed();
      if (one.kind !== 'value') throw new NotAFormula();
      rows.at(-1)?.push(one.value);
      if (take('}')) return rows;
      if (take(';')) rows.push([]);
      else demand(',');
    }
  }

  try {
    demand('=');
    const whole = operation(1);
    skip();
    return at === formula.length ? whole : null;
  } catch (error) {
    if (error instanceof NotAFormula) return null;
    throw error;
  }
}

function spanBetween(row: string, column: string, toRow: string, toColumn: string): Span {
  const [top, bottom] = [Number(row) - 1, Number(toRow) - 1].sort((one, other) => one - other) as [
    number,
    number,
  ];
  const [left, right] = [columnOf(column), columnOf(toColumn)].sort((one, other) => one - other) as [
    number,
    number,
  ];
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/** From 0. */
function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** What stands in the brackets behind a table's name; behind none it is the formula's own table. */
function structured(
  table: string | null,
  inside: string,
):
  | { readonly kind: 'ofRow' | 'allOf'; readonly table: string | null; readonly header: string }
  | { readonly kind: 'other'; readonly parts: readonly Formula[] } {
  const ofRow =
    /^\s*\[#This Row\]\s*,\s*\[((?:[^[\]']|'[^])+)\]\s*$/i.exec(inside)?.[1] ??
    /^\s*@\s*\[((?:[^[\]']|'[^])+)\]\s*$/.exec(inside)?.[1] ??
    /^\s*@((?:[^[\]'#@:,]|'[^])+)$/.exec(inside)?.[1];
  if (ofRow !== undefined) return { kind: 'ofRow', table, header: unescapeColumn(ofRow) };
  const allOf =
    /^\s*(?:\[#Data\]\s*,\s*)?\[((?:[^[\]'#]|'[^])+)\]\s*$/i.exec(inside)?.[1] ??
    /^((?:[^[\]'#@:,]|'[^])+)$/.exec(inside)?.[1];
  if (allOf !== undefined) return { kind: 'allOf', table, header: unescapeColumn(allOf) };
  return { kind: 'other', parts: [] };
}

function unescapeColumn(name: string): string {
  return name.replace(/'([^])/g, '$1');
}
