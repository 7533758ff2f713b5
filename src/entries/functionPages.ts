/** `node runCommand.mjs functionPages`: the pages of the function reference as one JSON object, name by name. */
import { functions } from '../functions';
import { functionPages } from '../guide/functionPages';
import { readCalculations } from '../guide/readCalculations';
import { writePages } from '../guide/writePages';
import { openEvaluator } from '../hosts/browser/openEvaluator';
import { functionNamespace } from '../templates/sheets';
import { describeFunctions } from './describeFunctions.cjs';

const [, , source = '', readme = '', ...files] = process.argv;

async function write(): Promise<void> {
  const listed = await describeFunctions(files, readme);
  const pages = await functionPages(listed, functions, readCalculations(source), (all) => {
    const options = { functions: all, namespace: functionNamespace, firstSheet: 'Sheet1' };
    return openEvaluator(options).evaluate;
  });
  process.stdout.write(JSON.stringify(Object.fromEntries(writePages(pages))), () => process.exit(0));
}

void write();
