/** A1 addresses of rows and columns that count from 0. */
export function columnLetters(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnLetters(before - 1) : '') + String.fromCharCode(65 + (column % 26));
}

export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** As a name's target: 'Season'!$B$5. */
export function absoluteAddress(sheet: string, row: number, column: number): string {
  return `${quoteSheet(sheet)}!$${columnLetters(column)}$${row + 1}`;
}

export function quoteSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}
