import type { CellError, ReadValue } from '../port';
import { isCellError } from '../port';
import { keep15Digits, numberInText, truthInText } from './coerceValue';
import { errorOf } from './operand';
import { compareValues } from './operators';

/**
 * COUNTIF, SUMIFS and exact MATCH over a table's column would go through all of it for every row. Each column is indexed
 * once; the indexes live as long as the column's array, which is made anew for every state of the workbook.
 */
const matchesByColumn = new WeakMap<readonly ReadValue[], ReadonlyMap<string, readonly number[]>>();
const placesByColumn = new WeakMap<readonly ReadValue[], ReadonlyMap<string, number>>();

function keyOf(value: ReadValue): string {
  if (typeof value === 'number') return `number ${keep15Digits(value)}`;
  if (typeof value === 'string') return `text ${value.toLowerCase()}`;
  if (typeof value === 'boolean') return `truth ${value}`;
  return value === null ? 'empty' : `error ${value.error}`;
}

/** Position from 1, or #N/A. `order` 0 is an exact match, 1 and -1 expect sorted values, as in Excel. */
export function findPosition(
  wanted: ReadValue,
  values: readonly ReadValue[],
  order: number,
): number | CellError {
  if (isCellError(wanted)) return wanted;
  const sought = wanted ?? 0;
  if (order !== 0) return findInOrder(sought, values, order);
  const pattern = typeof sought === 'string' ? wildcardPattern(sought) : null;
  if (pattern) {
    const index = values.findIndex((value) => typeof value === 'string' && pattern.test(value));
    return index < 0 ? errorOf('#N/A') : index + 1;
  }
  return indexPlaces(values).get(keyOf(sought)) ?? errorOf('#N/A');
}

function findInOrder(
  wanted: string | number | boolean,
  values: readonly ReadValue[],
  order: number,
): number | CellError {
  let found = 0;
  for (const [index, value] of values.entries()) {
    if (typeof value !== typeof wanted) continue;
    const difference = compareValues(value, wanted);
    if (order > 0 ? difference > 0 : difference < 0) break;
    found = index + 1;
    if (order < 0 && difference === 0) break;
  }
  return found === 0 ? errorOf('#N/A') : found;
}

function indexPlaces(values: readonly ReadValue[]): ReadonlyMap<string, number> {
  const known = placesByColumn.get(values);
  if (known) return known;
  const places = new Map<string, number>();
  for (const [index, value] of values.entries()) {
    const key = keyOf(value);
    if (!places.has(key)) places.set(key, index + 1);
  }
  placesByColumn.set(values, places);
  return places;
}

/**
 * The indexes of the values that meet a criterion. Excel reads a text criterion: "<5" and "=x" are comparisons, so a
 * plot named "=2+2" is counted by the criterion "="&"=2+2", not by its own name. Text that looks like a number is one,
 * on both sides: "007" counts 7 too.
 */
export function findMatches(values: readonly ReadValue[], criterion: ReadValue): readonly number[] {
  if (typeof criterion !== 'string') return indexMatches(values).get(keyOf(criterion ?? 0)) ?? [];
  const [, operator = '', operand = ''] = /^(<>|<=|>=|=|<|>)?([\s\S]*)$/.exec(criterion) ?? [];
  if (operator === '' || operator === '=') return findEqual(values, operand, operator);
  if (operator === '<>') {
    const equal = new Set(findEqual(values, operand, '='));
    return findWhere(values, (_, index) => !equal.has(index));
  }
  const limit = numberInText(operand) ?? truthInText(operand) ?? operand;
  return findWhere(values, (value) => {
    if (typeof value !== typeof limit) return false;
    const difference = compareValues(value, limit);
    if (operator === '<') return difference < 0;
    if (operator === '<=') return difference <= 0;
    return operator === '>' ? difference > 0 : difference >= 0;
  });
}

/** The indexes at which every column meets its criterion; null where the columns differ in length. */
export function findMatchesOfAll(
  pairs: readonly { readonly values: readonly ReadValue[]; readonly criterion: ReadValue }[],
): readonly number[] | null {
  const [first, ...rest] = pairs;
  if (first === undefined || rest.some(({ values }) => values.length !== first.values.length)) return null;
  return rest.reduce(
    (kept, { values, criterion }) => {
      const met = new Set(findMatches(values, criterion));
      return kept.filter((index) => met.has(index));
    },
    findMatches(first.values, first.criterion),
  );
}

function findWhere(
  values: readonly ReadValue[],
  isMet: (value: ReadValue, index: number) => boolean,
): readonly number[] {
  return values.flatMap((value, index) => (isMet(value, index) ? [index] : []));
}

function findEqual(values: readonly ReadValue[], operand: string, operator: string): readonly number[] {
  const matches = indexMatches(values);
  if (operand === '') {
    // "" counts empty cells and empty texts, "=" only cells with nothing in them.
    return [...(matches.get('empty') ?? []), ...(operator === '' ? (matches.get('text ') ?? []) : [])];
  }
  const pattern = wildcardPattern(operand);
  if (pattern) return findWhere(values, (value) => typeof value === 'string' && pattern.test(value));
  if (/^#(N\/A|VALUE!|NUM!|DIV\/0!|REF!|NAME\?)$/i.test(operand)) {
    return matches.get(`error ${operand.toUpperCase()}`) ?? [];
  }
  return matches.get(keyOf(numberInText(operand) ?? truthInText(operand) ?? operand)) ?? [];
}

function indexMatches(values: readonly ReadValue[]): ReadonlyMap<string, readonly number[]> {
  const known = matchesByColumn.get(values);
  if (known) return known;
  const matches = new Map<string, number[]>();
  for (const [index, value] of values.entries()) {
    const number = typeof value === 'string' ? numberInText(value) : null;
    const key = keyOf(number ?? value);
    const there = matches.get(key);
    if (there) there.push(index);
    else matches.set(key, [index]);
  }
  matchesByColumn.set(values, matches);
  return matches;
}

/** ? is one character, * any number, ~ takes the next one literally. null when the text has none of them. */
function wildcardPattern(text: string): RegExp | null {
  if (!/[?*~]/.test(text)) return null;
  const source = text.replace(/~[?*~]|[\s\S]/g, (part) => {
    if (part === '?') return '[\\s\\S]';
    if (part === '*') return '[\\s\\S]*';
    return (part.length === 2 ? part.slice(1) : part).replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
  });
  return new RegExp(`^${source}$`, 'i');
}
