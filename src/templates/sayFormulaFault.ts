/** What keeps a formula from being read, and what to write instead. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { FormulaFault } from '../workbook/formulaFault';
import type { NearestNames } from './sayListProblem';
import { functionNamespace } from './sheets';

const words = catalogue.commands.formula;

export function sayFormulaFault(fault: FormulaFault, nearestNames: NearestNames): string {
  const advice = fault.code === 'unknownFunction' ? adviseName(fault, nearestNames) : words.shape;
  return fill(words.faults[fault.code], { ...fault, known: '', advice });
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
