/**
 * Starts a command of this folder from its TypeScript: bundles our own code in a blink and leaves the packages to
 * Node. (A loader that also rewrites the packages makes the start three times as long.)
 */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));
const [, , command, ...args] = process.argv;
const bundle = join(here, '../../node_modules/.cache/cucurbit-functions', `${command}.${process.pid}.cjs`);

await build({
  entryPoints: [join(here, `${command}.ts`)],
  outfile: bundle,
  bundle: true,
  packages: 'external',
  platform: 'node',
  target: 'node20',
  logLevel: 'error',
});
process.argv.splice(1, process.argv.length, bundle, ...args);
const require = createRequire(import.meta.url);
const { rmSync } = require('node:fs');
process.on('exit', () => rmSync(bundle, { force: true }));
require(bundle);
