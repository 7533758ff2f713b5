/** Puts a formula into the selected cell, when that is a single one and empty. */
import { addressOf } from '../workbook/formulaCells';
import type { Expression, LiveWorkbook } from '../workbook/port';
import { printFormula } from '../workbook/printFormula';
import type { NearestNames } from '../templates/sayListProblem';
import { sayFormulaFault } from '../templates/sayFormulaFault';
import { functionNamespace } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const { functionList: words, undo } = catalogue.pane;

export const formulaOf = (compute: Expression): string =>
  printFormula(compute, { namespace: functionNamespace, table: null });

/** What is said of it. @throws HostError */
export async function putFormula(
  workbook: LiveWorkbook,
  compute: Expression,
  nearestNames: NearestNames,
): Promise<{ readonly written: string } | { readonly wrong: string }> {
  const area = await workbook.selection();
  if (area === null) return { wrong: words.noCell };
  const cell = `${area.sheet} ${addressOf(area)}`;
  if (area.rows * area.columns !== 1) return { wrong: fill(words.manyCells, { cells: cell }) };
  const fault = workbook.findFault?.(formulaOf(compute)) ?? null;
  if (fault !== null)
    return { wrong: `${catalogue.pane.nothingChanged} ${sayFormulaFault(fault, nearestNames)}` };
  // Read first: what is typed into the sheet from here on makes the change be refused.
  const stamp = await workbook.stamp(area.sheet);
  const { values, formulas } = await workbook.read(area);
  if (values[0]?.[0] !== null || formulas[0]?.[0] !== null) return { wrong: fill(words.occupied, { cell }) };
  await workbook.apply({
    title: undo.formula,
    expect: [{ sheet: area.sheet, stamp }],
    newSheets: [],
    cells: [{ sheet: area.sheet, row: area.row, column: area.column, contents: [[{ compute }]] }],
    tableRows: [],
    pictures: [],
    marks: [],
  });
  return { written: fill(words.written, { formula: formulaOf(compute), cell }) };
}
