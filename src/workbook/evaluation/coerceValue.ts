import type { CellError, ReadValue } from '../port';
import { isCellError } from '../port';
import { dayOfIso, serialOfDay } from '../serialDate';
import { errorOf } from './operand';

const numberPattern = /^[+-]?(\d+\.?\d*|\d{1,3}(,\d{3})+(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*(%?)$/i;

/** The number that a text stands for where Excel (en-US) takes text for a number, or null. */
export function numberInText(text: string): number | null {
  const trimmed = text.trim();
  const parts = numberPattern.exec(trimmed);
  if (parts) {
    const number = Number(trimmed.replace(/[,%\s]/g, ''));
    return parts[5] ? number / 100 : number;
  }
  const day = dayOfIso(trimmed);
  return day === null ? null : serialOfDay(day);
}

export function truthInText(text: string): boolean | null {
  const upper = text.toUpperCase();
  return upper === 'TRUE' ? true : upper === 'FALSE' ? false : null;
}

export function toNumber(value: ReadValue): number | CellError {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (isCellError(value)) return value;
  return numberInText(value) ?? errorOf('#VALUE!');
}

export function toTruth(value: ReadValue): boolean | CellError {
  if (typeof value === 'boolean') return value;
  if (value === null) return false;
  if (typeof value === 'number') return value !== 0;
  if (isCellError(value)) return value;
  return truthInText(value) ?? errorOf('#VALUE!');
}

export function toText(value: ReadValue): string | CellError {
  if (typeof value === 'string') return value;
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? textOfNumber(value) : value;
}

/** As Excel joins a number to a text: 15 digits, no grouping; powers of ten only where plain digits get long. */
export function textOfNumber(number: number): string {
  const kept = keep15Digits(number);
  const size = Math.abs(kept);
  if (kept === 0) return '0';
  if (size >= 1e21 || size < 1e-9) {
    const [digits, power] = kept.toExponential().split('e');
    const amount = Math.abs(Number(power));
    return `${digits}E${Number(power) < 0 ? '-' : '+'}${amount < 10 ? '0' : ''}${amount}`;
  }
  if (size >= 1e-6) return String(kept);
  // Below 1e-6 JavaScript turns to powers by itself, Excel does not.
  const [digits = '', power] = kept.toExponential().split('e');
  const decimals = (digits.split('.')[1]?.length ?? 0) - Number(power);
  return kept.toFixed(decimals);
}

/** Excel keeps and compares 15 significant digits, so that 0.1+0.2=0.3 holds. */
export function keep15Digits(number: number): number {
  return Number(number.toPrecision(15));
}

/** An error other than #N/A, which says only that there is none. */
export function isErr(value: ReadValue): boolean {
  return isCellError(value) && value.error !== '#N/A';
}
