/**
 * Which template made a sheet, kept in a hidden name of the sheet: it goes along when the sheet is renamed, copied or
 * moved and goes away with it; every spreadsheet program keeps names.
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
