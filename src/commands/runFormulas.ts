/** Formulas in, one JSON value a line out; an error that the engine leaves without a word gets advice. */
import { catalogue } from '../texts/catalogue';
import type { FormulaFault } from '../workbook/formulaFault';
import { isCellError, type CellError, type ReadValue } from '../workbook/port';
import { sayFormulaFault } from '../templates/sayFormulaFault';
import type { NearestNames } from '../templates/sayListProblem';

const words = catalogue.commands.formula;

export interface FormulaTools {
  evaluate(formula: string): Promise<ReadValue | readonly (readonly ReadValue[])[]>;
  findFault(formula: string): FormulaFault | null;
  readonly nearestNames: NearestNames;
  say(line: string): unknown;
}

export async function runFormulas(formulas: readonly string[], tools: FormulaTools): Promise<void> {
  if (formulas.length === 0 || formulas.includes('--help')) return void tools.say(words.usage);
  for (const formula of formulas) {
    const result = await tools.evaluate(formula);
    tools.say(JSON.stringify(isCellError(result) ? explainError(formula, result, tools) : result));
  }
}

function explainError(
  formula: string,
  result: CellError,
  { findFault, nearestNames }: FormulaTools,
): CellError {
  const fault = result.message === null ? findFault(formula) : null;
  return fault === null ? result : { ...result, message: sayFormulaFault(fault, nearestNames) };
}
