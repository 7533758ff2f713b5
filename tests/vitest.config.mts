import { createRequire } from 'node:module';
import { defineConfig, type Plugin } from 'vitest/config';

const require = createRequire(import.meta.url);

/** The spreadsheet engine's ES modules do not run in Node; its CommonJS builds do, and they must be the only copy. */
const engineFromCommonJs: Plugin = {
  name: 'engine-from-commonjs',
  enforce: 'pre',
  resolveId: (id) => (id.startsWith('@univerjs/') ? require.resolve(id) : null),
};

export default defineConfig({
  plugins: [engineFromCommonJs],
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    testTimeout: 60000,
    pool: 'forks',
  },
});
