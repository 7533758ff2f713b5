import type { CellError, ReadValue } from '../../workbook/port';
import { isCellError } from '../../workbook/port';
import { keep15Digits, numberInText, truthInText } from './coerceValue';
import { errorOf } from './operand';
import { compareValues } from './operators';

/**
 * COUNTIF and exact MATCH over a table's column would go through all of it for every row. Each column is indexed
 * once; the indexes live as long as the column's array, which is made anew for every state of the workbook.
 */
const countsByColumn = new WeakMap<readonly ReadValue[], ReadonlyMap<string, number>>();
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
 * Excel reads a text criterion: "<5" and "=x" are comparisons, so a plot named "=2+2" is counted by the criterion
 * "="&"=2+2", not by its own name. Text that looks like a number is one, on both sides: "007" counts 7 too.
 */
export function countMatches(values: readonly ReadValue[], criterion: ReadValue): number {
  if (typeof criterion !== 'string') return indexCounts(values).get(keyOf(criterion ?? 0)) ?? 0;
  const [, operator = '', operand = ''] = /^(<>|<=|>=|=|<|>)?([\s\S]*)$/.exec(criterion) ?? [];
  if (operator === '' || operator === '=') return countEqual(values, operand, operator);
  if (operator === '<>') return values.length - countEqual(values, operand, '=');
  const limit = numberInText(operand) ?? truthInText(operand) ?? operand;
  return values.filter((value) => {
    if (typeof value !== typeof limit) return false;
    const difference = compareValues(value, limit);
    if (operator === '<') return difference < 0;
    if (operator === '<=') return difference <= 0;
    return operator === '>' ? difference > 0 : difference >= 0;
  }).length;
}

function countEqual(values: readonly ReadValue[], operand: string, operator: string): number {
  const counts = indexCounts(values);
  if (operand === '') {
    // "" counts empty cells and empty texts, "=" only cells with nothing in them.
    return (counts.get('empty') ?? 0) + (operator === '' ? (counts.get('text ') ?? 0) : 0);
  }
  const pattern = wildcardPattern(operand);
  if (pattern) return values.filter((value) => typeof value === 'string' && pattern.test(value)).length;
  if (/^#(N\/A|VALUE!|NUM!|DIV\/0!|REF!|NAME\?)$/i.test(operand)) {
    return counts.get(`error ${operand.toUpperCase()}`) ?? 0;
  }
  return counts.get(keyOf(numberInText(operand) ?? truthInText(operand) ?? operand)) ?? 0;
}

function indexCounts(values: readonly ReadValue[]): ReadonlyMap<string, number> {
  const known = countsByColumn.get(values);
  if (known) return known;
  const counts = new Map<string, number>();
  for (const value of values) {
    const number = typeof value === 'string' ? numberInText(value) : null;
    const key = keyOf(number ?? value);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  countsByColumn.set(values, counts);
  return counts;
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
