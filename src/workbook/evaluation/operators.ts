import type { Operator, ReadValue } from '../port';
import { isCellError } from '../port';
import { keep15Digits, toNumber, toText } from './coerceValue';
import { errorOf } from './operand';

/** The left error goes on before the right one. */
export function applyOperator(operator: Operator, left: ReadValue, right: ReadValue): ReadValue {
  if (isCellError(left)) return left;
  if (isCellError(right)) return right;
  switch (operator) {
    case '&':
      return `${toText(left) as string}${toText(right) as string}`;
    case '=':
      return compareValues(left, right) === 0;
    case '<>':
      return compareValues(left, right) !== 0;
    case '<':
      return compareValues(left, right) < 0;
    case '<=':
      return compareValues(left, right) <= 0;
    case '>':
      return compareValues(left, right) > 0;
    case '>=':
      return compareValues(left, right) >= 0;
    default:
      return calculate(operator, left, right);
  }
}

function calculate(operator: '+' | '-' | '*' | '/', leftValue: ReadValue, rightValue: ReadValue): ReadValue {
  const left = toNumber(leftValue);
  const right = toNumber(rightValue);
  if (isCellError(left)) return left;
  if (isCellError(right)) return right;
  if (operator === '/' && right === 0) return errorOf('#DIV/0!');
  const result = { '+': left + right, '-': left - right, '*': left * right, '/': left / right }[operator];
  if (!Number.isFinite(result)) return errorOf('#NUM!');
  // A sum that is nothing but the rounding of its parts is 0 in Excel: 0.1+0.2-0.3.
  const isDust = (operator === '+' || operator === '-') && Math.abs(result) < Math.abs(left) * 1e-15;
  return isDust ? 0 : result;
}

const textOrder = new Intl.Collator('en', { sensitivity: 'accent' });

export function sameText(left: string, right: string): boolean {
  return left === right || left.toLowerCase() === right.toLowerCase();
}

/**
 * Below 0, 0 or above 0. Numbers stand before text, text before truth values; an empty cell is 0, "" or FALSE,
 * whatever it is compared with. Errors never get here.
 */
export function compareValues(left: ReadValue, right: ReadValue): number {
  const first = left === null ? blankLike(right) : left;
  const second = right === null ? blankLike(left) : right;
  if (typeof first === 'number' && typeof second === 'number') {
    return keep15Digits(first) - keep15Digits(second);
  }
  if (typeof first === 'string' && typeof second === 'string') {
    return sameText(first, second) ? 0 : textOrder.compare(first, second) || 1;
  }
  return rankOf(first) - rankOf(second) || Number(first) - Number(second);
}

function blankLike(other: ReadValue): string | number | boolean {
  return typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;
}

function rankOf(value: ReadValue): number {
  return typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2;
}
