/**
 * Which template made a sheet, kept in a hidden name of the sheet: it goes along when the sheet is renamed, copied or
 * moved and goes away with it. Spreadsheet programs keep such a name. Libraries that write a workbook back may keep
 * only the names of cells, without their sheet: for them a file has one more, of the sheet's first cell, which says the
 * same by what it is called.
 */
import type { Mark } from './port';

export const markName = '_made_by_template';

/** As a formula without its "=". */
export function printMark({ template, version }: Mark): string {
  return `"${template} ${version}"`;
}

/** null for a formula that is no mark. With or without its "=". */
export function readMark(formula: string): Mark | null {
  const [, template, version] = /^=?"([^" ]+) (\d+)"$/.exec(formula) ?? [];
  return template === undefined ? null : { template, version: Number(version) };
}

const cellNamePrefix = `${markName}.`;

/** No two sheets' marks may have the same one, and it holds only what the name of a cell may. */
export function cellNameOf({ template, version }: Mark): string {
  const letters = template.replace(/[^a-z0-9]/gi, (other) => `_${other.charCodeAt(0).toString(16)}_`);
  return `${cellNamePrefix}${letters}.${version}`;
}

/** null for the name of a cell that is no mark. */
export function readCellName(name: string): Mark | null {
  if (!name.startsWith(cellNamePrefix)) return null;
  const [, letters, version] = /^(\w+)\.(\d+)$/.exec(name.slice(cellNamePrefix.length)) ?? [];
  if (letters === undefined) return null;
  const template = letters.replace(/_([0-9a-f]+)_/gi, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
  return { template, version: Number(version) };
}
