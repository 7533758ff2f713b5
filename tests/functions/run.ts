import { functions } from '../../src/functions';
import { dayOfSerial, isoOfDay } from '../../src/workbook/serialDate';

/** What a worksheet function leaves in its cell: a value, a date as yyyy-mm-dd, or "error message". */
export function run(id: string, ...args: unknown[]): unknown {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const outcome = definition.run(args);
  if ('error' in outcome) return `${outcome.error} ${outcome.message}`;
  if (outcome.pattern !== 'yyyy-mm-dd') return outcome.value;
  const day = typeof outcome.value === 'number' ? dayOfSerial(outcome.value) : null;
  return day === null ? outcome.value : isoOfDay(day);
}

/** The ways in which hosts say that a cell was left out. */
export const leftOut: readonly unknown[] = [null, undefined, ''];
