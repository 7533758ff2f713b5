/** The first import of every command, as chooseLanguage is of every page. What it cannot take, the command refuses. */
import { parseArgs } from 'node:util';

const { values } = parseArgs({
  args: process.argv.slice(2),
  options: { language: { type: 'string' } },
  strict: false,
  allowPositionals: true,
});
globalThis.cucurbitLanguage = typeof values.language === 'string' ? values.language : 'en';
