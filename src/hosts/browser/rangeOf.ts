import type { IRange } from '@univerjs/core';
import type { Span } from '../../workbook/port';

export function rangeOf({ row, column, rows, columns }: Span): IRange {
  return { startRow: row, endRow: row + rows - 1, startColumn: column, endColumn: column + columns - 1 };
}
