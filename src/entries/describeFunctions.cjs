/** What is said of each worksheet function: its comment, as in functions.json, with its task and example of README. */
const { readFileSync } = require('node:fs');
const { generateCustomFunctionsMetadata } = require('custom-functions-metadata');

/** The table of functions: a task stands at the first of its functions. */
const row = /^\|([^|]*)\|\s*([A-Z.]+)\s*\|\s*`(=[^`]+)`\s*\|[^|]+\|$/gm;

function readExamples(readme) {
  let task = '';
  return new Map(
    [...readFileSync(readme, 'utf8').matchAll(row)].map(([, named, id, example]) => {
      task = named.trim() || task;
      return [id, { family: task, example }];
    }),
  );
}

/** In the order of README. @throws Error with what the generator finds wrong in a comment */
exports.describeFunctions = async (files, readme) => {
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(files);
  if (errors.length > 0) throw new Error(errors.join('\n'));
  const examples = readExamples(readme);
  const order = [...examples.keys()];
  return JSON.parse(metadataJson)
    .functions.map(({ id, description, parameters }) => ({
      id,
      description,
      parameters: parameters.map(({ name, description, optional }) => ({ name, description, optional })),
      ...(examples.get(id) ?? { family: '', example: '' }),
    }))
    .sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
};
