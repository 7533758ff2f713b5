/** A1 addresses of rows and columns that count from 0. */
export function columnLetters(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnLetters(before - 1) : '') + String.fromCharCode(65 + (column % 26));
}

export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** As a name's target: 'Season'!$B$5, of several cells under one another 'Season'!$B$5:$B$9. */
export function absoluteAddress(sheet: string, row: number, column: number, rows = 1): string {
  const cell = (at: number): string => `$${columnLetters(column)}$${at + 1}`;
  return `${quoteSheet(sheet)}!${cell(row)}${rows > 1 ? `:${cell(row + rows - 1)}` : ''}`;
}

export function quoteSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}
