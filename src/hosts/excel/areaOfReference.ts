import type { Area } from '../../workbook/port';

/** The area that a name's formula refers to, like ='Season'!$B$4; null for any other formula and for cells that are gone. */
export function areaOfReference(formula: string): Area | null {
  const parts = /^=(?:'((?:[^']|'')+)'|([^'!#(]+))!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?$/.exec(formula);
  if (parts === null) return null;
  const [, quoted, plain = '', letters = '', digits = '', endLetters = letters, endDigits = digits] = parts;
  const row = Number(digits) - 1;
  const column = columnIndex(letters);
  return {
    sheet: quoted?.replaceAll("''", "'") ?? plain,
    row,
    column,
    rows: Number(endDigits) - row,
    columns: columnIndex(endLetters) - column + 1,
  };
}

/** Whether a name's formula is but a cell that went with a sheet or row that somebody deleted. */
export function isDeadReference(formula: string): boolean {
  return /^=(?:'(?:[^']|'')+'!|[^'!#(]+!)?(?:#REF!)+(?:\$[A-Z]+\$\d+)?$/.test(formula);
}

function columnIndex(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
