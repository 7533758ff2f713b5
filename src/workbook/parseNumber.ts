/** Numbers as people type them into a text file or a field. */

/**
 * Put after what cannot be read as a number, which else stays as it was typed. Spreadsheet programs take "$5" or
 * "1,000" for numbers all the same; no program takes "$5?".
 */
export const doubtMark = '?';

const numberPattern = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?\s*(%?)$/i;

/**
 * The number that a cell says beyond doubt, or null: as our functions read a text, or with a decimal comma where
 * `decimalComma`; per cent gives the fraction. There "1.234" and "1,234" may be a thousand, so they are refused; so is what is
 * greater than any number of a spreadsheet: 1e400.
 */
export function parseNumber(text: string, decimalComma: boolean): number | null {
  const trimmed = text.trim();
  if (decimalComma && /^[+-]?[1-9]\d{0,2}[.,]\d{3}\s*%?$/.test(trimmed)) return null;
  const parts = numberPattern.exec(decimalComma ? trimmed.replace(',', '.') : trimmed);
  if (!parts) return null;
  const number = Number(parts[0].replace(/[\s%]/g, ''));
  if (!Number.isFinite(number)) return null;
  return parts[1] ? shiftPercent(number) : number;
}

/** 1.000 and 1.234.567: thousands to whoever sets a point between them. */
export function isLikeThousands(text: string): boolean {
  return /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+\s*%?$/.test(text.trim());
}

/** A text as it was typed, before it got the mark. After what can be read the mark is a person's own: "5?". */
export function withoutDoubt(text: string): string {
  if (!text.endsWith(doubtMark)) return text;
  const typed = text.slice(0, -doubtMark.length);
  const isRead = parseNumber(typed, false) !== null && parseNumber(typed, true) !== null;
  return isRead || !/\d/.test(typed) ? text : typed;
}

export type NotNumber = 'currencySign' | 'commaInNumber' | 'maybeThousands' | 'notANumber';

/** What keeps `parseNumber` from reading a text that it refused. */
export function whyNotNumber(text: string, decimalComma: false): Exclude<NotNumber, 'maybeThousands'>;
export function whyNotNumber(text: string, decimalComma: boolean): NotNumber;
export function whyNotNumber(text: string, decimalComma: boolean): NotNumber {
  const trimmed = withoutDoubt(text.trim());
  if (/\p{Sc}/u.test(trimmed) && /\d/.test(trimmed)) return 'currencySign';
  if (!/^[+-]?\d[\d.,]*\d\s*%?$/.test(trimmed)) return 'notANumber';
  if (decimalComma && /[.,]/.test(trimmed)) return 'maybeThousands';
  return trimmed.includes(',') ? 'commaInNumber' : 'notANumber';
}

/** By the text, so that 7 % is 0.07 and not 0.07000000000000001. */
function shiftPercent(percent: number): number {
  const [digits = '0', power = '0'] = String(percent).split('e');
  return Number(`${digits}e${Number(power) - 2}`);
}
