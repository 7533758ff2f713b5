/** The worksheet functions as pages, pane and formula bar list them: in the language that was chosen. */
import { functionTexts, functionWords } from '../texts/functionHelp';
import type { DescribedFunction, ListedFunction } from '../workbook/functionHelp';

export function listFunctions(described: readonly DescribedFunction[]): readonly ListedFunction[] {
  return described.map((one) => {
    const translated = translate(one);
    return { ...translated, foundBy: wordsOf(translated) };
  });
}

function translate(described: DescribedFunction): DescribedFunction {
  if (functionTexts === null) return described;
  const { tasks, parameters, functions } = functionTexts;
  const said = functions[described.id];
  return {
    ...described,
    family: tasks[described.family] ?? described.family,
    description: said?.description ?? described.description,
    parameters: described.parameters.map((parameter) => ({
      ...parameter,
      description: said?.parameters?.[parameter.name] ?? parameters[parameter.name] ?? parameter.description,
    })),
  };
}

function wordsOf({ id, description, parameters }: DescribedFunction): string {
  const asked = parameters.flatMap((parameter) => [parameter.name, parameter.description]);
  const others = Object.entries(functionWords).flatMap(([start, words]) =>
    id.startsWith(start) ? words : [],
  );
  return [id, description, ...asked, ...others].join(' ');
}
