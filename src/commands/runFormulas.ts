/** Formulas in, one JSON value a line out; an error that the engine leaves without a word gets advice. */
import { functionNamespace } from '../templates/sheets';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { FormulaFault } from '../workbook/formulaFault';
import { isCellError, type CellError, type ReadValue } from '../workbook/port';
import type { NearestNames } from '../templates/sayListProblem';

const words = english.commands.formula;

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
  if (fault === null) return result;
  const advice = fault.code === 'unknownFunction' ? adviseName(fault, nearestNames) : words.shape;
  return { ...result, message: fill(words.faults[fault.code], { ...fault, known: '', advice }) };
}

/** Our own functions first, with or without their namespace before them. */
function adviseName(
  { name, known }: Extract<FormulaFault, { code: 'unknownFunction' }>,
  nearestNames: NearestNames,
): string {
  const isOurs = (one: string): boolean => one.toUpperCase().startsWith(functionNamespace);
  const idOf = (one: string): string => (isOurs(one) ? one.slice(functionNamespace.length) : one);
  const ours = nearestNames(idOf(name), known.filter(isOurs).map(idOf));
  const names = ours.length > 0 ? ours.map((id) => functionNamespace + id) : nearestNames(name, known);
  return names.length === 0 ? words.noneNear : fill(words.near, { names: names.join(', ') });
}
