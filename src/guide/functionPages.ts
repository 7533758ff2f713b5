/** The function reference: each example run by the engine that runs the workbook, then a page for each function. */
import type { FunctionDefinition } from '../functions/define';
import type { ListedFunction } from '../workbook/functionHelp';
import { functionPage, type FunctionPage } from './functionPage';
import type { CommentsOfFunction } from './readCalculations';

/** A formula in, its value out. */
export type Evaluate = (formula: string) => Promise<unknown>;

/** @param openEvaluator opens an engine that has these functions */
export async function functionPages(
  listed: readonly ListedFunction[],
  functions: ReadonlyMap<string, FunctionDefinition>,
  comments: ReadonlyMap<string, CommentsOfFunction>,
  openEvaluator: (functions: FunctionDefinition[]) => Evaluate,
): Promise<readonly FunctionPage[]> {
  let handed: readonly unknown[] = [];
  let asked = '';
  const watched = [...functions.values()].map((definition) => ({
    ...definition,
    run(args: readonly unknown[]) {
      if (definition.id === asked) handed = args;
      return definition.run(args);
    },
  }));
  const evaluate = openEvaluator(watched);
  const pages: FunctionPage[] = [];
  for (const help of listed) {
    const definition = functions.get(help.id);
    const said = comments.get(help.id);
    if (definition === undefined || said === undefined) throw new Error(`${help.id} has no definition`);
    asked = help.id;
    handed = [];
    const value = await evaluate(help.example);
    pages.push(functionPage(help, definition, said, { value, args: handed }));
  }
  return pages;
}
