import { createRequire } from 'node:module';
import { defineConfig, type Plugin } from 'vitest/config';

const require = createRequire(import.meta.url);

/** The spreadsheet engine's ES modules do not run in Node; its CommonJS builds do, and they must be the only copy. */
const engineFromCommonJs: Plugin = {
  name: 'engine-from-commonjs',
  enforce: 'pre',
  resolveId: (id) => (id.startsWith('@univerjs/') ? require.resolve(id) : null),
};

/** These look at what webpack makes for Excel; it is made once, and only when one of them runs. */
const ofTheBuild = ['tests/functionsRuntime/**/*.test.ts', 'tests/manifest/**/*.test.ts'];

export default defineConfig({
  plugins: [engineFromCommonJs],
  test: {
    environment: 'node',
    testTimeout: 60000,
    pool: 'forks',
    projects: [
      { extends: true, test: { name: 'source', include: ['tests/**/*.test.ts'], exclude: ofTheBuild } },
      {
        extends: true,
        test: { name: 'build', include: ofTheBuild, globalSetup: 'tests/manifest/buildAddin.ts' },
      },
    ],
  },
});
