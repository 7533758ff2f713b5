/** Builds the add-in for Excel into a folder of its own, for the tests that look at what ships. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { webpack, type Configuration } from 'webpack';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder with functions.js, functions.json and the rest. */
    builtAddin: string;
  }
}

type Configure = (env: object, options: { mode: string }) => Configuration;
const [, excel] = createRequire(import.meta.url)('../../webpack.config.js') as Configure[];

export async function setup(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), 'cucurbit-addin-'));
  await build(folder);
  project.provide('builtAddin', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}

function build(folder: string): Promise<void> {
  const mode = 'production';
  const configuration = excel?.({}, { mode });
  return new Promise((resolve, reject) => {
    webpack(
      { ...configuration, mode, output: { ...configuration?.output, path: folder } },
      (error, stats) => {
        if (error !== null) reject(error);
        else if (stats?.hasErrors() === true) reject(new Error(stats.toString('errors-only')));
        else resolve();
      },
    );
  });
}
