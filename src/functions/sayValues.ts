/** What goes into a function and what comes out, as a person reads it. */
import type { Quantity } from '../calc/working';
import type { Unit } from '../calc/units/units';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import type { FunctionDefinition, Scalar } from './define';
import { sayNumber } from './wording';

/** More cells are not read one by one. Judgement. */
const mostCellsTold = 12;

/** Its values; of a long one the first rows, and its size. */
export function sayList(rows: readonly (readonly Scalar[])[], definition: FunctionDefinition): string {
  const { between, betweenRows, more } = catalogue.working.list;
  const columns = rows[0]?.length ?? 0;
  const told = rows.slice(0, Math.max(1, Math.floor(mostCellsTold / Math.max(1, columns))));
  const values = told
    .map((row) =>
      row.flatMap((value, column) => (value === '' ? [] : sayValue(value, holdsDates(definition, column)))),
    )
    .map((row) => row.join(between))
    .join(columns === 1 ? between : betweenRows);
  if (told.length === rows.length) return values;
  return fill(more, { values, cells: fill(catalogue.working.cells, { rows: rows.length, columns }) });
}

export function holdsDates({ result, dateColumns }: FunctionDefinition, column: number): boolean {
  return result === 'day' || dateColumns.includes(column);
}

/** @param isDate numbers are serials */
export function sayValue(value: Scalar, isDate: boolean): string {
  const day = isDate && typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? sayQuantity(value, 'none') : isoOfDay(Math.floor(day));
}

/** Of a range its size. */
export function sayArgument(raw: unknown, isDate: boolean): string {
  if (Array.isArray(raw)) {
    const rows = raw as readonly unknown[][];
    const [first] = rows.flat();
    if (rows.flat().length === 1) return sayArgument(first, isDate);
    return fill(catalogue.working.cells, { rows: rows.length, columns: rows[0]?.length ?? 0 });
  }
  if (typeof raw === 'object' && raw !== null && 'error' in raw) return String(raw.error);
  if (raw === null || raw === undefined) return '';
  return sayValue(raw as Scalar, isDate);
}

export function sayQuantity(value: Quantity, unit: Unit): string {
  if (typeof value === 'boolean') return value ? catalogue.working.yes : catalogue.working.no;
  if (typeof value === 'string') return value;
  return unit === 'date' ? isoOfDay(value) : sayNumber(value);
}
