/** A table for a terminal: one line a row, columns set under their headers. */
import { isCellError, type ReadValue, type TableRead } from '../workbook/port';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import type { Format, TableTemplate } from '../workbook/template';

const decimals: Partial<Record<Format, number>> = { whole: 0, tenth: 1, hundredth: 2, money: 2 };

function show(value: ReadValue, format: Format): string {
  if (isCellError(value)) return value.error;
  if (typeof value !== 'number') return String(value ?? '');
  if (format === 'date') return isoOfDay(dayOfSerial(value) ?? 0);
  if (format === 'percent') return `${Number((value * 100).toFixed(2))}%`;
  const places = decimals[format];
  return places === undefined ? String(Number(value.toPrecision(12))) : value.toFixed(places);
}

/** The row's name and what is computed; the columns named by `without` have sentences and are left out. */
export function printTable(read: TableRead, table: TableTemplate, without: readonly string[]): string {
  const columns = table.columns
    .map((column, index) => ({ ...column, index }))
    .filter(
      (column, ordinal) => (ordinal === 0 || column.kind === 'computed') && !without.includes(column.header),
    );
  const lines = [
    columns.map((column) => column.header),
    ...read.rows.map((row) => columns.map((column) => show(row[column.index] ?? null, column.format))),
  ];
  const widths = columns.map((_, i) => Math.max(...lines.map((line) => line[i]?.length ?? 0)));
  return lines
    .map((line) =>
      line
        .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
