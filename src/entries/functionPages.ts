/**
 * `node runCommand.mjs functionPages --language es …`: the pages of the function reference in that language as one JSON
 * object, by file name in the folder of all of them.
 */
import './chooseLanguageOfCommand';
import { parseArgs } from 'node:util';
import { functions } from '../functions';
import { functionPages } from '../guide/functionPages';
import { listFunctions } from '../guide/listFunctions';
import { readCalculations } from '../guide/readCalculations';
import { writePages } from '../guide/writePages';
import { openEvaluator } from '../hosts/browser/openEvaluator';
import { functionNamespace } from '../templates/sheets';
import { language, pagesIn } from '../texts/language';
import { describeFunctions } from './describeFunctions.cjs';

const options = { language: { type: 'string' } } as const;
const [source = '', readme = '', ...files] = parseArgs({ options, allowPositionals: true }).positionals;

async function write(): Promise<void> {
  const listed = listFunctions(await describeFunctions(files, readme));
  const pages = await functionPages(listed, functions, readCalculations(source), (all) => {
    return openEvaluator({ functions: all, namespace: functionNamespace, firstSheet: 'Sheet1' }).evaluate;
  });
  const named = [...writePages(pages)].map(([name, text]) => [pagesIn(language) + name, text]);
  process.stdout.write(JSON.stringify(Object.fromEntries(named)), () => process.exit(0));
}

void write();
