import type { UnitSystemName } from '../units/units';

/** What the services write where nothing was measured; numbers of nines are such marks too. */
const missingMarks = new Set(['', 'm', 'na', 'n/a', 'nan', 'null', 'none', 'nil', 'missing', '.', '*']);
const dashes = /^[-–—]+$/;
const nines = /^(?:[+-]?9{3,6}(?:[.,][09]+)?|-99[.,][09]+)$/;
/** In tenths of degrees it is a frosty morning. */
const twoNines = '-99';
const temperature = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

/** After the digits: the scale, or an E, which says that the value is an estimate. */
const ending = /^(.*[\d.,])\s*(?:[°º]|deg)?\s*([fce])$/i;

export interface Temperature {
  /** null when missing. */
  readonly degrees: number | null;
  /** Where the cell names it. */
  readonly units?: UnitSystemName;
  readonly isEstimated?: boolean;
}

/**
 * What a cell of temperatures says, with a decimal point or comma; undefined when it says none.
 *
 * @param perDegree 10 for tenths of degrees
 */
export function readTemperature(text: string, perDegree: 1 | 10): Temperature | undefined {
  const trimmed = text.trim().replace('−', '-');
  const isMark = missingMarks.has(trimmed.toLowerCase()) || dashes.test(trimmed) || nines.test(trimmed);
  if (isMark || (perDegree === 1 && trimmed === twoNines)) return { degrees: null };
  const [, bare = trimmed, mark = ''] = ending.exec(trimmed) ?? [];
  if (!temperature.test(bare)) return undefined;
  const degrees = Number(bare.replace(',', '.')) / perDegree;
  switch (mark.toLowerCase()) {
    case 'f':
      return { degrees, units: 'us' };
    case 'c':
      return { degrees, units: 'metric' };
    case 'e':
      return { degrees, isEstimated: true };
    default:
      return { degrees };
  }
}
