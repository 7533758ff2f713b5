/** A webpack loader: out of the comments of the functions in `files`, and of README, what is said of each. */
const { describeFunctions } = require('./describeFunctions.cjs');

module.exports = function functionHelp() {
  const { files, readme } = this.getOptions();
  for (const file of [...files, readme]) this.addDependency(file);
  const done = this.async();
  describeFunctions(files, readme).then(
    (described) => done(null, `export const functionHelp = ${JSON.stringify(described)};`),
    done,
  );
};
