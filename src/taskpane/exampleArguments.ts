import { everyPart } from '../workbook/formulaCells';
import { parseFormula } from '../workbook/parseFormula';
import { functionNamespace } from '../templates/sheets';

/** The arguments of one of our functions in a formula that has it once, each as it is written; "" for one left out. */
export function exampleArguments(formula: string, id: string): readonly string[] {
  const parsed = parseFormula(formula);
  const parts = parsed === null ? [] : everyPart(parsed);
  return parts.flatMap((part) =>
    part.kind === 'call' && part.name === functionNamespace + id
      ? part.args.map((arg) => arg?.text ?? '')
      : [],
  );
}
