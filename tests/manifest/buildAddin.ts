/** Builds the add-in for Excel into a folder of its own, for the tests that look at what ships. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { webpack, type Configuration, type Module } from 'webpack';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder with functions.js, functions.json and the rest. */
    builtAddin: string;
    /** Names of the packages whose files went into it. */
    packagesInAddin: string[];
  }
}

type Configure = (env: object, options: { mode: string }) => Promise<Configuration>;
const [, excel] = createRequire(import.meta.url)('../../webpack.config.js') as Configure[];

export async function setup(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), 'cucurbit-addin-'));
  project.provide('packagesInAddin', await build(folder));
  project.provide('builtAddin', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}

async function build(folder: string): Promise<string[]> {
  const mode = 'production';
  const configuration = await excel?.({}, { mode });
  return new Promise((resolve, reject) => {
    webpack(
      { ...configuration, mode, output: { ...configuration?.output, path: folder } },
      (error, stats) => {
        if (error !== null) reject(error);
        else if (stats?.hasErrors() === true) reject(new Error(stats.toString('errors-only')));
        else resolve(packagesOf(stats?.compilation.modules ?? []));
      },
    );
  });
}

/** The path of a module comes after those of its loaders. */
function packagesOf(modules: Iterable<Module>): string[] {
  const inPackage = /node_modules\/((?:@[^/]+\/)?[^/]+)/;
  const paths = [...modules].map(
    (module) => module.identifier().split('!').at(-1)?.replaceAll('\\', '/') ?? '',
  );
  return [...new Set(paths.flatMap((path) => inPackage.exec(path)?.[1] ?? []))];
}
