/** What the services write where nothing was measured; numbers of nines are such marks too. */
const missingMarks = new Set(['', 'm', 'na', 'n/a', 'nan', 'null', 'none', 'nil', 'missing', '.', '*']);
const dashes = /^[-–—]+$/;
const nines = /^(?:[+-]?9{3,6}(?:[.,][09]+)?|-99[.,][09]+)$/;
/** In tenths of degrees it is a frosty morning. */
const twoNines = '-99';
const temperature = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

/**
 * The degrees in a cell of temperatures, with a decimal point or comma; null when missing, undefined when it is none.
 *
 * @param perDegree 10 for tenths of degrees
 */
export function readTemperature(text: string, perDegree: 1 | 10): number | null | undefined {
  const trimmed = text.trim().replace('−', '-');
  const isMark = missingMarks.has(trimmed.toLowerCase()) || dashes.test(trimmed) || nines.test(trimmed);
  if (isMark || (perDegree === 1 && trimmed === twoNines)) return null;
  return temperature.test(trimmed) ? Number(trimmed.replace(',', '.')) / perDegree : undefined;
}
