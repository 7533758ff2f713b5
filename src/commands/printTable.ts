/** A table for a terminal: one line a row, columns set under their headers, in as many blocks as the width asks for. */
import { isCellError, type ReadValue, type TableRead } from '../workbook/port';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import type { Format, TableTemplate } from '../workbook/template';

/** Longer lines are broken by terminals and on paper. */
const longestLine = 160;
const gap = '  ';

const decimals: Partial<Record<Format, number>> = { whole: 0, tenth: 1, hundredth: 2, money: 2 };

function show(value: ReadValue, format: Format): string {
  if (isCellError(value)) return value.error;
  if (typeof value !== 'number') return String(value ?? '');
  if (format === 'date') return isoOfDay(dayOfSerial(value) ?? 0);
  if (format === 'percent') return `${Number((value * 100).toFixed(2))}%`;
  const places = decimals[format];
  return places === undefined ? String(Number(value.toPrecision(12))) : value.toFixed(places);
}

export interface Printing {
  /** As they stand above the headers. */
  readonly units: readonly ReadValue[];
  /** Headers of columns that hold sentences: those are left out. */
  readonly without: readonly string[];
}

/** The row's name and what is computed. Every block begins with the name. */
export function printTable(read: TableRead, table: TableTemplate, { units, without }: Printing): string {
  const [name = [], ...columns] = table.columns.flatMap(({ header, kind, format }, index) => {
    if ((index > 0 && kind === 'input') || without.includes(header)) return [];
    const unit = show(units[index] ?? null, 'general');
    const cells = read.rows.map((row) => show(row[index] ?? null, format));
    return [[unit === '' ? header : `${header}, ${unit}`, ...cells]];
  });
  const widthOf = (column: readonly string[]): number => Math.max(...column.map((cell) => cell.length));
  const blocks: (readonly string[])[][] = [];
  let width = Infinity;
  for (const column of columns) {
    width += gap.length + widthOf(column);
    if (width > longestLine) {
      blocks.push([]);
      width = widthOf(name) + gap.length + widthOf(column);
    }
    blocks.at(-1)?.push(column.map((cell) => cell.padStart(widthOf(column))));
  }
  const names = name.map((cell) => cell.padEnd(widthOf(name)));
  return blocks
    .map((block) =>
      names.map((cell, row) => [cell, ...block.map((column) => column[row] ?? '')].join(gap).trimEnd()),
    )
    .map((lines) => lines.join('\n'))
    .join('\n\n');
}
