/** A webpack loader: out of the comments of the functions in `files`, what functions.json says of them. */
const { generateCustomFunctionsMetadata } = require('custom-functions-metadata');

module.exports = function functionHelp() {
  const { files } = this.getOptions();
  for (const file of files) this.addDependency(file);
  const done = this.async();
  generateCustomFunctionsMetadata(files).then(({ errors, metadataJson }) => {
    if (errors.length > 0) done(new Error(errors.join('\n')));
    else done(null, `export const functionHelp = ${JSON.stringify(JSON.parse(metadataJson).functions)};`);
  }, done);
};
